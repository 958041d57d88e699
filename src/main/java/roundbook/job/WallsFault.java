package roundbook.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What keeps a list of walls from being planned.
 *
 * <p>One rectangle of four walls is planned. Everything else is refused: at an inner corner, as L
 * and U plans have them, logs end otherwise than at an outer one, two pens of four walls each are
 * two buildings, and walls whose opposites are unequal cannot close at right angles.
 *
 * @param wall the wall where it shows; empty where it is the list as a whole
 * @param message what is wrong, in a sentence without a closing stop
 * @param remedy what the builder can do
 */
public record WallsFault(Optional<Wall> wall, String message, String remedy) {
  private static final int WALLS = 4;
  private static final String PLANNED =
      "one rectangle of four walls, opposite walls of equal outside length, is planned";
  private static final String LIST = "list the walls in their order round the house, clockwise";

  /**
   * Returns what is wrong with walls in their order round the house; empty where they make a
   * rectangle, and each corner has one wall that is laid first.
   */
  public static Optional<WallsFault> of(List<Wall> walls) {
    return Optional.<WallsFault>empty()
        .or(() -> count(walls))
        .or(() -> twice(walls))
        .or(() -> laidFirst(walls))
        .or(() -> unequal(walls, 0))
        .or(() -> unequal(walls, 1));
  }

  private static Optional<WallsFault> count(List<Wall> walls) {
    if (walls.size() == WALLS) {
      return Optional.empty();
    }
    String message =
        "%d walls are given; %s, and no L, no U, no other ring and no second building"
            .formatted(walls.size(), PLANNED);
    Optional<Wall> extra = walls.stream().skip(WALLS).findFirst();
    return Optional.of(new WallsFault(extra, message, "Give four walls, or --walls."));
  }

  private static Optional<WallsFault> twice(List<Wall> walls) {
    return walls.stream()
        .filter(wall -> walls.stream().filter(each -> each.name().equals(wall.name())).count() > 1)
        .findFirst()
        .map(
            wall ->
                new WallsFault(
                    Optional.of(wall),
                    "two walls are named " + wall.name(),
                    "Give each wall a name of its own."));
  }

  private static Optional<WallsFault> laidFirst(List<Wall> walls) {
    return IntStream.range(0, WALLS)
        .filter(each -> walls.get(each).laidFirst() == walls.get((each + 1) % WALLS).laidFirst())
        .mapToObj(each -> corner(walls.get(each), walls.get((each + 1) % WALLS)))
        .findFirst();
  }

  private static WallsFault corner(Wall one, Wall other) {
    String message =
        "walls %s and %s meet at a corner, so one of them is laid first, but %s"
            .formatted(one.name(), other.name(), one.laidFirst() ? "both are" : "neither is");
    return new WallsFault(
        Optional.of(other),
        message,
        "Mark two walls that face each other as laid first, and " + LIST + ".");
  }

  private static Optional<WallsFault> unequal(List<Wall> walls, int index) {
    Wall one = walls.get(index);
    Wall other = walls.get(index + 2);
    if (one.outside().equals(other.outside())) {
      return Optional.empty();
    }
    String message =
        "walls %s and %s face each other, but their outside lengths differ; %s"
            .formatted(one.name(), other.name(), PLANNED);
    return Optional.of(
        new WallsFault(Optional.of(other), message, "Correct their lengths, or " + LIST + "."));
  }
}
