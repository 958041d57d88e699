package roundbook.intake;

import static roundbook.heading.Term.AT;
import static roundbook.heading.Term.BARK;
import static roundbook.heading.Term.BREAST;
import static roundbook.heading.Term.BUTT;
import static roundbook.heading.Term.COUNT;
import static roundbook.heading.Term.DIAMETER;
import static roundbook.heading.Term.DISTANCE;
import static roundbook.heading.Term.EIGHTHS;
import static roundbook.heading.Term.GIRTH;
import static roundbook.heading.Term.KEEP;
import static roundbook.heading.Term.LABEL;
import static roundbook.heading.Term.LENGTH;
import static roundbook.heading.Term.LOGS;
import static roundbook.heading.Term.LOT;
import static roundbook.heading.Term.MID;
import static roundbook.heading.Term.NUMBER;
import static roundbook.heading.Term.OF;
import static roundbook.heading.Term.OTHER;
import static roundbook.heading.Term.OVER;
import static roundbook.heading.Term.PART;
import static roundbook.heading.Term.PERCENT;
import static roundbook.heading.Term.PLACE;
import static roundbook.heading.Term.PROFILE;
import static roundbook.heading.Term.QUARTER;
import static roundbook.heading.Term.RADIUS;
import static roundbook.heading.Term.REMARKS;
import static roundbook.heading.Term.ROUND;
import static roundbook.heading.Term.RUNNING;
import static roundbook.heading.Term.SKIP;
import static roundbook.heading.Term.SPECIES;
import static roundbook.heading.Term.STEM;
import static roundbook.heading.Term.SWEEP;
import static roundbook.heading.Term.TAG;
import static roundbook.heading.Term.TIP;
import static roundbook.heading.Term.TRIM;
import static roundbook.heading.Term.UNDER;
import static roundbook.heading.Term.UPPER;
import static roundbook.heading.Term.WALL;

import java.util.Optional;
import roundbook.heading.Term;
import roundbook.heading.Wording;

/**
 * The field that a heading's words make together, or why they make none.
 *
 * @param field the field; empty where there is none
 * @param unread why there is none
 */
record HeadingField(Optional<Field> field, Unread unread) {
  static HeadingField none(Unread why) {
    return new HeadingField(Optional.empty(), why);
  }

  /**
   * Puts the words together. What names a quantity of its own, or a thing such as a knot, is never
   * an end of the log for the adjective before it; and a stranger beside an adjective may be such a
   * thing.
   */
  static HeadingField of(Wording words) {
    Unread why = refusal(words);
    if (why != Unread.READ) {
      return none(why);
    }
    Field field = field(words);
    boolean sized = words.has(DIAMETER, GIRTH, LENGTH) || words.unit().isPresent();
    boolean stranger = !words.strangers().isEmpty();
    boolean bare = stranger && !sized && !words.has(TAG, DISTANCE) || words.strangers().size() > 2;
    return field == null || bare && field != Field.MID_AT
        ? none(Unread.UNKNOWN)
        : new HeadingField(Optional.of(field), Unread.READ);
  }

  private static Unread refusal(Wording words) {
    if (words.has(PERCENT)) {
      return Unread.PERCENT;
    }
    if (words.has(PLACE)) {
      return Unread.PLACE;
    }
    if (words.has(QUARTER) && words.has(GIRTH)) {
      return Unread.QUARTER;
    }
    if (words.has(RADIUS)) {
      return Unread.RADIUS;
    }
    if (words.has(EIGHTHS)) {
      return Unread.EIGHTHS;
    }
    boolean wallLength = words.has(WALL) && words.has(LENGTH, DIAMETER);
    boolean trimAlone = words.has(TRIM) && !words.has(LENGTH);
    return words.has(OTHER) || wallLength || trimAlone ? Unread.OTHER : Unread.READ;
  }

  private static Field field(Wording words) {
    boolean through = words.has(DIAMETER);
    boolean ends = words.has(BUTT, MID, TIP);
    if (words.has(BREAST)) {
      return Field.DBH;
    }
    if (!through && !words.has(GIRTH)) {
      boolean from = words.has(DISTANCE) || words.has(MID) && words.has(AT) && !words.has(LENGTH);
      if (from) {
        return Field.MID_AT;
      }
      boolean butt = words.has(BUTT) && words.has(TAG) && words.unit().isEmpty();
      if (words.has(UPPER) || butt) {
        return Field.PART;
      }
      if (words.has(LENGTH)) {
        return Field.LENGTH;
      }
    }
    if (words.has(UPPER, PART)) {
      return Field.PART;
    }
    if (ends || words.has(GIRTH)) {
      return isThing(words) ? thing(words) : end(words);
    }
    return words.has(LENGTH) ? Field.LENGTH : other(words, through);
  }

  /** Returns whether a noun stands beside the adjective of an end. */
  private static boolean isThing(Wording words) {
    return !words.has(DIAMETER, GIRTH)
        && words.has(REMARKS, COUNT, SWEEP, KEEP, SKIP, SPECIES, WALL, ROUND, LOT, LOGS);
  }

  private static Field end(Wording words) {
    boolean butt = words.has(BUTT);
    boolean tip = words.has(TIP);
    Field end = butt ? Field.BUTT : tip ? Field.TIP : Field.MID;
    if (butt && tip || (butt || tip) && words.has(MID)) {
      return null;
    }
    return words.has(GIRTH) ? end.asGirth() : end;
  }

  private static Field other(Wording words, boolean through) {
    if (words.has(COUNT) || words.has(NUMBER, LOGS) && words.has(OF)) {
      return Field.COUNT;
    }
    if (words.has(BARK) || words.has(OVER) && words.has(UNDER)) {
      return Field.BARK;
    }
    return through ? Field.DIAMETER : thing(words);
  }

  private static Field thing(Wording words) {
    Term[] terms = {SPECIES, SWEEP, KEEP, WALL, ROUND, SKIP, PROFILE, REMARKS, COUNT};
    for (Term term : terms) {
      if (words.has(term)) {
        return Field.valueOf(term.name());
      }
    }
    return name(words);
  }

  private static Field name(Wording words) {
    if (words.has(RUNNING)) {
      return Field.RUNNING;
    }
    if (words.has(LABEL)) {
      return Field.LABEL;
    }
    if (words.has(TAG)) {
      return Field.TAG;
    }
    if (words.has(STEM)) {
      return Field.STEM;
    }
    if (words.has(LOT)) {
      return Field.LOT;
    }
    return words.has(LOGS) ? Field.LOGS : words.has(NUMBER) ? Field.RUNNING : null;
  }
}
