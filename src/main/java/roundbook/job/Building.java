package roundbook.job;

import java.util.List;
import roundbook.units.Length;

/**
 * The ring of walls, in clockwise order seen from above, every corner a right angle.
 *
 * <p>A wall's <em>start</em> corner is the one met first going clockwise: seen from outside it is
 * the right one, seen from inside the left one. Walls alternate between laid first and laid second.
 *
 * @param walls the walls in clockwise order, an even number of them
 */
public record Building(List<Wall> walls) {
  /** Copies the list. */
  public Building {
    walls = List.copyOf(walls);
  }

  /** Returns the wall of a name; empty when there is none. */
  public java.util.Optional<Wall> wall(String name) {
    return walls.stream().filter(wall -> wall.name().equalsIgnoreCase(name)).findFirst();
  }

  /** Returns the wall that crosses at the start corner (right end seen from outside). */
  public Wall before(Wall wall) {
    return walls.get(Math.floorMod(walls.indexOf(wall) - 1, walls.size()));
  }

  /** Returns the wall that crosses at the end corner (left end seen from outside). */
  public Wall after(Wall wall) {
    return walls.get(Math.floorMod(walls.indexOf(wall) + 1, walls.size()));
  }

  /** Returns the name of a wall's start corner, such as {@code NW} for N. */
  public String startCorner(Wall wall) {
    return cornerOf(before(wall), wall);
  }

  /** Returns the name of a wall's end corner, such as {@code NE} for N. */
  public String endCorner(Wall wall) {
    return cornerOf(wall, after(wall));
  }

  /** Returns the names of the corners clockwise, from the first wall's start corner. */
  public List<String> corners() {
    return walls.stream().map(this::startCorner).toList();
  }

  /** Returns the trimmed length of a wall's logs: outside length and an overhang at each end. */
  public Length trimmed(Wall wall, Length overhang) {
    return wall.outside().plus(overhang.times(2));
  }

  private static String cornerOf(Wall one, Wall other) {
    boolean northSouth = other.name().equals("N") || other.name().equals("S");
    return northSouth ? other.name() + one.name() : one.name() + other.name();
  }
}
