package roundbook.report.mark;

import java.util.List;
import java.util.Optional;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.job.WallsFault;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * The two equal diagonals by which a rectangle is checked for square.
 *
 * @param outside between opposite outer corners of the walls
 * @param inside between opposite inner corners
 */
public record Squareness(Length outside, Length inside) {
  /** Returns the diagonals of a building of four walls, opposite ones equal; else nothing. */
  public static Optional<Squareness> of(Building building) {
    List<Wall> walls = building.ring(1);
    if (!alike(building) || WallsFault.of(walls).isPresent()) {
      return Optional.empty();
    }
    Wall one = walls.get(0);
    Wall other = walls.get(1);
    return Optional.of(
        new Squareness(
            diagonal(one.outside(), other.outside()),
            diagonal(clear(building, one), clear(building, other))));
  }

  /** Pens of one size have the same diagonals; others would each need their own. */
  private static boolean alike(Building building) {
    return building.pens().stream()
            .map(pen -> building.ring(pen).stream().map(Wall::outside).toList())
            .distinct()
            .count()
        == 1;
  }

  private static Length clear(Building building, Wall wall) {
    return wall.outside()
        .minus(building.before(wall).thickness())
        .minus(building.after(wall).thickness());
  }

  private static Length diagonal(Length one, Length other) {
    return Length.of(StrictMath.hypot(one.inches(), other.inches()), LengthUnit.INCH);
  }
}
