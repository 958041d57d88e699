package roundbook.stack;

import java.util.List;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.units.Length;

/**
 * Corner heights read after a round against the height that was planned.
 *
 * <p>Corners further out than half the tolerance are put right in the next round. A corner that
 * reads low by e gets {@code L + e} under the next first-laid log, for less is cut away there; a
 * high one {@code L − e} (common practice). The second-laid logs keep the chart's marks unless the
 * first-laid ones were read too. Changes are at most half an inch (12 mm) in a round; the rest
 * waits for the next round.
 *
 * @param planned height wanted at every corner, from the heights' datum
 * @param readings heights read, of one corner or more
 * @param tolerance how much corners may be out of level
 */
public record Levelling(Length planned, List<Length> readings, Length tolerance) {
  /** Copies the list. */
  public Levelling {
    readings = List.copyOf(readings);
  }

  /** Returns the most that a lower mark is changed in one round. */
  public static Length mostChange(BuildRules rules) {
    return rules.metric() ? Length.ofMillimetres(12) : Length.ofInchFraction(1, 2);
  }

  /** Returns the check of readings after a round, under a job's rules. */
  public static Levelling of(Length planned, List<Length> readings, BuildRules rules) {
    return new Levelling(planned, readings, rules.length(Setting.LEVEL_TOLERANCE));
  }

  /** Returns how much a corner is low; negative when it is high. */
  public Length low(Length reading) {
    return planned.minus(reading);
  }

  /** Returns the highest reading less the lowest. */
  public Length spread() {
    Length most = readings.stream().reduce(Length::most).orElse(planned);
    return most.minus(readings.stream().reduce(Length::least).orElse(planned));
  }

  /** Returns whether the spread and every corner are within the tolerance. */
  public boolean level() {
    boolean out = readings.stream().anyMatch(each -> low(each).absolute().isMoreThan(tolerance));
    return !out && !spread().isMoreThan(tolerance);
  }

  /**
   * Returns whether the corners are so near the plan that the next lower marks stay the chart's.
   *
   * <p>That is half the tolerance, for the cuts of the next round add an error of their own: four
   * marks each out by 1/16 in put a corner out by 1/8 in.
   */
  public boolean settled() {
    return new Levelling(planned, readings, tolerance.dividedBy(2)).level();
  }

  /** Returns the lower mark of the next first-laid log at a corner, as for one laid next. */
  public Length nextLower(Length lower, Length reading, BuildRules rules) {
    return nextLower(lower, reading, Length.ZERO, rules);
  }

  /**
   * Returns the lower mark of the log that is laid next at a corner.
   *
   * @param lower L', its mark by the chart
   * @param reading what was read at the corner
   * @param before what the round has changed at this corner already
   * @param rules the limits and the step of marks
   */
  public Length nextLower(Length lower, Length reading, Length before, BuildRules rules) {
    if (settled()) {
      return lower;
    }
    Length most = mostChange(rules);
    Length change = low(reading).least(most.minus(before)).most(most.plus(before).negated());
    return lower.plus(change).roundedTo(rules.printStep());
  }

  /**
   * Returns how much the top that was read at a corner is to be pared down before more is laid.
   *
   * <p>A corner that reads the tolerance or more above the lowest one is pared to half the
   * tolerance above it, by half an inch (12 mm) at most. That takes wood off where it lies open,
   * and needs no log lifted again.
   *
   * @param reading what was read at the corner
   * @param rules the limits and the step of marks
   */
  public Length pare(Length reading, BuildRules rules) {
    Length over = reading.minus(readings.stream().reduce(Length::least).orElse(reading));
    if (over.isZero() || over.isLessThan(tolerance)) {
      return Length.ZERO;
    }
    Length wanted = over.minus(tolerance.dividedBy(2)).roundedTo(rules.printStep());
    return wanted.least(mostChange(rules));
  }
}
