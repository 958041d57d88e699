package roundbook.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Rules by which yards and mills measure and sell logs.
 *
 * <p>Scaling takes peeled diameters in inches and lengths in feet. Each end is read to the nearest
 * whole inch, an exact half falling to the lower (USDA Forest Service volume library, region 9),
 * and a length counts in whole feet, the odd inches being trim. The cubic rules also take a log as
 * it was measured, rounding nothing ({@link #asMeasured}); so do the plain formulas {@link #huber},
 * {@link #smalian} and {@link #newton}, in any one unit.
 *
 * <p>The rules differ widely for one log. Always name the rule with the number, and read the yard's
 * own sheet: local practice on trim, long logs and defects goes before these.
 */
public enum LogRule {
  /**
   * {@code ((D − 4) / 4)² L} board feet at the small end, D in, L ft; printed tables round to the
   * nearest foot, halves up (printed Doyle tables).
   */
  DOYLE("Doyle", Unit.BOARD_FEET, BoardFeet::doyle),

  /**
   * {@code (0.79 D² − 2 D − 4) L / 16} board feet at the small end, a formula fitted to Scribner's
   * diagrams (Forest Functions, University of Missouri), to the nearest foot.
   */
  SCRIBNER("Scribner formula", Unit.BOARD_FEET, BoardFeet::scribner),

  /**
   * A factor for each inch of small end times the length, to the nearest ten board feet, with the
   * exceptions of the printed table (USDA Forest Service volume library, scribner factors).
   */
  SCRIBNER_DECIMAL_C("Scribner Decimal C", Unit.BOARD_FEET, ScribnerDecimalC::boardFeet),

  /**
   * {@code 0.904762 (0.22 D² − 0.71 D)} board feet for each 4 ft, D growing 1/2 in each 4 ft from
   * the small end, to the nearest five (Michigan Compiled Laws 290.401; what is left of 4 ft is a
   * share of the small end's section, as in the USDA Forest Service volume library).
   */
  INTERNATIONAL_QUARTER("International 1/4-inch", Unit.BOARD_FEET, BoardFeet::international),

  /** The middle's section times the length, {@code π d_m² L / 4}, to a tenth of a cubic foot. */
  HUBER("Huber", p -> huber(p.at((p.start() + p.end()) / 2), p.length())),

  /**
   * The mean of the end sections times the length, {@code 0.00272708 (d₁² + d₂²) L}, to a tenth of
   * a cubic foot (USDA Forest Service volume library). A flared butt makes it read high.
   */
  SMALIAN("Smalian", p -> smalian(p.at(p.start()), p.at(p.end()), p.length())),

  /** Ends and middle, {@code π (d₁² + 4 d_m² + d₂²) L / 24}, to a tenth of a cubic foot. */
  NEWTON("Newton", LogRule::newton);

  /** What a rule counts in. */
  public enum Unit {
    /** Board feet, 1 ft by 1 ft by 1 in of lumber expected from the log. */
    BOARD_FEET,
    /** Cubic feet of round wood. */
    CUBIC_FEET
  }

  /**
   * A log as a scaler measures it, under bark.
   *
   * @param large diameter of the large end, in
   * @param middle diameter at the middle of the length, in
   * @param small diameter of the small end, in
   * @param feet length without trim, ft
   */
  public record Measure(double large, double middle, double small, double feet) {
    /** Returns the measure of a log whose profile is in inches. */
    public static Measure of(RoundProfile inches) {
      double first = inches.at(inches.start());
      double last = inches.at(inches.end());
      double middle = inches.at((inches.start() + inches.end()) / 2);
      return new Measure(
          Math.max(first, last), middle, Math.min(first, last), inches.length() / 12);
    }

    /** Returns the whole feet of the length; odd inches are trim. */
    public double wholeFeet() {
      return Math.floor(feet + 1e-9);
    }

    /** Returns the log in feet, its diameters to the nearest inch, its length to the whole foot. */
    private RoundProfile wholeInches() {
      return RoundProfile.ofEven(
          wholeFeet(), inch(large) / 12, inch(middle) / 12, smallInch() / 12);
    }

    /** Returns the small end to the nearest inch, an exact half to the lower. */
    public double smallInch() {
      return inch(small);
    }
  }

  private static final double CUBIC_FOOT = 1728;
  private final String title;
  private final Unit unit;
  private final ToDoubleFunction<Measure> rule;
  private final Optional<ToDoubleFunction<RoundProfile>> volume;

  LogRule(String title, Unit unit, ToDoubleFunction<Measure> rule) {
    this.title = title;
    this.unit = unit;
    this.rule = rule;
    this.volume = Optional.empty();
  }

  /** A rule of volume, which scaling applies to whole inches and feet. */
  LogRule(String title, ToDoubleFunction<RoundProfile> volume) {
    this.title = title;
    this.unit = Unit.CUBIC_FEET;
    this.rule = log -> tenth(volume.applyAsDouble(log.wholeInches()));
    this.volume = Optional.of(volume);
  }

  /** Returns the name that the trade uses for the rule. */
  public String title() {
    return title;
  }

  /** Returns what the rule counts in. */
  public Unit unit() {
    return unit;
  }

  /** Returns the scale of a log taken as one piece, in the rule's unit, rounded as it rounds. */
  public double scale(Measure log) {
    return rule.applyAsDouble(log);
  }

  /**
   * Returns the scale of a log that is longer than one scaling length: segments of even feet, as
   * equal as they can be, the longer ones at the butt, each with its own small end, trim on the
   * last (USDA Forest Service volume library, which cites its scaling handbook FSH 2409.11; 20 ft
   * is its rule in the east, 32 or 40 ft on the west side).
   *
   * @param inches the profile from the butt end, in inches
   * @param mostFeet the longest length scaled as one piece, ft
   */
  public double scale(RoundProfile inches, double mostFeet) {
    List<Double> segments = segments(inches.length() / 12, mostFeet);
    double total = 0;
    double from = inches.start();
    for (int i = 0; i < segments.size(); i++) {
      boolean top = i == segments.size() - 1;
      double to = top ? inches.end() : from + 12 * segments.get(i);
      total += scale(Measure.of(inches.between(from, to)));
      from = to;
    }
    return total;
  }

  /**
   * Returns the scale of a log, a volume of the whole log just as it was measured, as metric yards
   * sell it, without trim, segments or rounding.
   *
   * @param inches the profile from the butt end, in inches
   * @param mostFeet the longest length scaled as one piece by a rule of board feet, ft
   */
  public double asMeasured(RoundProfile inches, double mostFeet) {
    return volume
        .map(each -> each.applyAsDouble(inches) / CUBIC_FOOT)
        .orElseGet(() -> scale(inches, mostFeet));
  }

  /**
   * Returns the lengths that a log is scaled in, ft, from the butt.
   *
   * @param feet the length of the log; odd inches are trim
   * @param mostFeet the longest length scaled as one piece
   */
  public static List<Double> segments(double feet, double mostFeet) {
    double whole = Math.floor(feet + 1e-9);
    int count = (int) Math.ceil(whole / mostFeet);
    double even = count == 0 ? 0 : 2 * Math.floor(whole / (2 * count));
    double left = whole - count * even;
    List<Double> lengths = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double more = Math.min(2, left);
      lengths.add(even + more);
      left -= more;
    }
    return lengths;
  }

  /** Returns the volume {@code π d_m² L / 4}; one unit for both, its cube out. */
  public static double huber(double middle, double length) {
    return Math.PI / 4 * middle * middle * length;
  }

  /** Returns the volume {@code π (d₁² + d₂²) L / 8}; one unit for all, its cube out. */
  public static double smalian(double first, double last, double length) {
    return (huber(first, length) + huber(last, length)) / 2;
  }

  /**
   * Returns the volume {@code π (d₁² + 4 d_m² + d₂²) L / 24}, exact for a cone, a paraboloid and a
   * neiloid; a profile's first, middle and last diameter, its unit's cube out.
   */
  public static double newton(RoundProfile profile) {
    return Simpson.over(profile.start(), profile.end(), x -> huber(profile.at(x), 1));
  }

  /** A diameter to the nearest inch, an exact half falling to the lower. */
  private static double inch(double diameter) {
    return Math.ceil(diameter - 0.5 - 1e-9);
  }

  private static double tenth(double cubicFeet) {
    return Math.floor(cubicFeet * 10 + 0.5) / 10;
  }
}
