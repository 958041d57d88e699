package roundbook.stack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.units.Length;

/**
 * How high each corner stands against the plan after every round: as read, and as it will be.
 *
 * <p>A reading tells how much a corner is high after its round. What all corners of a round have in
 * common moves the plan: every height above goes on from there, unless {@code Hold_height} asks for
 * the height that was planned, which then comes back over the rounds that are left. Where there is
 * no reading a corner keeps what it was out and gains what the lower marks there are changed by.
 * Corners that differ are put right by the lower marks of the next first-laid logs and, where those
 * are read in their turn, of the second-laid logs on them ({@link Levelling}).
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
   * One corner in one round; heights are against the plan as it goes on from the round below.
   *
   * @param change what the lower mark of the first-laid log differs from the chart's
   * @param firstHigh how much the top of the first-laid log is above the plan
   * @param secondChange what the lower mark of the second-laid log differs from the chart's
   * @param high how much the corner is above the plan after the round
   * @param pare how much its top is to be pared down after the round
   * @param even what the next lower mark is changed by to bring the corner level with the others
   * @param lifts how much the logs' centre lines are above the plan
   */
  public record At(
      Length change,
      Length firstHigh,
      Length secondChange,
      Length high,
      Length pare,
      Length even,
      Lifts lifts) {
    private static final At AS_PLANNED =
        new At(
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            new Lifts(Length.ZERO, Length.ZERO));
  }

  /**
   * How much the two logs' centre lines are above the plan at a corner.
   *
   * @param first the first-laid log's
   * @param second the second-laid log's
   */
  public record Lifts(Length first, Length second) {}

  /** Returns a corner in a round. */
  public At at(int round, String corner) {
    return all.getOrDefault(new Corner(round, corner), At.AS_PLANNED);
  }

  /** Returns the tops to be pared down after a round and by how much, in the walls' order. */
  public Map<String, Length> pared(int round, Building building) {
    Map<String, Length> pared = new LinkedHashMap<>();
    for (String corner : building.corners()) {
      Length by = at(round, corner).pare();
      if (!by.isZero()) {
        pared.put(corner, by);
      }
    }
    return pared;
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

  /** Returns how much the walls as a whole stand above the plan after a round. */
  public Length common(int round, Building building) {
    return new Levelling(Length.ZERO, heights(round, building), Length.ZERO).common();
  }

  /**
   * Returns how much higher the plan goes on over a round, as its corners read: what they have in
   * common, or nothing where the height that was planned is held.
   */
  public Length step(int round, Building building, BuildRules rules) {
    return rules.holdsHeight() ? Length.ZERO : common(round, building);
  }

  /**
   * Returns what all first-laid lower marks over a round are changed by to come back to the height
   * that was planned: an even share for each round left.
   *
   * <p>What brings corners level goes first within the most that a mark changes; and no more than
   * half the room that the wanted gap has to its limits, so that the gaps stay in them.
   */
  public Length held(int round, Building building, BuildRules rules) {
    int left = rounds() - round;
    if (!rules.holdsHeight() || left <= 0) {
      return Length.ZERO;
    }
    Length least = Length.ZERO;
    Length most = Length.ZERO;
    for (String corner : building.corners()) {
      least = least.least(at(round, corner).even());
      most = most.most(at(round, corner).even());
    }
    Length change = Levelling.mostChange(rules);
    Length wider = rules.length(Setting.GAP_MOST).minus(rules.gap()).dividedBy(2);
    Length narrower = rules.gap().minus(rules.length(Setting.GAP_LEAST)).dividedBy(2);
    return common(round, building)
        .negated()
        .dividedBy(left)
        .least(change.minus(most).least(wider))
        .most(change.plus(least).least(narrower).negated());
  }

  /**
   * Returns how much above the plan a corner's top was expected before it was read: after the
   * round, or on its first-laid log.
   */
  public Length expected(
      int round, boolean firstLaid, String corner, Building building, BuildRules rules) {
    At at = at(round, corner);
    if (!firstLaid) {
      return at.firstHigh().plus(at.secondChange());
    }
    At under = at(round - 1, corner);
    Length left = under.high().minus(under.pare());
    return left.minus(step(round - 1, building, rules)).plus(at.change());
  }

  private int rounds() {
    return all.keySet().stream().mapToInt(Corner::round).max().orElse(0);
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
    return chart
        .plus(at(round, corner).even())
        .plus(held(round, building, rules))
        .roundedTo(rules.printStep());
  }

  private List<Length> heights(int round, Building building) {
    return building.corners().stream().map(each -> high(round, each)).toList();
  }

  /** Returns how much the centre line of a log is above the plan at a corner. */
  public Length lift(int round, boolean firstLaid, String corner) {
    Lifts lifts = at(round, corner).lifts();
    return firstLaid ? lifts.first() : lifts.second();
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
        : new CornerReckoning(rules, building, planned, built).corners();
  }
}
