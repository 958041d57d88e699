package roundbook.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * A length held exactly as a whole number of nanometres.
 *
 * <p>One sixty-fourth of an inch (396 875 nm), one hundredth of a foot (3 048 000 nm) and a tenth
 * of a millimetre (100 000 nm) are all whole, so a sum of tape readings has no rounding error and a
 * tie to the half inch falls the same way every time. Lengths may be negative (a height below a
 * datum).
 */
public final class Length implements Comparable<Length> {
  /** No length at all. */
  public static final Length ZERO = new Length(0);

  /** Twice a number below this, and one more such, are still a long. */
  private static final long QUARTER = Long.MAX_VALUE / 4;

  private static final BigInteger MILLION = BigInteger.valueOf(1_000_000);

  /** Up to here, some 1100 m, the binary product is right to a thousandth of a nanometre. */
  private static final double SURE = 1L << 40;

  private static final double DOUBT = 0x1p-10;

  /** Below this, some 1100 m, and for a mean of so many, a long holds what rounding takes. */
  private static final long SMALL = 1L << 40;

  private static final int MOST_PARTS = 1 << 20;

  private final long nanometres;

  private Length(long nanometres) {
    this.nanometres = nanometres;
  }

  /** Returns the length of that many nanometres. */
  public static Length ofNanometres(long nanometres) {
    return nanometres == 0 ? ZERO : new Length(nanometres);
  }

  /** Returns the length of that many whole inches. */
  public static Length ofInches(long inches) {
    return of(inches, LengthUnit.INCH);
  }

  /**
   * Returns the length of a fraction of inches, such as {@code ofInchFraction(49, 16)} for 3 1/16
   * in.
   *
   * @throws ArithmeticException if the fraction is no whole number of nanometres
   */
  public static Length ofInchFraction(long numerator, long denominator) {
    long scaled = Math.multiplyExact(numerator, LengthUnit.INCH.nanometres());
    if (scaled % denominator != 0) {
      throw new ArithmeticException(numerator + "/" + denominator + " in is not exact");
    }
    return ofNanometres(scaled / denominator);
  }

  /** Returns the length of that many whole millimetres. */
  public static Length ofMillimetres(long millimetres) {
    return of(millimetres, LengthUnit.MILLIMETRE);
  }

  /** Returns the length of a whole number of a unit. */
  public static Length of(long count, LengthUnit unit) {
    return ofNanometres(Math.multiplyExact(count, unit.nanometres()));
  }

  /** Returns the length of a decimal number of a unit, to the nearest nanometre, ties up. */
  public static Length of(BigDecimal count, LengthUnit unit) {
    BigDecimal nanometres = count.multiply(BigDecimal.valueOf(unit.nanometres()));
    return ofNanometres(nanometres.setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  /** Returns the length of a binary number of a unit, to the nearest nanometre. */
  public static Length of(double count, LengthUnit unit) {
    double nanometres = count * unit.nanometres();
    double whole = Math.floor(nanometres);
    boolean sure = Math.abs(nanometres) < SURE && Math.abs(nanometres - whole - 0.5) > DOUBT;
    return sure
        ? ofNanometres((long) whole + (nanometres - whole > 0.5 ? 1 : 0))
        : of(BigDecimal.valueOf(count), unit);
  }

  /**
   * Reads the canonical form that {@link #toString()} prints, a decimal number of millimetres
   * followed by {@code mm}.
   *
   * @throws NumberFormatException if the text has another form
   */
  public static Length parse(String text) {
    if (!text.endsWith("mm")) {
      throw new NumberFormatException("not a canonical length: " + text);
    }
    BigDecimal count = new BigDecimal(text.substring(0, text.length() - 2));
    return ofNanometres(count.movePointRight(6).longValueExact());
  }

  /** Returns the whole number of nanometres. */
  public long nanometres() {
    return nanometres;
  }

  /** Returns this length as inches, for formulas with roots and for display only. */
  public double inches() {
    return in(LengthUnit.INCH);
  }

  /** Returns this length as a binary number of a unit. */
  public double in(LengthUnit unit) {
    return (double) nanometres / unit.nanometres();
  }

  /** Returns this length as a decimal of a unit, rounded half up to so many decimals. */
  public BigDecimal decimal(LengthUnit unit, int decimals) {
    return BigDecimal.valueOf(nanometres)
        .divide(BigDecimal.valueOf(unit.nanometres()), decimals, RoundingMode.HALF_UP);
  }

  /** Returns the sum of this and another length. */
  public Length plus(Length other) {
    return ofNanometres(Math.addExact(nanometres, other.nanometres));
  }

  /** Returns this less another length. */
  public Length minus(Length other) {
    return ofNanometres(Math.subtractExact(nanometres, other.nanometres));
  }

  /** Returns this length so many times. */
  public Length times(long factor) {
    return ofNanometres(Math.multiplyExact(nanometres, factor));
  }

  /** Returns this times a ratio, to the nearest nanometre, ties up. */
  public Length timesRatio(long numerator, long denominator) {
    long product = nanometres * numerator;
    boolean small =
        Math.multiplyHigh(nanometres, numerator) == product >> 63
            && Math.abs(product) < QUARTER
            && Math.abs(denominator) < QUARTER;
    if (small) {
      return ofNanometres(Math.floorDiv(2 * product + denominator, 2 * denominator));
    }
    BigInteger twice = BigInteger.valueOf(nanometres).multiply(BigInteger.valueOf(2 * numerator));
    BigInteger half = twice.add(BigInteger.valueOf(denominator));
    return ofNanometres(floorDivide(half, BigInteger.valueOf(2 * denominator)));
  }

  /** Returns one part of this length cut in so many, to the nearest nanometre, ties up. */
  public Length dividedBy(long parts) {
    return timesRatio(1, parts);
  }

  /** Returns this length with its sign turned. */
  public Length negated() {
    return ofNanometres(Math.negateExact(nanometres));
  }

  /** Returns the distance from zero. */
  public Length absolute() {
    return nanometres < 0 ? negated() : this;
  }

  /** Returns whether this is less than nothing. */
  public boolean isNegative() {
    return nanometres < 0;
  }

  /** Returns whether this is exactly nothing. */
  public boolean isZero() {
    return nanometres == 0;
  }

  /** Returns whether this is shorter than another. */
  public boolean isLessThan(Length other) {
    return nanometres < other.nanometres;
  }

  /** Returns whether this is longer than another. */
  public boolean isMoreThan(Length other) {
    return nanometres > other.nanometres;
  }

  /** Returns the shorter of two lengths. */
  public Length least(Length other) {
    return other.isLessThan(this) ? other : this;
  }

  /** Returns the longer of two lengths. */
  public Length most(Length other) {
    return other.isMoreThan(this) ? other : this;
  }

  /**
   * Rounds to the nearest step, ties up: {@code floor(round(x / step, 6) + 1/2) × step}.
   *
   * <p>The quotient is first rounded to six decimals, so that a value interpolated to the nearest
   * nanometre falls on a tie where the exact one does, in the program and in a spreadsheet alike.
   *
   * @param step the step, above zero; zero returns this length unchanged
   */
  public Length roundedTo(Length step) {
    return meanRoundedTo(1, step);
  }

  /**
   * Rounds the mean of several lengths whose sum this is, ties up, without rounding the mean first.
   *
   * @param count how many lengths were added
   * @param step the step; zero returns the mean to the nearest nanometre
   */
  public Length meanRoundedTo(int count, Length step) {
    if (step.nanometres == 0) {
      return dividedBy(count);
    }
    if (isSmall(nanometres) && isSmall(step.nanometres) && count <= MOST_PARTS) {
      long divisor = step.nanometres * count;
      long quotient = Math.floorDiv(2_000_000L * nanometres + divisor, 2 * divisor);
      return step.times(Math.floorDiv(quotient + 500_000, 1_000_000L));
    }
    BigInteger divisor = BigInteger.valueOf(step.nanometres).multiply(BigInteger.valueOf(count));
    BigInteger millionths = BigInteger.valueOf(nanometres).multiply(MILLION).shiftLeft(1);
    long quotient = floorDivide(millionths.add(divisor), divisor.shiftLeft(1));
    return step.times(Math.floorDiv(quotient + 500_000, 1_000_000L));
  }

  private static boolean isSmall(long nanometres) {
    return -SMALL < nanometres && nanometres < SMALL;
  }

  private static long floorDivide(BigInteger dividend, BigInteger divisor) {
    BigInteger[] parts = dividend.divideAndRemainder(divisor);
    BigInteger floor = parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    return floor.longValueExact();
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(nanometres, other.nanometres);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Length && ((Length) other).nanometres == nanometres;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(nanometres);
  }

  /** Returns the exact length in millimetres, such as {@code 374.65mm}. */
  @Override
  public String toString() {
    BigDecimal exact = BigDecimal.valueOf(nanometres, 6).stripTrailingZeros();
    return (exact.signum() == 0 ? "0" : exact.toPlainString()) + "mm";
  }
}
