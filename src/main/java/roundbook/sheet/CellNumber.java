package roundbook.sheet;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Writes numbers with as few digits as tell them apart.
 *
 * <p>The Java runtime's own way of writing a number changed between versions, so that the same
 * number would not make the same bytes.
 */
final class CellNumber {
  private static final double WHOLE = 1e15;
  private static final int LEAST_DIGITS = 15;
  private static final int MOST_DIGITS = 17;

  private CellNumber() {}

  /** Returns the shortest of 15 to 17 digits that read back as the same number. */
  static String text(double number) {
    if (number == Math.rint(number) && Math.abs(number) < WHOLE) {
      return Long.toString((long) number);
    }
    BigDecimal exact = new BigDecimal(number);
    for (int digits = LEAST_DIGITS; digits < MOST_DIGITS; digits++) {
      BigDecimal rounded = exact.round(new MathContext(digits));
      if (rounded.doubleValue() == number) {
        return rounded.stripTrailingZeros().toString();
      }
    }
    return exact.round(new MathContext(MOST_DIGITS)).stripTrailingZeros().toString();
  }
}
