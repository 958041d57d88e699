package roundbook.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundbook.problem.Phrase;

/**
 * What keeps a list of walls from being planned.
 *
 * <p>Rectangles of four walls are planned, one or more pens in a row, with partitions that run from
 * one wall of a pen to the wall across, and a wing on a wall of one pen. Everything else is
 * refused: at an inner corner, as L and U plans have them, a half-dovetail cannot both hook and
 * drain, so walls do not turn there but one of them goes through; and walls whose opposites are
 * unequal cannot close at right angles.
 *
 * @param wall the wall where it shows; empty where it is the list as a whole
 * @param said what is wrong
 * @param remedy what the builder can do
 */
public record WallsFault(Optional<Wall> wall, Phrase said, Phrase remedy) {
  private static final int WALLS = 4;

  WallsFault(Wall wall, Phrase said, String remedy) {
    this(Optional.ofNullable(wall), said, Phrase.of("remedy.walls-" + remedy));
  }

  /**
   * Returns what is wrong with walls in their order; empty where each pen is a rectangle, each
   * corner has one wall that is laid first, and partitions and pens have their room.
   *
   * @param walls the walls in the order of {@link Building#inOrder}
   * @param rules the least length of a piece, and how lengths are told
   */
  public static Optional<WallsFault> of(List<Wall> walls, BuildRules rules) {
    boolean plain = walls.stream().allMatch(wall -> wall.stand().equals(Stand.RING));
    if (plain) {
      return of(walls);
    }
    LayoutFault layout = new LayoutFault(walls, rules);
    return twice(walls)
        .or(() -> WingFault.placed(walls, rules))
        .or(
            () ->
                new Building(walls)
                    .pens().stream().flatMap(pen -> ofPen(walls, pen).stream()).findFirst())
        .or(layout::pens)
        .or(() -> WingFault.of(walls, rules))
        .or(layout::partitions)
        .or(layout::starter);
  }

  private static Optional<WallsFault> ofPen(List<Wall> walls, int pen) {
    List<Wall> ring = pen == 1 ? WingFault.house(walls) : Building.ring(walls, pen);
    if (pen > 1 && ring.stream().anyMatch(Wall::isOnWall)) {
      return Optional.empty();
    }
    Wall extra =
        ring.size() > WALLS
            ? ring.get(WALLS)
            : walls.stream().filter(wall -> wall.stand().pen() == pen).findFirst().orElseThrow();
    return ring.size() == WALLS
        ? of(ring)
        : Optional.of(
            new WallsFault(
                extra,
                LayoutFault.said("pen-count").with("pen", pen).with("count", ring.size()),
                "pen-four"));
  }

  /**
   * Returns what is wrong with walls in their order round the house; empty where they make a
   * rectangle, and each corner has one wall that is laid first.
   */
  public static Optional<WallsFault> of(List<Wall> walls) {
    return Optional.<WallsFault>empty()
        .or(() -> count(walls))
        .or(() -> twice(walls))
        .or(() -> tooShort(walls))
        .or(() -> laidFirst(walls))
        .or(() -> unequal(walls, 0))
        .or(() -> unequal(walls, 1));
  }

  private static Optional<WallsFault> count(List<Wall> walls) {
    if (walls.size() == WALLS) {
      return Optional.empty();
    }
    Wall extra = walls.size() > WALLS ? walls.get(WALLS) : null;
    return Optional.of(
        new WallsFault(extra, LayoutFault.said("count").with("count", walls.size()), "four"));
  }

  private static Optional<WallsFault> twice(List<Wall> walls) {
    return walls.stream()
        .filter(wall -> walls.stream().filter(each -> each.name().equals(wall.name())).count() > 1)
        .findFirst()
        .map(
            wall ->
                new WallsFault(
                    wall, LayoutFault.said("same-name").with("wall", wall.name()), "name"));
  }

  /** A wall lies between two that cross it; without a room between them there is no house. */
  private static Optional<WallsFault> tooShort(List<Wall> walls) {
    return walls.stream()
        .filter(wall -> wall.outside().compareTo(wall.thickness().times(2)) <= 0)
        .findFirst()
        .map(
            wall ->
                new WallsFault(
                    wall, LayoutFault.said("short").with("wall", wall.name()), "outside"));
  }

  private static Optional<WallsFault> laidFirst(List<Wall> walls) {
    return IntStream.range(0, WALLS)
        .filter(each -> walls.get(each).laidFirst() == walls.get((each + 1) % WALLS).laidFirst())
        .mapToObj(each -> corner(walls.get(each), walls.get((each + 1) % WALLS)))
        .findFirst();
  }

  private static WallsFault corner(Wall one, Wall other) {
    Phrase said = LayoutFault.said(one.laidFirst() ? "both-first" : "neither-first");
    return new WallsFault(other, LayoutFault.named(said, one, other), "first");
  }

  private static Optional<WallsFault> unequal(List<Wall> walls, int index) {
    Wall one = walls.get(index);
    Wall other = walls.get(index + 2);
    return one.outside().equals(other.outside())
        ? Optional.empty()
        : Optional.of(
            new WallsFault(
                other, LayoutFault.named(LayoutFault.said("opposite"), one, other), "lengths"));
  }
}
