package roundbook.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.units.Length;

/**
 * The sizes of rounds that are wanted before a log is owned, and the height they come to.
 *
 * @param rounds the size D of every round, the lowest first
 * @param gap g, the gap wanted at the crown
 * @param starter whether the second-laid walls begin on half a log, which lifts all the others
 */
public record Sizes(List<Length> rounds, Length gap, boolean starter) {
  private static final int ROUNDS_MOST = 200;

  /** Copies the list. */
  public Sizes {
    rounds = List.copyOf(rounds);
  }

  /**
   * Returns the sizes for the rounds or the height that a job asks for.
   *
   * <p>Sizes fall evenly from {@code Mid_bottom} to {@code Mid_top}, each rounded to the step of
   * sizes. Of a height that number of rounds is taken whose height comes nearest, the fewer on a
   * tie. What no wall could be built of is refused: a height that is missed by more than half a
   * course, sizes that step too far from one round to the next, and sizes too thin for the bearings
   * or the neck.
   */
  public static Read<Sizes> of(BuildRules rules, Building building) {
    Optional<Length> height = rules.optionalLength(Setting.WALL_HEIGHT);
    if (rules.rounds().isPresent()) {
      Sizes counted = of(rules, rules.rounds().getAsInt());
      Read<Sizes> read = checked(counted, rules, building);
      boolean unused = height.filter(counted::misses).isPresent() && read.value().isPresent();
      return unused
          ? Read.of(
              counted,
              List.of(
                  counted
                      .told("rounds", height.get(), rules)
                      .as(Severity.WARNING)
                      .remedyOf("height-or-rounds")))
          : read;
    }
    if (height.isEmpty()) {
      return Refusal.read(Refusal.of(ProblemCode.ORDER_HEIGHT, "untold"));
    }
    Sizes nearest = nearest(rules, height.get());
    return nearest.misses(height.get())
        ? Refusal.read(nearest.told("far", height.get(), rules))
        : checked(nearest, rules, building);
  }

  /** Returns whether they come to more than half a course more or less than a height. */
  private boolean misses(Length height) {
    Length course = rounds.stream().reduce(Length::most).orElseThrow().plus(gap);
    return miss(height).times(2).isMoreThan(course);
  }

  /** Returns what they come to beside a height that they miss. */
  private Problem told(String variant, Length height, BuildRules rules) {
    return Refusal.of(ProblemCode.ORDER_HEIGHT, count() == 1 ? variant + ".one" : variant)
        .with("height", Refusal.printed(height, rules))
        .with("count", count())
        .with("nearest", Refusal.printed(height(), rules));
  }

  private static Sizes nearest(BuildRules rules, Length height) {
    Sizes best = of(rules, 1);
    for (int count = 2; count <= ROUNDS_MOST; count++) {
      Sizes next = of(rules, count);
      if (!next.miss(height).isLessThan(best.miss(height))) {
        return best;
      }
      best = next;
    }
    return best;
  }

  private Length miss(Length height) {
    return height.minus(height()).absolute();
  }

  /** Returns the sizes of so many rounds, as the rules ask for them, unchecked. */
  static Sizes of(BuildRules rules, int count) {
    Length bottom = rules.length(Setting.MID_BOTTOM);
    Length fall = bottom.minus(rules.length(Setting.MID_TOP));
    Length step = rules.sizeStep().isZero() ? usualStep(rules) : rules.sizeStep();
    List<Length> sizes = new ArrayList<>();
    for (int round = 0; round < count; round++) {
      sizes.add(bottom.minus(fall.timesRatio(round, Math.max(1, count - 1))).roundedTo(step));
    }
    return new Sizes(sizes, rules.gap(), rules.text(Setting.FIRST_BED).equals("starter"));
  }

  private static Length usualStep(BuildRules rules) {
    return rules.metric() ? Length.ofMillimetres(10) : Length.ofInchFraction(1, 2);
  }

  private static Read<Sizes> checked(Sizes sizes, BuildRules rules, Building building) {
    Length most = rules.length(Setting.STEP_MOST);
    for (int round = 1; round < sizes.count(); round++) {
      Length step = sizes.size(round).minus(sizes.size(round + 1)).absolute();
      if (step.isMoreThan(most)) {
        return Refusal.read(
            Refusal.of(ProblemCode.ORDER_BAND, "step")
                .with("round", round)
                .with("next", round + 1)
                .with("step", Refusal.printed(step, rules)));
      }
    }
    Length thinnest = sizes.rounds.stream().reduce(Length::least).orElseThrow();
    Length least = least(rules, building);
    if (thinnest.isLessThan(least)) {
      return Refusal.read(
          Refusal.of(ProblemCode.ORDER_BAND, "thin")
              .with("size", Refusal.printed(thinnest, rules))
              .with("least", Refusal.printed(least, rules)));
    }
    return Read.of(sizes, List.of());
  }

  /**
   * Returns the least size of a round whose untapered logs bear over the whole notch, above and
   * below, and whose neck is as thick as the rules ask.
   *
   * <p>With T the largest thickness: {@code (2/3) (c + √(4 c² + 3 T²))}, c being {@code 3 g / 2}
   * for the upper bearing and {@code 2 s T − g / 2} for the lower one; {@code 2 (Neck_least + s T)
   * − g} for the neck.
   */
  static Length least(BuildRules rules, Building building) {
    Length thick =
        building.walls().stream().map(Wall::thickness).reduce(Length::most).orElseThrow();
    Length drop = rules.slope().dropOver(thick);
    Length neck = rules.length(Setting.NECK_LEAST).plus(drop).times(2).minus(rules.gap());
    Length top = bearing(rules.gap().times(3).dividedBy(2), thick);
    Length bottom = bearing(drop.times(2).minus(rules.gap().dividedBy(2)), thick);
    return neck.most(top).most(bottom);
  }

  private static Length bearing(Length c, Length thick) {
    double depth = c.inches();
    double t = thick.inches();
    double least = 2.0 / 3 * (depth + Math.sqrt(4 * depth * depth + 3 * t * t));
    return Length.of(least, roundbook.units.LengthUnit.INCH);
  }

  /** Returns how many rounds there are. */
  public int count() {
    return rounds.size();
  }

  /** Returns the size of a round, counted from 1. */
  public Length size(int round) {
    return rounds.get(round - 1);
  }

  /** Returns the size of the last round. */
  public Length last() {
    return rounds.get(rounds.size() - 1);
  }

  /**
   * Returns the height of the last second-laid crowns above the first bed, {@code Σ D + R g + (D_R
   * − 3 g) / 4}, and {@code U₁} more on a starter.
   */
  public Length height() {
    return courses().plus(last().minus(gap.times(3)).dividedBy(4));
  }

  /** Returns the height of the last first-laid crowns, {@code Σ D + R g − D_R / 4 − 5 g / 4}. */
  public Length firstLaidHeight() {
    return courses().minus(last().dividedBy(4)).minus(gap.times(5).dividedBy(4));
  }

  private Length courses() {
    Length sum = rounds.stream().reduce(Length.ZERO, Length::plus).plus(gap.times(count()));
    return starter ? sum.plus(rounds.get(0).plus(gap.times(3)).dividedBy(4)) : sum;
  }

  /** Returns the notch of a round. */
  Notch notch(int round, BuildRules rules) {
    return Notch.of(size(round), rules);
  }
}
