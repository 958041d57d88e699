package roundbook.buying;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import roundbook.job.Price.Basis;
import roundbook.units.LengthUnit;
import roundbook.wood.LogRule;
import roundbook.wood.LogRule.Unit;
import roundbook.wood.RoundProfile;

/**
 * How much one log is, in each of the ways that logs are sold by.
 *
 * @param profile the log's diameters from the butt, in inches, without the excess that is not
 *     scaled
 * @param cubicFeet its volume of round wood, ft³
 * @param pounds its green weight, lb
 * @param scaledMost the longest length scaled as one piece, ft
 */
public record Quantities(RoundProfile profile, double cubicFeet, double pounds, double scaledMost) {
  /**
   * Solid wood in a stacked cord of 128 ft³: 62 percent, the rest bark and air (common practice).
   */
  public static final double SOLID_CORD = 0.62 * 128;

  /** How much thinner measured spruce and pine logs grow in a foot, in inches, in the median. */
  static final double TAPER = 0.13;

  private static final double CUBIC_METRE = 1 / StrictMath.pow(0.3048, 3);
  private static final double SHORT_TON = 2000;
  private static final double TONNE = 1000 / 0.45359237;
  private static final int DECIMALS = 4;

  private static final Map<Basis, LogRule> RULES =
      Map.of(
          Basis.DOYLE, LogRule.DOYLE,
          Basis.SCRIBNER, LogRule.SCRIBNER,
          Basis.SCRIBNER_DECIMAL_C, LogRule.SCRIBNER_DECIMAL_C,
          Basis.INTERNATIONAL_QUARTER, LogRule.INTERNATIONAL_QUARTER);

  /**
   * Returns how much one log of a line of an order is.
   *
   * <p>Its small end is taken 0.13 in a foot thinner than its middle, as upper logs of measured
   * spruce and pine stems taper in the median; its excess is not scaled.
   */
  public static Quantities of(Line line, double scaledMost) {
    double feet = line.lengths().ask().inches() / 12;
    double mid = line.band().middle().inches();
    double half = TAPER * feet / 2;
    RoundProfile profile = RoundProfile.ofEven(12 * feet, mid + half, mid, mid - half);
    return new Quantities(profile, line.cubicFeet(), line.pounds(), scaledMost);
  }

  /** Returns how much the log is in a basis, to four decimals. */
  public BigDecimal in(Basis basis) {
    return BigDecimal.valueOf(exactly(basis)).setScale(DECIMALS, RoundingMode.HALF_UP);
  }

  private double exactly(Basis basis) {
    return switch (basis) {
      case EACH -> 1;
      case FOOT -> profile.length() / 12;
      case METRE -> profile.length() * LengthUnit.INCH.nanometres() / 1e9;
      case DOYLE, SCRIBNER, SCRIBNER_DECIMAL_C, INTERNATIONAL_QUARTER ->
          RULES.get(basis).scale(profile, scaledMost);
      case CUBIC_FOOT -> cubicFeet;
      case CUBIC_METRE -> cubicFeet / CUBIC_METRE;
      case CORD -> cubicFeet / SOLID_CORD;
      case TON -> pounds / SHORT_TON;
      case TONNE -> pounds / TONNE;
    };
  }

  /** Returns the scale of the log by a rule, in the rule's unit. */
  public double scale(LogRule rule) {
    return rule.unit() == Unit.BOARD_FEET ? rule.scale(profile, scaledMost) : cubicFeet;
  }
}
