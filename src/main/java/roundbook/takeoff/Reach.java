package roundbook.takeoff;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * How far the hook of a crane must reach out for the logs of a wall, and what hangs on it there.
 *
 * <p>The crane stands {@code Crane_off} outside the middle of the wall {@code Crane_wall}. Its hook
 * hangs over a log's balance point, which lies off the middle of the wall by some length s; which
 * way is as the butt lies, so the farther way counts. With a the length of the crane's own wall, b
 * that of its neighbours, T the thickness and d the distance outside, the radius is {@code √(s² +
 * (d + T/2)²)} to its own wall, {@code √(s² + (d + b − T/2)²)} to the one across, and {@code √((a/2
 * − T/2)² + (d + b/2 + s)²)} to the walls between.
 *
 * <p>Caution: numbers alone choose no crane. Its own load chart at that radius decides, on the
 * ground that it stands on.
 *
 * @param wall the wall
 * @param radius the farthest that the hook is from the crane's centre, on the level
 * @param pounds the most that any of its logs may weigh while still round
 */
public record Reach(Wall wall, Length radius, double pounds) {
  /**
   * The hook's height above the first bed when the last log goes over the walls.
   *
   * @param walls the highest crown of all
   * @param clear what is left free under the log
   * @param log the largest diameter of any log
   * @param slings the rise of legs that stand at 60° from the level; zero where none are named
   */
  public record Hook(Length walls, Length clear, Length log, Length slings) {
    /** Left free between the walls and the log: common practice. */
    private static final Length CLEAR = Length.ofInches(36);

    /** Returns the height. */
    public Length height() {
      return walls.plus(clear).plus(log).plus(slings);
    }

    /** Returns the height for the walls as they end. */
    public static Hook of(Stack stack, Takeoff takeoff) {
      Length walls =
          takeoff.top().stream()
              .flatMap(top -> top.walls().stream())
              .map(wall -> wall.left().most(wall.middle()).most(wall.right()))
              .reduce(Length.ZERO, Length::most);
      Length log =
          takeoff.wood().stream()
              .map(wood -> wood.log().piece().log().butt())
              .reduce(Length.ZERO, Length::most);
      Length slings =
          stack
              .rules()
              .optionalLength(Setting.SLING_LEG)
              .map(leg -> length(leg.inches() * StrictMath.sin(StrictMath.toRadians(60))))
              .orElse(Length.ZERO);
      return new Hook(walls, CLEAR, log, slings);
    }
  }

  /** Returns the reach to every wall, the farthest first; none where no crane's place is named. */
  public static List<Reach> of(BuildRules rules, Building building, List<PieceWood> wood) {
    Optional<Wall> own = building.wall(rules.text(Setting.CRANE_WALL).strip());
    Optional<Length> off = rules.optionalLength(Setting.CRANE_OFF);
    if (own.isEmpty() || off.isEmpty() || building.pens().size() > 1) {
      return List.of();
    }
    return building.walls().stream()
        .map(wall -> of(wall, own.get(), building, off.get(), wood))
        .sorted(Comparator.comparing(Reach::radius).reversed())
        .toList();
  }

  private static Reach of(
      Wall wall, Wall own, Building building, Length off, List<PieceWood> wood) {
    List<PieceWood> logs = wood.stream().filter(each -> each.log().wall().equals(wall)).toList();
    double aside = logs.stream().mapToDouble(Reach::aside).max().orElse(0);
    double deep = building.before(own).outside().inches();
    double half = wall.thickness().inches() / 2;
    double along = building.after(building.after(own)).equals(wall) ? deep - half : half;
    boolean beside = building.crossing(own).contains(wall);
    double across = beside ? own.outside().inches() / 2 - half : aside;
    if (wall.isPartition()) {
      Wall through = beside ? own : building.before(own);
      double from = middle(building, through, wall);
      along = from;
      across = beside ? StrictMath.abs(own.outside().inches() / 2 - from) : aside;
    }
    double out = off.inches() + (beside ? deep / 2 + aside : along);
    double pounds = logs.stream().mapToDouble(PieceWood::roundPoundsAtMost).max().orElse(0);
    return new Reach(wall, length(StrictMath.hypot(across, out)), pounds);
  }

  /** Returns how far the middle of a partition is from the left corner of a wall it crosses. */
  private static double middle(Building building, Wall through, Wall partition) {
    return building.saddles(through).stream()
        .filter(saddle -> saddle.partition().equals(partition))
        .mapToDouble(saddle -> saddle.from().plus(saddle.to()).dividedBy(2).inches())
        .findFirst()
        .orElseThrow();
  }

  private static double aside(PieceWood wood) {
    Length middle = wood.log().piece().trimmed().dividedBy(2);
    return wood.balance().minus(middle).absolute().inches();
  }

  private static Length length(double inches) {
    return Length.of(inches, roundbook.units.LengthUnit.INCH);
  }
}
