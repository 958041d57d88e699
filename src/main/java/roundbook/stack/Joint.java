package roundbook.stack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.units.Length;

/**
 * The joint between two neighbouring places of a wall, with its gap along the wall.
 *
 * <p>The gap at a station is the spacing of the two centre lines less half the sum of the two
 * diameters there. Diameters run straight between their stations, so the least and the largest gap
 * lie at an inside face or at a kink of either profile.
 *
 * @param lower the place below
 * @param upper the place above
 * @param spacing height of the upper centre line above the lower one
 * @param leftFace distance from the left trimmed end (seen from outside) to the left inside face
 * @param rightFace distance from the left trimmed end to the right inside face
 * @param more how much further apart the centre lines are at both inside faces than the plan has it
 */
public record Joint(
    FilledPlace lower,
    FilledPlace upper,
    Length spacing,
    Length leftFace,
    Length rightFace,
    More more) {
  /**
   * How much further apart two centre lines are than planned, as built or with a corner put right.
   *
   * @param left at the left inside face, seen from outside
   * @param right at the right inside face
   */
  public record More(Length left, Length right) {
    /** As planned. */
    public static final More NONE = new More(Length.ZERO, Length.ZERO);
  }

  /** How a printed gap compares with the limits. */
  public enum Flag {
    /** Inside the limits. */
    NONE(""),
    /** Under the least gap: the logs nearly touch. */
    SMALL("▼"),
    /** Over the largest gap. */
    LARGE("▲"),
    /** Both, in different places. */
    BOTH("▼▲");

    private final String symbol;

    Flag(String symbol) {
      this.symbol = symbol;
    }

    /** Returns the symbol printed beside a gap; empty for none. */
    public String symbol() {
      return symbol;
    }
  }

  /** Returns the joint of two logs of one wall, as planned. */
  public static Joint of(
      FilledPlace lower, FilledPlace upper, Length spacing, Building building, Length overhang) {
    Length left = building.after(lower.wall()).thickness().plus(overhang);
    Length right = building.before(lower.wall()).thickness().plus(overhang);
    Length rightFace = lower.trimmed().minus(right);
    return new Joint(lower, upper, spacing, left, rightFace, More.NONE);
  }

  /** Returns this joint with its centre lines further apart. */
  public Joint with(More other) {
    return new Joint(lower, upper, spacing, leftFace, rightFace, other);
  }

  /** Returns the gap at a distance from the left trimmed end, seen from outside. */
  public Length gapAt(Length fromLeft) {
    Length sum = lower.fromLeft(fromLeft).plus(upper.fromLeft(fromLeft));
    return spacing.plus(moreAt(fromLeft)).minus(sum.dividedBy(2));
  }

  /** Returns how much further apart the centre lines are; straight from face to face and beyond. */
  private Length moreAt(Length fromLeft) {
    Length rise = more.right().minus(more.left());
    if (rise.isZero()) {
      return more.left();
    }
    long along = fromLeft.minus(leftFace).nanometres();
    return more.left().plus(rise.timesRatio(along, rightFace.minus(leftFace).nanometres()));
  }

  /** Returns the gap at the left inside face, seen from outside. */
  public Length left() {
    return gapAt(leftFace);
  }

  /** Returns the gap at the middle of the wall's logs. */
  public Length middle() {
    return gapAt(lower.trimmed().dividedBy(2));
  }

  /** Returns the gap at the right inside face, seen from outside. */
  public Length right() {
    return gapAt(rightFace);
  }

  /** Returns the least gap between the inside faces. */
  public Length least() {
    Length least = left();
    for (Length station : stations()) {
      least = least.least(gapAt(station));
    }
    return least;
  }

  /** Returns the largest gap between the inside faces. */
  public Length most() {
    Length most = left();
    for (Length station : stations()) {
      most = most.most(gapAt(station));
    }
    return most;
  }

  /**
   * A gap outside its limits.
   *
   * @param at its distance from the left trimmed end, seen from outside
   * @param by how far it is outside them, as printed
   * @param under whether it is under the least, not over the largest
   */
  public record Beyond(Length at, Length by, boolean under) {}

  /** Returns the gap that is furthest outside the job's limits, as printed; empty where none is. */
  public Optional<Beyond> beyond(BuildRules rules) {
    return Stream.concat(Stream.of(leftFace), stations().stream())
        .flatMap(at -> beyond(at, rules).stream())
        .max(Comparator.comparing(Beyond::by));
  }

  private Optional<Beyond> beyond(Length at, BuildRules rules) {
    Length gap = gapAt(at).roundedTo(rules.printStep());
    Length lack = rules.length(Setting.GAP_LEAST).minus(gap);
    Length excess = gap.minus(rules.length(Setting.GAP_MOST));
    Length by = lack.most(excess);
    return Optional.of(new Beyond(at, by, lack.isMoreThan(excess)))
        .filter(each -> by.isMoreThan(Length.ZERO));
  }

  /** Compares the least and the largest gap, as printed, with the job's limits. */
  public Flag flag(BuildRules rules) {
    boolean small = isSmall(least(), rules);
    boolean large = isLarge(most(), rules);
    if (small) {
      return large ? Flag.BOTH : Flag.SMALL;
    }
    return large ? Flag.LARGE : Flag.NONE;
  }

  /** Returns the flag of one gap, as printed. */
  public static Flag flag(Length gap, BuildRules rules) {
    return isSmall(gap, rules) ? Flag.SMALL : isLarge(gap, rules) ? Flag.LARGE : Flag.NONE;
  }

  private static boolean isSmall(Length gap, BuildRules rules) {
    return gap.roundedTo(rules.printStep()).isLessThan(rules.length(Setting.GAP_LEAST));
  }

  private static boolean isLarge(Length gap, BuildRules rules) {
    return gap.roundedTo(rules.printStep()).isMoreThan(rules.length(Setting.GAP_MOST));
  }

  /** Returns where the gap can be least or largest, besides the left inside face. */
  private List<Length> stations() {
    List<Length> stations = new ArrayList<>();
    stations.add(lower.trimmed().dividedBy(2));
    stations.add(rightFace);
    Stream.of(lower, upper)
        .flatMap(place -> place.kinks().stream())
        .filter(kink -> kink.isMoreThan(leftFace) && kink.isLessThan(rightFace))
        .forEach(stations::add);
    return stations;
  }
}
