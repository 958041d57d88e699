package roundbook.sheet.write;

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

  private static final double MOST_QUICK = 1e8;
  private static final int MOST_DECIMALS = 6;

  private CellNumber() {}

  /** Returns the shortest of 15 to 17 digits that read back as the same number. */
  static String text(double number) {
    if (number == Math.rint(number) && Math.abs(number) < WHOLE) {
      return Long.toString((long) number);
    }
    String few = few(number);
    if (!few.isEmpty()) {
      return few;
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

  /**
   * Returns a number that a few decimals tell, as most do; empty for others.
   *
   * <p>A quotient of whole numbers that are exact is rounded as a text that is read is, so one that
   * gives the number back has the digits wanted.
   */
  private static String few(double number) {
    if (!(Math.abs(number) < MOST_QUICK)) {
      return "";
    }
    long power = 1;
    for (int decimals = 1; decimals <= MOST_DECIMALS; decimals++) {
      power *= 10;
      long whole = Math.round(number * power);
      if ((double) whole / power == number) {
        String digits = Long.toString(power + Math.abs(whole) % power).substring(1);
        return (number < 0 ? "-" : "") + Math.abs(whole) / power + "." + digits;
      }
    }
    return "";
  }
}
