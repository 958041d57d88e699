package roundbook.stack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.units.Length;

/**
 * How high each corner stands against the plan after every round: as read, and as it will be.
 *
 * <p>A reading tells how much a corner is high after its round. Where there is none a corner keeps
 * what it was out and gains what the lower marks there are changed by. Corners that are out are put
 * right by the lower marks of the next first-laid logs and, where those are read in their turn, of
 * the second-laid logs on them ({@link Levelling}): by half an inch a round at most, the rest in
 * the rounds after.
 *
 * <p>Four marks lie between one reading after a round and the next: the first-laid log's lower and
 * upper one, the second-laid log's lower and upper one. What a reading differs from what was to be
 * expected is shared evenly among the marks since the reading before. So without a reading within
 * the round a quarter is in the first-laid log's height and three quarters in the second-laid
 * one's; with one, half of each difference is in the log that was read.
 *
 * @param all each corner after each round; a corner that is not there is as planned
 */
public record Corners(Map<Corner, At> all) {
  /** Every corner as planned. */
  public static final Corners AS_PLANNED = new Corners(Map.of());

  /** Copies the map. */
  public Corners {
    all = new TreeMap<>(all);
  }

  /**
   * One corner in one round.
   *
   * @param change what the lower mark of the first-laid log differs from the chart's
   * @param firstHigh how much the top of the first-laid log is above the plan
   * @param secondChange what the lower mark of the second-laid log differs from the chart's
   * @param high how much the corner is above the plan after the round
   * @param firstLift how much the first-laid log's centre line is above the plan
   * @param secondLift how much the second-laid log's centre line is above the plan
   */
  public record At(
      Length change,
      Length firstHigh,
      Length secondChange,
      Length high,
      Length firstLift,
      Length secondLift) {
    private static final At AS_PLANNED =
        new At(Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO);
  }

  /** Returns a corner in a round. */
  public At at(int round, String corner) {
    return all.getOrDefault(new Corner(round, corner), At.AS_PLANNED);
  }

  /** Returns how much a corner is above the plan after a round; negative when it is low. */
  public Length high(int round, String corner) {
    return at(round, corner).high();
  }

  /** Returns what the lower mark of a round's log at a corner differs from the chart's. */
  public Length change(int round, boolean firstLaid, String corner) {
    At at = at(round, corner);
    return firstLaid ? at.change() : at.secondChange();
  }

  /**
   * Returns the lower mark of the first-laid log at a corner in the round after one.
   *
   * @param round the round after which the corners are looked at
   * @param corner the corner
   * @param chart the next round's lower mark by the chart
   * @param building the walls
   * @param rules the limits and the step of marks
   */
  public Length nextLower(
      int round, String corner, Length chart, Building building, BuildRules rules) {
    return Levelling.of(Length.ZERO, heights(round, building), rules)
        .nextLower(chart, high(round, corner), Length.ZERO, rules);
  }

  private List<Length> heights(int round, Building building) {
    return building.corners().stream().map(each -> high(round, each)).toList();
  }

  /** Returns how much the centre line of a log is above the plan at a corner. */
  public Length lift(int round, boolean firstLaid, String corner) {
    At at = at(round, corner);
    return firstLaid ? at.firstLift() : at.secondLift();
  }

  /** Returns how much further apart the logs of a joint are at its two ends than planned. */
  Joint.More between(FilledPlace lower, FilledPlace upper, Building building) {
    String left = building.endCorner(lower.wall());
    String right = building.startCorner(lower.wall());
    return new Joint.More(more(lower, upper, left), more(lower, upper, right));
  }

  private Length more(FilledPlace lower, FilledPlace upper, String corner) {
    boolean first = lower.wall().laidFirst();
    return lift(upper.round(), first, corner).minus(lift(lower.round(), first, corner));
  }

  /** Works the corners out from the lowest round up. */
  static Corners of(BuildRules rules, Building building, Stack planned, AsBuilt built) {
    return built.readings().isEmpty() && built.firstReadings().isEmpty()
        ? AS_PLANNED
        : new Reckoning(rules, building, planned, built).corners();
  }

  /** Goes through the rounds once. */
  private static final class Reckoning {
    private final BuildRules rules;
    private final Building building;
    private final Stack planned;
    private final AsBuilt built;
    private Corners below = AS_PLANNED;

    Reckoning(BuildRules rules, Building building, Stack planned, AsBuilt built) {
      this.rules = rules;
      this.building = building;
      this.planned = planned;
      this.built = built;
    }

    Corners corners() {
      for (int round = 1; round <= planned.courses().size(); round++) {
        Map<Corner, At> all = new TreeMap<>(below.all());
        Map<String, Length> firsts = new TreeMap<>();
        for (String corner : building.corners()) {
          firsts.put(corner, firstHigh(round, corner));
        }
        for (String corner : building.corners()) {
          all.put(new Corner(round, corner), at(round, corner, firsts));
        }
        below = new Corners(all);
      }
      return below;
    }

    private Length chart(int round) {
      return planned.courses().get(round - 1).notch().lower();
    }

    private Length change(int round, String corner) {
      if (round == 1 || isCut(round, corner, true)) {
        return Length.ZERO;
      }
      Length chart = chart(round);
      return below.nextLower(round - 1, corner, chart, building, rules).minus(chart);
    }

    /** Returns how high the first-laid log was expected to lie at a corner. */
    private Length expected(int round, String corner) {
      return below.high(round - 1, corner).plus(change(round, corner));
    }

    private Length firstHigh(int round, String corner) {
      return built
          .firstReading(round, corner)
          .map(read -> read.minus(planned.firstLevelHeight(round)))
          .orElseGet(() -> expected(round, corner));
    }

    private Length secondChange(int round, String corner, Map<String, Length> firsts) {
      if (built.firstReading(round, corner).isEmpty() || isCut(round, corner, false)) {
        return Length.ZERO;
      }
      Length chart = chart(round);
      return Levelling.of(Length.ZERO, List.copyOf(firsts.values()), rules)
          .nextLower(chart, firsts.get(corner), change(round, corner), rules)
          .minus(chart);
    }

    private At at(int round, String corner, Map<String, Length> firsts) {
      Length change = change(round, corner);
      Length first = firsts.get(corner);
      Length second = secondChange(round, corner, firsts);
      Length start = expected(round, corner);
      Length onTop = first.plus(second);
      Optional<Length> read =
          built.reading(round, corner).map(each -> each.minus(planned.levelHeight(round)));
      Length high = read.orElse(onTop);
      Length misfit = high.minus(onTop);
      if (built.firstReading(round, corner).isEmpty()) {
        Length quarter = misfit.dividedBy(4);
        return new At(
            change,
            first,
            second,
            high,
            start.plus(quarter),
            start.plus(misfit.times(3).dividedBy(4)));
      }
      Length firstLift = start.plus(first.minus(start).dividedBy(2));
      return new At(change, first, second, high, firstLift, onTop.plus(misfit.dividedBy(2)));
    }

    /** Returns whether the lower mark of a log at a corner was typed as it was cut. */
    private boolean isCut(int round, String corner, boolean firstLaid) {
      return built.measures(round, wallAt(corner, firstLaid)).lowerCut().isPresent();
    }

    private String wallAt(String corner, boolean firstLaid) {
      return building.walls().stream()
          .filter(wall -> wall.laidFirst() == firstLaid)
          .filter(
              wall ->
                  building.startCorner(wall).equals(corner)
                      || building.endCorner(wall).equals(corner))
          .map(Wall::name)
          .findFirst()
          .orElseThrow();
    }
  }

  /** Returns the largest corner's height less the smallest's after a round. */
  public Length spread(int round, Building building) {
    List<Length> all = heights(round, building);
    Length most = all.stream().reduce(Length::most).orElseThrow();
    return most.minus(all.stream().reduce(Length::least).orElseThrow());
  }

  /** Returns whether every corner is within the tolerance of the plan and of each other. */
  public boolean level(int round, Building building, BuildRules rules) {
    Length tolerance = rules.length(Setting.LEVEL_TOLERANCE);
    return new Levelling(Length.ZERO, heights(round, building), tolerance).level();
  }
}
