package roundbook.exchange;

import roundbook.units.Length;

/**
 * What another log in a place would do.
 *
 * <p>Flags are joints of the round with the rounds below and above whose gap is outside the limits,
 * a spread of the round over the most, and ends of its logs that are graded look or stop.
 *
 * @param change by how much the score would grow, in square inches; negative is better
 * @param flagsBefore flags as planned
 * @param flagsAfter flags with the other log
 * @param least least gap over and under the other log
 * @param most largest gap over and under the other log
 * @param endsHold whether no end of the place is flagged with it
 */
public record Effect(
    double change, int flagsBefore, int flagsAfter, Length least, Length most, boolean endsHold) {
  /** Returns how many flags it would clear; negative when it would add some. */
  public int cleared() {
    return flagsBefore - flagsAfter;
  }
}
