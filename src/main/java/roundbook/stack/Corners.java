package roundbook.stack;

import java.util.List;
import java.util.Map;
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
 * what it was out and gains what the lower mark under the first-laid log there is changed by.
 * Corners that are out are put right by the next lower marks ({@link Levelling}), by half an inch a
 * round at most, the rest in the rounds after.
 *
 * <p>Four marks lie between one reading and the next: the first-laid log's lower and upper one, the
 * second-laid log's lower and upper one. What a reading differs from what was to be expected is
 * shared among them evenly, so a quarter of it is in the first-laid log's height and three quarters
 * in the second-laid one's.
 *
 * @param high how much each corner is above the plan after each round
 * @param change what the lower mark of the first-laid log differs from the chart's
 * @param misfit what a reading differs from what was expected; zero without a reading
 */
public record Corners(
    Map<Corner, Length> high, Map<Corner, Length> change, Map<Corner, Length> misfit) {
  /** Every corner as planned. */
  public static final Corners AS_PLANNED = new Corners(Map.of(), Map.of(), Map.of());

  /** Copies the maps. */
  public Corners {
    high = new TreeMap<>(high);
    change = new TreeMap<>(change);
    misfit = new TreeMap<>(misfit);
  }

  /** Returns how much a corner is above the plan after a round; negative when it is low. */
  public Length high(int round, String corner) {
    return high.getOrDefault(new Corner(round, corner), Length.ZERO);
  }

  /** Returns what a round's lower mark at a corner differs from the chart's. */
  public Length change(int round, String corner) {
    return change.getOrDefault(new Corner(round, corner), Length.ZERO);
  }

  /**
   * Returns the lower mark at a corner in the round after one.
   *
   * @param round the round after which the corners are looked at
   * @param corner the corner
   * @param chart the next round's lower mark by the chart
   * @param building the walls
   * @param rules the limits and the step of marks
   */
  public Length nextLower(
      int round, String corner, Length chart, Building building, BuildRules rules) {
    List<Length> heights = building.corners().stream().map(each -> high(round, each)).toList();
    return Levelling.of(Length.ZERO, heights, rules).nextLower(chart, high(round, corner), rules);
  }

  /** Returns how much the centre line of a log is above the plan at a corner. */
  public Length lift(int round, boolean firstLaid, String corner) {
    Length start = high(round - 1, corner).plus(change(round, corner));
    Length share = misfit.getOrDefault(new Corner(round, corner), Length.ZERO);
    return start.plus(share.times(firstLaid ? 1 : 3).dividedBy(4));
  }

  /** Returns how much further apart the logs of a joint are at its two ends than planned. */
  Joint.More between(PlacedLog lower, PlacedLog upper, Building building) {
    String left = building.endCorner(lower.wall());
    String right = building.startCorner(lower.wall());
    return new Joint.More(more(lower, upper, left), more(lower, upper, right));
  }

  private Length more(PlacedLog lower, PlacedLog upper, String corner) {
    boolean first = lower.wall().laidFirst();
    return lift(upper.round(), first, corner).minus(lift(lower.round(), first, corner));
  }

  /** Works the corners out from the lowest round up. */
  static Corners of(BuildRules rules, Building building, Stack planned, AsBuilt built) {
    return built.readings().isEmpty()
        ? AS_PLANNED
        : new Reckoning(rules, building, planned, built).corners();
  }

  /** Goes through the rounds once. */
  private static final class Reckoning {
    private final BuildRules rules;
    private final Building building;
    private final Stack planned;
    private final AsBuilt built;
    private final Map<Corner, Length> high = new TreeMap<>();
    private final Map<Corner, Length> change = new TreeMap<>();
    private final Map<Corner, Length> misfit = new TreeMap<>();

    Reckoning(BuildRules rules, Building building, Stack planned, AsBuilt built) {
      this.rules = rules;
      this.building = building;
      this.planned = planned;
      this.built = built;
    }

    Corners corners() {
      for (int round = 1; round <= planned.courses().size(); round++) {
        for (String corner : building.corners()) {
          change(round, corner);
          rise(round, corner);
        }
      }
      return new Corners(high, change, misfit);
    }

    private void change(int round, String corner) {
      Length lower = planned.courses().get(round - 1).notch().lower();
      boolean asTyped = built.measures(round, firstLaid(corner)).lowerCut().isPresent();
      if (round == 1 || asTyped) {
        change.put(new Corner(round, corner), Length.ZERO);
        return;
      }
      Corners below = new Corners(high, Map.of(), Map.of());
      Length next = below.nextLower(round - 1, corner, lower, building, rules);
      change.put(new Corner(round, corner), next.minus(lower));
    }

    private void rise(int round, String corner) {
      Corner here = new Corner(round, corner);
      Length expected = at(round - 1, corner).plus(change.get(here));
      Length now =
          built
              .reading(round, corner)
              .map(read -> read.minus(planned.levelHeight(round)))
              .orElse(expected);
      high.put(here, now);
      misfit.put(here, now.minus(expected));
    }

    private Length at(int round, String corner) {
      return high.getOrDefault(new Corner(round, corner), Length.ZERO);
    }

    private String firstLaid(String corner) {
      return building.walls().stream()
          .filter(Wall::laidFirst)
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
    List<Length> all = building.corners().stream().map(each -> high(round, each)).toList();
    Length most = all.stream().reduce(Length::most).orElseThrow();
    return most.minus(all.stream().reduce(Length::least).orElseThrow());
  }

  /** Returns whether every corner is within the tolerance of the plan and of each other. */
  public boolean level(int round, Building building, BuildRules rules) {
    List<Length> all = building.corners().stream().map(each -> high(round, each)).toList();
    return new Levelling(Length.ZERO, all, rules.length(Setting.LEVEL_TOLERANCE)).level();
  }
}
