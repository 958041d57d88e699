package roundbook.job;

import java.util.List;
import java.util.Optional;
import roundbook.units.Length;

/**
 * Where a wall stands besides in the ring of the only pen.
 *
 * @param pen the number of its pen, counted from 1 in a row
 * @param between the two walls that a partition runs between; the one wall of the house that a wing
 *     stands on, told of the wing's wall across from it; none for any other
 * @param at of a partition how far its near face is from the left outside corner of the first of
 *     those two, seen from outside, and so of a wing its left corner; of a further pen in a row the
 *     width of the open passage before it, between outer faces
 */
public record Stand(int pen, List<String> between, Optional<Length> at) {
  /** In the ring of the only pen. */
  public static final Stand RING = new Stand(1, List.of(), Optional.empty());

  /** Copies the list. */
  public Stand {
    between = List.copyOf(between);
  }

  /** Returns whether it is a partition's. */
  public boolean isPartition() {
    return between.size() > 1;
  }

  /** Returns whether a partition runs from or to a wall. */
  boolean ends(Wall wall) {
    return between.stream().anyMatch(name -> name.equalsIgnoreCase(wall.name()));
  }
}
