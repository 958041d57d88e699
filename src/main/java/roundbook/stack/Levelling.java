package roundbook.stack;

import java.util.List;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.units.Length;

/**
 * Corner heights read after a round against the height that was planned.
 *
 * <p>What all corners have in common is no fault of level: walls that stand low as a whole are
 * level walls, and the plan goes on from where they stand. What differs is put right. The height
 * that counts as level is that of the two middle readings, or the plan where it lies between them:
 * it asks the least of all marks, and a corner that is right is never touched for one that is not.
 *
 * <p>Corners that differ by more than half the tolerance are put right in the next round. One that
 * reads low by e gets {@code L + e} under the next first-laid log, for less is cut away there; a
 * high one {@code L − e} (common practice), by half an inch (12 mm) at most in a round; the rest
 * waits for the next. A top that stands alone and high is pared instead. The second-laid logs keep
 * the chart's marks unless the first-laid ones were read too.
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

  /** Returns the least change of a lower mark that is worth a mark of its own at each corner. */
  public static Length leastChange(BuildRules rules) {
    return rules.metric() ? Length.ofMillimetres(3) : Length.ofInchFraction(1, 8);
  }

  /** Returns the check of readings after a round, under a job's rules. */
  public static Levelling of(Length planned, List<Length> readings, BuildRules rules) {
    return new Levelling(planned, readings, rules.length(Setting.LEVEL_TOLERANCE));
  }

  /** Returns how much the walls as a whole stand above the plan; negative when they are low. */
  public Length common() {
    if (readings.isEmpty()) {
      return Length.ZERO;
    }
    List<Length> sorted = readings.stream().sorted().toList();
    Length lower = sorted.get((sorted.size() - 1) / 2).minus(planned);
    Length upper = sorted.get(sorted.size() / 2).minus(planned);
    return Length.ZERO.most(lower).least(upper);
  }

  /** Returns how much a corner is lower than the walls stand; negative when it is higher. */
  public Length low(Length reading) {
    return planned.plus(common()).minus(reading);
  }

  /** Returns the highest reading less the lowest. */
  public Length spread() {
    Length most = readings.stream().reduce(Length::most).orElse(planned);
    return most.minus(readings.stream().reduce(Length::least).orElse(planned));
  }

  /** Returns whether the corners are within the tolerance of each other. */
  public boolean level() {
    return !spread().isMoreThan(tolerance);
  }

  /**
   * Returns whether the corners are so near each other that the next lower marks stay the chart's.
   *
   * <p>That is half the tolerance, for the cuts of the next round add an error of their own: four
   * marks each out by 1/16 in put a corner out by 1/8 in. Nor are marks changed while every corner
   * is within less than 1/8 in (3 mm) of where the walls stand: four numbers for one cost more than
   * they mend.
   */
  public boolean settled(BuildRules rules) {
    Length least = leastChange(rules);
    boolean small = readings.stream().allMatch(each -> low(each).absolute().isLessThan(least));
    return small || !spread().isMoreThan(tolerance.dividedBy(2));
  }

  /**
   * Returns the lower mark of the next first-laid log at a corner, all of which were read, as the
   * corners stand once their tops are pared: the same as when they are read again.
   */
  public Length nextLower(Length lower, Length reading, BuildRules rules) {
    List<Length> left = readings.stream().map(each -> each.minus(pare(each, rules))).toList();
    Levelling pared = new Levelling(planned, left, tolerance);
    return pared.nextLower(lower, reading.minus(pare(reading, rules)), Length.ZERO, rules);
  }

  /**
   * Returns the lower mark of the log that is laid next at a corner, without regard to paring.
   *
   * @param lower L', its mark by the chart
   * @param reading what was read at the corner
   * @param before what the round has changed at this corner already
   * @param rules the limits and the step of marks
   */
  public Length nextLower(Length lower, Length reading, Length before, BuildRules rules) {
    if (settled(rules)) {
      return lower;
    }
    Length most = mostChange(rules);
    Length change = low(reading).least(most.minus(before)).most(most.plus(before).negated());
    return lower.plus(change).roundedTo(rules.printStep());
  }

  /**
   * Returns how much the top that was read at a corner is to be pared down before more is laid, all
   * corners being read.
   *
   * <p>A top that stands alone, the tolerance or more above the height that counts as level, is
   * pared to half the tolerance above it; so is any that a lower mark alone could not put right in
   * a round. Half an inch (12 mm) at most: that takes wood off where it lies open, and needs no log
   * lifted again.
   *
   * @param reading what was read at the corner
   * @param rules the limits and the step of marks
   */
  public Length pare(Length reading, BuildRules rules) {
    Length over = low(reading).negated();
    boolean alone = !over.isZero() && !over.isLessThan(tolerance) && isAlone();
    if (!alone && !over.isMoreThan(mostChange(rules))) {
      return Length.ZERO;
    }
    Length wanted = over.minus(tolerance.dividedBy(2)).roundedTo(rules.printStep());
    return wanted.least(mostChange(rules));
  }

  /** Returns whether no more than one reading is over half the tolerance high. */
  private boolean isAlone() {
    Length half = tolerance.dividedBy(2);
    return readings.stream().filter(each -> low(each).negated().isMoreThan(half)).count() <= 1;
  }
}
