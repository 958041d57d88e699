package roundbook.job;

import java.util.Optional;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/**
 * A door or window, by its rough opening with the buck frames in it.
 *
 * @param name what the builder calls it
 * @param wall the wall's name
 * @param left from the left end of its wall's outside length, seen from outside, to its near side;
 *     what is told of it is {@link #toldLeft}
 * @param width across
 * @param sill height of its underside above the first bed
 * @param head height of its top above the first bed
 * @param shortLogs whether short logs stand both sides, not whole logs cut after stacking
 * @param leaf what is to stand between its bucks, where it is told
 * @param remarks free text, or empty
 * @param origin the row it was read from
 */
public record Opening(
    String name,
    String wall,
    Length left,
    Length width,
    Length sill,
    Length head,
    boolean shortLogs,
    Optional<Leaf> leaf,
    String remarks,
    CellRef origin) {
  /** An opening of which no leaf is told. */
  public Opening(
      String name,
      String wall,
      Length left,
      Length width,
      Length sill,
      Length head,
      boolean shortLogs,
      String remarks,
      CellRef origin) {
    this(name, wall, left, width, sill, head, shortLogs, Optional.empty(), remarks, origin);
  }

  /**
   * Returns how far its near side is from the left corner that builders measure from: of a wing's
   * side that dies in a wall at its left end, from that wall's outer face.
   */
  public Length toldLeft(Building building) {
    return building.wall(wall).map(each -> left.minus(building.beforeLeft(each))).orElse(left);
  }

  /** Returns whether it has a size and lies between the walls that cross its own, clear of them. */
  public boolean fits(Building building, BuildRules rules) {
    return head.isMoreThan(sill)
        && width.isMoreThan(Length.ZERO)
        && building.wall(wall).filter(each -> isBetween(each, building)).isPresent()
        && againstSaddle(building, rules).isEmpty();
  }

  private boolean isBetween(Wall on, Building building) {
    Length right = on.outside().minus(left.plus(width));
    return !left.isLessThan(building.after(on).thickness())
        && !right.isLessThan(building.before(on).thickness());
  }

  /**
   * Returns the crossing of a partition that leaves too short a piece beside the opening, or none
   * at all; empty where it keeps {@code Piece_least} from each.
   */
  public Optional<Saddle> againstSaddle(Building building, BuildRules rules) {
    Length least = rules.length(Setting.PIECE_LEAST);
    return building.wall(wall).stream()
        .flatMap(each -> building.saddles(each).stream())
        .filter(
            saddle ->
                left.isLessThan(saddle.to().plus(least))
                    && saddle.from().minus(least).isLessThan(left.plus(width)))
        .findFirst();
  }

  /** Returns whether it shares room with another opening of its wall; a shared edge is none. */
  public boolean overlaps(Opening other) {
    return wall.equals(other.wall)
        && left.isLessThan(other.left.plus(other.width))
        && other.left.isLessThan(left.plus(width))
        && sill.isLessThan(other.head)
        && other.sill.isLessThan(head);
  }
}
