package roundbook.job;

import java.util.Comparator;
import java.util.List;
import roundbook.units.Length;

/**
 * The four walls of a rectangle, in clockwise order seen from above.
 *
 * <p>A wall's <em>start</em> corner is the one met first going clockwise: seen from outside it is
 * the right one, seen from inside the left one. Walls alternate between laid first and laid second.
 *
 * @param walls the walls in clockwise order; what {@link WallsFault} finds no fault with
 */
public record Building(List<Wall> walls) {
  private static final List<String> CLOCKWISE = List.of("N", "E", "S", "W");

  /** Copies the list. */
  public Building {
    walls = List.copyOf(walls);
  }

  /**
   * Returns walls in their order round the house, from the first of the list on. Where they are
   * named N, E, S and W their names tell it; others are taken as they are listed.
   */
  public static List<Wall> inOrder(List<Wall> listed) {
    boolean told =
        listed.size() == CLOCKWISE.size()
            && listed.stream().map(Wall::name).toList().containsAll(CLOCKWISE);
    if (!told) {
      return listed;
    }
    int first = CLOCKWISE.indexOf(listed.get(0).name());
    return listed.stream()
        .sorted(
            Comparator.comparingInt(
                wall -> Math.floorMod(CLOCKWISE.indexOf(wall.name()) - first, CLOCKWISE.size())))
        .toList();
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
