package roundbook.report.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.plan.PiecePlan.Weight;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Prints lengths and numbers for plain tables, never in another form on another machine.
 *
 * @param metric whether lengths are in millimetres and weights in kilograms
 */
public record Decimals(boolean metric) {
  private static final int PLACES = 6;

  /** Returns the unit of the lengths: inches or millimetres, in a job of centimetres too. */
  LengthUnit unit() {
    return metric ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
  }

  /** Returns the symbol in the headings. */
  public String symbol() {
    return unit().symbol();
  }

  /** Returns a length as a decimal without trailing zeros. */
  public String one(Length length) {
    return trimmed(length.decimal(unit(), PLACES));
  }

  /** Returns a weight in the unit of the job, to a thousandth. */
  public String weight(Weight weight) {
    return plain(metric ? weight.kilograms() : weight.pounds());
  }

  /** Returns a setting's value as it can be read again; empty when it has none. */
  public String setting(Setting setting, BuildRules rules) {
    Object value = rules.value(setting).map(BuildRules.Value::value).orElse("");
    if (value instanceof Length length) {
      return one(length);
    }
    return value instanceof BigDecimal number ? trimmed(number) : String.valueOf(value);
  }

  /** Returns a number to a thousandth, without trailing zeros. */
  public static String plain(double number) {
    return plain(number, 3);
  }

  /** Returns a number to so many decimals, without trailing zeros. */
  public static String plain(double number, int decimals) {
    return trimmed(BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP));
  }

  private static String trimmed(BigDecimal number) {
    BigDecimal bare = number.stripTrailingZeros();
    return bare.signum() == 0 ? "0" : bare.toPlainString();
  }
}
