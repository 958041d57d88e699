package roundbook.intake;

import static roundbook.intake.HeadingWord.AT;
import static roundbook.intake.HeadingWord.BARK;
import static roundbook.intake.HeadingWord.BREAST;
import static roundbook.intake.HeadingWord.BUTT;
import static roundbook.intake.HeadingWord.COUNT;
import static roundbook.intake.HeadingWord.DIAMETER;
import static roundbook.intake.HeadingWord.DISTANCE;
import static roundbook.intake.HeadingWord.FOOT_END;
import static roundbook.intake.HeadingWord.FOREIGN;
import static roundbook.intake.HeadingWord.GIRTH;
import static roundbook.intake.HeadingWord.LENGTH;
import static roundbook.intake.HeadingWord.MID;
import static roundbook.intake.HeadingWord.NUMBER;
import static roundbook.intake.HeadingWord.OF;
import static roundbook.intake.HeadingWord.OVER;
import static roundbook.intake.HeadingWord.PART;
import static roundbook.intake.HeadingWord.STEM;
import static roundbook.intake.HeadingWord.STOCK;
import static roundbook.intake.HeadingWord.TAG;
import static roundbook.intake.HeadingWord.TIP;
import static roundbook.intake.HeadingWord.UNDER;
import static roundbook.intake.HeadingWord.UPPER;

import java.util.Optional;
import roundbook.job.Log.Bark;
import roundbook.units.LengthUnit;

/**
 * A column's heading as it was understood.
 *
 * @param column the column counted from 1
 * @param text the heading as it stands
 * @param field what it means; empty for a column that is only carried through
 * @param unit the unit it states; empty when it states none
 * @param bark whether it says over or under bark
 */
record Heading(
    int column, String text, Optional<Field> field, Optional<LengthUnit> unit, Bark bark) {
  private static final int MOST_LETTERS = 80;
  private static final int MOST_UNKNOWN = 3;

  /** Understands a heading by its words. */
  static Heading of(int column, String text) {
    if (text.length() > MOST_LETTERS) {
      return new Heading(column, text, Optional.empty(), Optional.empty(), Bark.UNSTATED);
    }
    HeadingText words = HeadingText.of(text);
    boolean known = (words.unknown() < MOST_UNKNOWN || words.has(DISTANCE)) && !words.has(FOREIGN);
    Optional<Field> field = known ? Optional.ofNullable(field(words)) : Optional.empty();
    Bark bark = words.has(UNDER) ? Bark.OFF : words.has(OVER) ? Bark.OVER : Bark.UNSTATED;
    return new Heading(column, text, field, words.unit(), bark);
  }

  /** Returns the same heading with another meaning. */
  Heading meaning(Field other) {
    return new Heading(column, text, Optional.of(other), unit, bark);
  }

  private static Field field(HeadingText words) {
    boolean through = words.has(DIAMETER);
    if (words.has(BREAST)) {
      return Field.DBH;
    }
    if (!through && (words.has(DISTANCE) || words.has(MID) && words.has(AT))) {
      return Field.MID_AT;
    }
    boolean thickEnd = words.has(BUTT);
    if (!through && thickEnd && (words.has(UPPER) || words.has(TAG) && words.unit().isEmpty())) {
      return Field.PART;
    }
    if (words.has(UPPER, PART)) {
      return Field.PART;
    }
    if (words.has(LENGTH)) {
      return Field.LENGTH;
    }
    Field end = end(words);
    if (end != null) {
      return words.has(GIRTH) ? end.asGirth() : end;
    }
    return other(words, through);
  }

  private static Field end(HeadingText words) {
    boolean stock = words.has(STOCK) && !words.has(NUMBER) && !words.has(TAG) && !words.has(BUTT);
    boolean butt = words.has(BUTT) || stock || words.has(FOOT_END);
    boolean tip = words.has(TIP);
    if (butt && tip) {
      return null;
    }
    if (butt || tip) {
      return butt ? Field.BUTT : Field.TIP;
    }
    return words.has(MID) || words.has(GIRTH) ? Field.MID : null;
  }

  private static Field other(HeadingText words, boolean through) {
    if (words.has(COUNT) || words.has(NUMBER) && words.has(OF)) {
      return Field.COUNT;
    }
    if (words.has(BARK) || words.has(OVER) && words.has(UNDER)) {
      return Field.BARK;
    }
    if (through) {
      return Field.DIAMETER;
    }
    for (Field field :
        new Field[] {
          Field.SPECIES,
          Field.SWEEP,
          Field.KEEP,
          Field.WALL,
          Field.ROUND,
          Field.SKIP,
          Field.PROFILE,
          Field.REMARKS
        }) {
      if (words.has(HeadingWord.valueOf(field.name()))) {
        return field;
      }
    }
    boolean tag = words.has(TAG) || words.has(STOCK) && words.has(NUMBER);
    return tag ? Field.TAG : words.has(STEM) ? Field.STEM : words.has(NUMBER) ? Field.TAG : null;
  }
}
