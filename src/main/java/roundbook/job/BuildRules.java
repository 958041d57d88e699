package roundbook.job;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.units.Slope;

/**
 * The rules of a job: every setting's value with where it came from.
 *
 * <p>Values are typed by {@link Setting#kind()}: a {@link Length}, a {@link BigDecimal} or a {@link
 * String}. A setting without a value and without a default is absent.
 */
public final class BuildRules {
  private final Map<Setting, Value> values;

  private BuildRules(Map<Setting, Value> values) {
    this.values = new EnumMap<>(values);
  }

  /**
   * A setting's value and where it came from.
   *
   * @param value a {@link Length}, {@link BigDecimal} or {@link String}
   * @param origin who set it
   */
  public record Value(Object value, Origin origin) {}

  /** Who set a value; the first in this order wins. */
  public enum Origin {
    /** The command line. */
    OPTION,
    /** The job workbook. */
    WORKBOOK,
    /** The program's default. */
    DEFAULT
  }

  /** Returns rules of these values; a missing setting is absent, not its default. */
  public static BuildRules of(Map<Setting, Value> values) {
    return new BuildRules(values.isEmpty() ? new EnumMap<>(Setting.class) : values);
  }

  /** Returns the same rules with one value changed. */
  public BuildRules with(Setting setting, Object value, Origin origin) {
    Map<Setting, Value> changed = new EnumMap<>(values);
    changed.put(setting, new Value(value, origin));
    return new BuildRules(changed);
  }

  /**
   * Returns these rules with another job's value of a setting, or without one where it has none.
   */
  public BuildRules with(Setting setting, BuildRules other) {
    Map<Setting, Value> changed = new EnumMap<>(values);
    changed.remove(setting);
    other.value(setting).ifPresent(value -> changed.put(setting, value));
    return new BuildRules(changed);
  }

  /** Returns a setting's value and origin; empty when it has none. */
  public Optional<Value> value(Setting setting) {
    return Optional.ofNullable(values.get(setting));
  }

  /**
   * Returns a length that has a value.
   *
   * @throws IllegalStateException if it has none or is no length: a fault of the program
   */
  public Length length(Setting setting) {
    return optionalLength(setting).orElseThrow(() -> missing(setting));
  }

  /** Returns whether the foundation is higher under the second-laid walls. */
  public boolean stepsFoundation() {
    return text(Setting.FIRST_BED).equals("flat");
  }

  /** Returns a length; empty when it has no value. */
  public Optional<Length> optionalLength(Setting setting) {
    return value(setting).map(value -> (Length) value.value());
  }

  /** Returns a number; empty when it has no value. */
  public Optional<BigDecimal> optionalNumber(Setting setting) {
    return value(setting).map(value -> (BigDecimal) value.value());
  }

  /**
   * Returns a number that has a value.
   *
   * @throws IllegalStateException if it has none
   */
  public BigDecimal number(Setting setting) {
    return optionalNumber(setting).orElseThrow(() -> missing(setting));
  }

  /** Returns a text or choice; empty text when it has no value. */
  public String text(Setting setting) {
    return value(setting).map(value -> (String) value.value()).orElse("");
  }

  /** Returns the unit of the job: inch, millimetre or centimetre. */
  public LengthUnit unit() {
    return LengthUnit.ofSymbol(text(Setting.UNITS)).orElse(LengthUnit.INCH);
  }

  /** Returns whether a wing's ends drain outwards, and so do not hook into the wall they die in. */
  public boolean drains() {
    return text(Setting.REENTRANT).equals("drain");
  }

  /** Returns whether the job is in metric units. */
  public boolean metric() {
    return unit().metric();
  }

  /** Returns T, the sawn or hewn thickness of the logs. */
  public Length thickness() {
    return length(Setting.LOG_THICKNESS);
  }

  /** Returns g, the gap wanted at the crown. */
  public Length gap() {
    return length(Setting.CHINKING_GAP);
  }

  /** Returns whether walls that stand low or high as a whole come back to the height planned. */
  public boolean holdsHeight() {
    return text(Setting.HOLD_HEIGHT).equals("yes");
  }

  /** Returns o, the overhang past the outer face of the crossing wall. */
  public Length overhang() {
    return length(Setting.OVERHANG);
  }

  /** Returns s, the slope of the necks. */
  public Slope slope() {
    return new Slope(number(Setting.SLOPE_RUN));
  }

  /** Returns the step of a round's size; zero takes the exact mean. */
  public Length sizeStep() {
    return length(Setting.SIZE_STEP);
  }

  /** Returns the step that marks are printed to. */
  public Length printStep() {
    return length(Setting.PRINT_STEP);
  }

  /** Returns the number of rounds wanted; empty when it is left open. */
  public OptionalInt rounds() {
    Optional<BigDecimal> count = optionalNumber(Setting.ROUNDS);
    return count.isPresent() ? OptionalInt.of(count.get().intValue()) : OptionalInt.empty();
  }

  /** Returns whether the butts of a round run clockwise seen from above; they alternate. */
  public boolean clockwise(int round) {
    boolean first = !text(Setting.BUTTS_RUN).equals("counterclockwise");
    return first == (round % 2 == 1);
  }

  private static IllegalStateException missing(Setting setting) {
    return new IllegalStateException("no value of " + setting.label());
  }
}
