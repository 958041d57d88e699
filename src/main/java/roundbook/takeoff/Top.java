package roundbook.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.wood.RoundProfile.ProfilePoint;
import roundbook.wood.SawnLog;

/**
 * How the walls end, and how to end them level or at a wanted height.
 *
 * @param walls the top of every wall, clockwise
 * @param step by how much the second-laid walls end above the first-laid ones, {@code (D_n + g)/2}
 * @param level the flats that close all walls level; empty when the last logs are too thin for it
 * @param wanted the gap that gives the wall height wanted; empty when none was asked for
 */
public record Top(
    List<WallTop> walls, Length step, Optional<LevelTop> level, Optional<WantedHeight> wanted) {
  /** Copies the list. */
  public Top {
    walls = List.copyOf(walls);
  }

  /**
   * The top of one wall above the first bed.
   *
   * @param wall the wall
   * @param centre height of the last log's centre line
   * @param left height of its crown at the left inside face, seen from outside
   * @param middle height of its crown in the middle
   * @param right height of its crown at the right inside face
   */
  public record WallTop(Wall wall, Length centre, Length left, Length middle, Length right) {}

  /**
   * A level top: the last second-laid logs are sawn flat p above their centre lines, and a part log
   * of a further round, of the same size, closes each first-laid wall at that height.
   *
   * @param flat p, above the centre line of the last second-laid logs
   * @param partLog {@code p − (D_n + g)/2}, from the part log's own centre line; negative below it
   * @param height of the level top above the first bed
   * @param left wood left above the upper mark, {@code p − U}
   */
  public record LevelTop(Length flat, Length partLog, Length height, Length left) {}

  /**
   * The gap that brings the centre of the last second-laid logs plus half their size to a height,
   * with all sizes as they are.
   *
   * @param height the height wanted
   * @param now the height as planned
   * @param gap the gap that would give it, inches
   * @param allowed whether that gap lies within the least and the largest
   */
  public record WantedHeight(Length height, Length now, double gap, boolean allowed) {}

  static Top of(Stack stack) {
    Notch last = last(stack).notch();
    return new Top(
        stack.building().walls().stream().map(wall -> wallTop(stack, wall)).toList(),
        last.neckHeight(),
        level(stack),
        stack.rules().optionalLength(Setting.WALL_HEIGHT).map(each -> wanted(stack, each)));
  }

  private static Course last(Stack stack) {
    return stack.courses().get(stack.courses().size() - 1);
  }

  private static WallTop wallTop(Stack stack, Wall wall) {
    FilledPlace log = last(stack).on(wall).orElseThrow();
    Length centre = stack.centre(log);
    Length overhang = stack.rules().overhang();
    Length trimmed = log.trimmed();
    Length left = stack.building().after(wall).thickness().plus(overhang);
    Length right = trimmed.minus(stack.building().before(wall).thickness()).minus(overhang);
    return new WallTop(
        wall,
        centre,
        centre.plus(log.fromLeft(left).dividedBy(2)),
        centre.plus(log.mid().dividedBy(2)),
        centre.plus(log.fromLeft(right).dividedBy(2)));
  }

  /** The flat is as high as every last second-laid log still shows both faces all along. */
  private static Optional<LevelTop> level(Stack stack) {
    Notch notch = last(stack).notch();
    OptionalDouble reach =
        last(stack).places().stream()
            .filter(log -> !log.wall().laidFirst())
            .flatMapToDouble(Top::reaches)
            .min();
    if (reach.isEmpty()) {
      return Optional.empty();
    }
    Length flat = roundedDown(WallProfiles.inches(reach.getAsDouble()), stack.rules().printStep());
    if (!flat.isMoreThan(notch.upper())) {
      return Optional.empty();
    }
    Length height = stack.secondHeights().get(stack.courses().size() - 1).plus(flat);
    return Optional.of(
        new LevelTop(flat, flat.minus(notch.neckHeight()), height, flat.minus(notch.upper())));
  }

  private static java.util.stream.DoubleStream reaches(FilledPlace log) {
    double thickness = log.wall().thickness().inches();
    Stream<ProfilePoint> stations = WallProfiles.left(log).stations().stream();
    return stations.mapToDouble(each -> SawnLog.faceReach(each.diameter(), thickness));
  }

  private static Length roundedDown(Length length, Length step) {
    Length near = length.roundedTo(step);
    return near.isMoreThan(length) ? near.minus(step) : near;
  }

  /**
   * Solves {@code b_n + D_n/2} for the gap. With n rounds it grows by n − 3/4 for each unit of gap
   * on a flat bed, whose own mark falls by a quarter of it, and by n on a starter.
   */
  private static WantedHeight wanted(Stack stack, Length height) {
    int rounds = stack.courses().size();
    BuildRules rules = stack.rules();
    Length now = stack.wallHeight();
    double perGap = rules.text(Setting.FIRST_BED).equals("starter") ? rounds : rounds - 0.75;
    double gap = rules.gap().inches() + height.minus(now).inches() / perGap;
    boolean allowed =
        gap >= rules.length(Setting.GAP_LEAST).inches()
            && gap <= rules.length(Setting.GAP_MOST).inches();
    return new WantedHeight(height, now, gap, allowed);
  }
}
