package roundbook.balance;

import java.util.Arrays;

/** Sides of a building that are laid alike, and what each size of a round costs each of them. */
final class BoundSide {
  /** The ways to lay one of them. */
  final WallPaths paths;

  /** Its lowest course. */
  final int first;

  /** How many sides there are. */
  final int count;

  /** Price of each size in each round. */
  final double[][] size;

  /** The way that these prices go. */
  final double[][] way;

  private double[][] kept;

  BoundSide(WallPaths paths, int first, int count) {
    this.paths = paths;
    this.first = first;
    this.count = count;
    size = empty();
    way = empty();
    keep();
  }

  /** Returns a zero for each size of each round. */
  double[][] empty() {
    return Arrays.stream(paths.alive)
        .map(sizes -> new double[sizes.length])
        .toArray(double[][]::new);
  }

  /** Notes the prices. */
  void keep() {
    kept = Arrays.stream(size).map(double[]::clone).toArray(double[][]::new);
  }

  /** Takes the prices that were noted, and stands still. */
  void restore() {
    for (int r = 0; r < size.length; r++) {
      System.arraycopy(kept[r], 0, size[r], 0, kept[r].length);
      Arrays.fill(way[r], 0);
    }
  }

  /** Returns whether another side may be laid together with this one. */
  boolean pairs(BoundSide other, Model model) {
    return model.slots.buildingOf[first] == model.slots.buildingOf[other.first]
        && paths.isLike(other.paths);
  }
}
