package roundbook.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/**
 * Prints lengths the way a job's crew reads them off a tape.
 *
 * @param unit the unit of the job: inch, millimetre or centimetre
 * @param step the step that marks and tape distances are printed to; zero prints decimals
 * @param decimalMark stands before decimals, a point or a comma
 */
public record LengthFormat(LengthUnit unit, Length step, char decimalMark) {
  private static final Pattern FRACTION = Pattern.compile("\\d+/\\d+");
  private static final int DECIMALS = 6;

  /** Returns the format of a job in a unit, with marks printed to a step and decimal points. */
  public static LengthFormat forJob(LengthUnit unit, Length step) {
    return new LengthFormat(unit, step, '.');
  }

  /** Returns the same format with another mark before decimals. */
  public LengthFormat withDecimalMark(char mark) {
    return new LengthFormat(unit, step, mark);
  }

  /** Returns a mark rounded to the step, ties up, without its unit, such as {@code 3 1/2}. */
  public String mark(Length length) {
    return exact(length.roundedTo(step));
  }

  /**
   * Returns a tape distance rounded to the step: {@code 24' 6"} or {@code 2' 0 1/2"} in inch work,
   * a plain number of the unit with its symbol in metric work.
   */
  public String feetInches(Length length) {
    Length rounded = length.roundedTo(step);
    if (unit.metric()) {
      return exact(rounded) + " " + unit.symbol();
    }
    Length absolute = rounded.absolute();
    long feet = absolute.nanometres() / LengthUnit.FOOT.nanometres();
    String rest = exact(absolute.minus(Length.of(feet, LengthUnit.FOOT)));
    String inches = FRACTION.matcher(rest).matches() ? "0 " + rest : rest;
    return (rounded.isNegative() ? "-" : "") + feet + "' " + inches + "\"";
  }

  /** Returns an unrounded decimal of the job's unit for plain tables, at most six decimals. */
  public String decimal(Length length) {
    return plain(length.decimal(unit, DECIMALS));
  }

  /** Returns the symbol of the unit. */
  public String symbol() {
    return unit.symbol();
  }

  /** Returns a length without rounding: as an inch fraction where it is one, else as a decimal. */
  private String exact(Length length) {
    return unit.metric() ? marked(length) : inches(length);
  }

  private String marked(Length length) {
    return decimal(length).replace('.', decimalMark);
  }

  private String inches(Length length) {
    long inch = LengthUnit.INCH.nanometres();
    long nanometres = Math.abs(length.nanometres());
    long common = gcd(nanometres % inch, inch);
    long denominator = inch / common;
    if (denominator > 64 || Long.bitCount(denominator) != 1) {
      return marked(length);
    }
    long whole = nanometres / inch;
    long numerator = nanometres % inch / common;
    String fraction = numerator == 0 ? "" : numerator + "/" + denominator;
    String digits = whole == 0 && numerator > 0 ? fraction : (whole + " " + fraction).strip();
    return (length.isNegative() ? "-" : "") + digits;
  }

  private static long gcd(long one, long other) {
    return BigInteger.valueOf(one).gcd(BigInteger.valueOf(other)).longValueExact();
  }

  private static String plain(BigDecimal number) {
    BigDecimal trimmed = number.setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
    return trimmed.signum() == 0 ? "0" : trimmed.toPlainString();
  }
}
