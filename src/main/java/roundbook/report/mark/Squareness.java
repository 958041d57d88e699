package roundbook.report.mark;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.job.WallsFault;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * The two equal diagonals by which a rectangle of walls is checked for square: that of a pen, or of
 * a wing from the outer face of the wall that it stands on.
 *
 * @param pen the number of its pen; 0 where all pens are alike
 * @param outside between opposite outer corners of the walls
 * @param inside between opposite inner corners
 */
public record Squareness(int pen, Length outside, Length inside) {
  private static final int SIDES = 4;

  /** Returns the diagonals of each pen, or once those of pens alike; none for no rectangle. */
  public static List<Squareness> of(Building building) {
    List<Squareness> all = new ArrayList<>();
    for (int pen : building.pens()) {
      List<Wall> ring = building.ring(pen);
      if (pen > 1 && building.hasWing()) {
        all.add(wing(building, pen, ring));
      } else if (building.goesOn().isEmpty() && WallsFault.of(ring).isPresent()) {
        return List.of();
      } else {
        all.add(of(pen, ring));
      }
    }
    boolean alike = all.stream().map(each -> each.as(0)).distinct().count() == 1;
    return alike ? List.of(all.get(0).as(0)) : all;
  }

  private Squareness as(int other) {
    return new Squareness(other, outside, inside);
  }

  /** A wall that goes on along a wing is longer than the one across from it. */
  private static Squareness of(int pen, List<Wall> ring) {
    Length along = ring.get(0).outside().least(ring.get(2).outside());
    Length deep = ring.get(1).outside().least(ring.get(SIDES - 1).outside());
    Length across = ring.get(1).thickness().plus(ring.get(SIDES - 1).thickness());
    Length over = ring.get(0).thickness().plus(ring.get(2).thickness());
    return new Squareness(
        pen, diagonal(along, deep), diagonal(along.minus(across), deep.minus(over)));
  }

  private static Squareness wing(Building building, int pen, List<Wall> own) {
    Wall far = own.stream().filter(Wall::isOnWall).findFirst().orElseThrow();
    Length across = building.before(far).thickness().plus(building.after(far).thickness());
    Length deep = building.wingDepth();
    return new Squareness(
        pen,
        diagonal(far.outside(), deep),
        diagonal(far.outside().minus(across), deep.minus(far.thickness())));
  }

  private static Length diagonal(Length one, Length other) {
    return Length.of(StrictMath.hypot(one.inches(), other.inches()), LengthUnit.INCH);
  }
}
