package roundbook.job;

import java.util.Optional;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/**
 * A door or window, by its rough opening with the buck frames in it.
 *
 * @param name what the builder calls it
 * @param wall the wall's name
 * @param left from the wall's left outside corner, seen from outside, to its near side
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
