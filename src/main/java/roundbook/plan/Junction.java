package roundbook.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Saddle;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Where two logs of a round cross, with the marks of the one that is told from.
 *
 * <p>At a crossing in mid-wall that is the log that goes through. Its saddle is marked like a
 * corner's neck, but underneath LOWER is level on both faces; the partition's log has UPPER level
 * on both faces, so that no number is new and only which line is level differs. A wing's side comes
 * to the wall that it dies in from outside. To hook there it needs a saddle that falls to its tail,
 * which is into the house; to drain there the saddle falls outwards as everywhere in that wall, and
 * the side's log is deeper at its shoulder than at its tail, so that nothing holds it but a peg.
 * Where two partitions cross, both go through and both are level, above and below. Half-dovetail
 * crossings have no published numbers: this is our own reckoning, measured on solid models.
 *
 * @param corner the name of the place
 * @param kind what kind of junction it is
 * @param through the log that goes through, at a corner the one laid first
 * @param wall the log that crosses it
 * @param from how far the saddle begins from the squared butt of the log that goes through
 * @param to how far it ends from there
 * @param upper its upper mark on the inside face; empty where nothing lies above
 * @param upperOutside the same on its outside face
 * @param lower its lower mark; empty where the log is sawn flat all along
 */
public record Junction(
    String corner,
    Kind kind,
    PlacedLog through,
    PlacedLog wall,
    Length from,
    Length to,
    Optional<Length> upper,
    Optional<Length> upperOutside,
    Optional<Length> lower) {
  /** What kind of junction it is. */
  public enum Kind {
    /** Two logs end there. */
    CORNER,
    /** One goes through, the other ends past its outer face. */
    CROSSING,
    /** One goes through, the other comes from outside and ends past its inner face. */
    TEE
  }

  /** Returns the junctions of a round: corners, then crossings. */
  public static List<Junction> of(Stack stack, Course course) {
    Building building = stack.building();
    Stream<Junction> corners =
        building.walls().stream()
            .filter(Wall::laidFirst)
            .flatMap(
                wall ->
                    Stream.of(true, false)
                        .filter(start -> building.saddle(wall, start).isEmpty())
                        .map(start -> corner(stack, course, wall, start)));
    return Stream.concat(corners, crossings(stack, course).stream()).toList();
  }

  /** Returns the crossings of a round, wall by wall from the left. */
  public static List<Junction> crossings(Stack stack, Course course) {
    return stack.building().saddles().stream()
        .map(saddle -> crossing(stack, course, saddle))
        .toList();
  }

  private static Junction corner(Stack stack, Course course, Wall wall, boolean start) {
    Building building = stack.building();
    Wall other = start ? building.before(wall) : building.after(wall);
    Length from = start ? wall.outside().minus(other.thickness()) : Length.ZERO;
    String name = start ? building.startCorner(wall) : building.endCorner(wall);
    return of(stack, course, Kind.CORNER, new Saddle(wall, other, from, false), name);
  }

  private static Junction crossing(Stack stack, Course course, Saddle saddle) {
    Kind kind = saddle.inward() ? Kind.TEE : Kind.CROSSING;
    return of(stack, course, kind, saddle, stack.building().corner(saddle));
  }

  private static Junction of(Stack stack, Course course, Kind kind, Saddle saddle, String corner) {
    Length overhang = stack.rules().overhang();
    FilledPlace place = course.on(saddle.through()).orElseThrow();
    PlacedLog through = logAt(place, saddle.from().plus(overhang));
    PlacedLog wall = crossing(stack, course, saddle, corner);
    Length left = saddle.from().plus(overhang);
    Length right = saddle.to().plus(overhang);
    Length from =
        through.buttAtStart() ? through.to().minus(right) : left.minus(through.fromLeft());
    Notch notch = course.notch();
    boolean first = saddle.through().laidFirst();
    boolean free = course.round() == stack.courses().size() && !first;
    boolean flat =
        course.round() == 1 && first && !stack.rules().text(Setting.FIRST_BED).equals("starter");
    Length fallen =
        saddle.isLevel() ? notch.upper() : notch.upperOutside(saddle.through().thickness());
    boolean hooks = kind == Kind.TEE && !stack.rules().drains();
    Length lower = notch.lower().plus(stack.corners().change(course.round(), first, corner));
    return new Junction(
        corner,
        kind,
        through,
        wall,
        from,
        from.plus(saddle.partition().thickness()),
        free ? Optional.empty() : Optional.of(hooks ? fallen : notch.upper()),
        free ? Optional.empty() : Optional.of(hooks ? notch.upper() : fallen),
        flat ? Optional.empty() : Optional.of(lower));
  }

  /** Returns the log that ends at one that goes through, or that crosses it. */
  private static PlacedLog crossing(Stack stack, Course course, Saddle saddle, String corner) {
    Wall wall = saddle.partition();
    FilledPlace place = course.on(wall).orElseThrow();
    if (saddle.isLevel()) {
      return stack.building().saddles(wall).stream()
          .filter(each -> each.partition().equals(saddle.through()))
          .map(each -> logAt(place, each.from().plus(stack.rules().overhang())))
          .findFirst()
          .orElseThrow();
    }
    boolean atStart = stack.building().startCorner(wall).equals(corner);
    return place.logs().get(atStart ? place.logs().size() - 1 : 0);
  }

  /** Returns the log of a place that lies so far from its left end: openings keep clear of it. */
  private static PlacedLog logAt(FilledPlace place, Length left) {
    return place.logs().stream()
        .filter(log -> !left.isLessThan(log.fromLeft()) && left.isLessThan(log.to()))
        .findFirst()
        .orElseThrow();
  }
}
