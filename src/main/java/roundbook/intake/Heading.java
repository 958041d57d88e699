package roundbook.intake;

import java.util.Optional;
import roundbook.heading.Term;
import roundbook.heading.Wording;
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
 * @param wording its words
 * @param unread why it has no meaning; {@link Unread#READ} where it has one
 */
record Heading(
    int column,
    String text,
    Optional<Field> field,
    Optional<LengthUnit> unit,
    Bark bark,
    Wording wording,
    Unread unread) {
  private static final int MOST_LETTERS = 80;

  /** Understands a heading by its words. */
  static Heading of(int column, String text, Wording words) {
    HeadingField meaning =
        text.length() > MOST_LETTERS ? HeadingField.none(Unread.UNKNOWN) : HeadingField.of(words);
    Bark bark = words.has(Term.UNDER) ? Bark.OFF : words.has(Term.OVER) ? Bark.OVER : Bark.UNSTATED;
    return new Heading(column, text, meaning.field(), words.unit(), bark, words, meaning.unread());
  }

  /** Returns the same heading with another meaning. */
  Heading meaning(Field other) {
    return new Heading(column, text, Optional.of(other), unit, bark, wording, Unread.READ);
  }

  /** Returns the same heading as one that is not read. */
  Heading unread(Unread why) {
    return new Heading(column, text, Optional.empty(), unit, bark, wording, why);
  }

  /** Returns whether a word of it is not known, or means different things in two languages. */
  boolean doubtful() {
    return !wording.strangers().isEmpty() || !wording.unsure().isEmpty();
  }

  /** Returns the word that makes it doubtful; empty where none does. */
  String doubtfulWord() {
    return wording.strangers().isEmpty()
        ? wording.unsure().stream().findFirst().orElse("")
        : wording.strangers().get(0);
  }

  /** Returns whether it says that its figures were reckoned or guessed. */
  boolean estimated() {
    return wording.has(Term.ESTIMATED);
  }
}
