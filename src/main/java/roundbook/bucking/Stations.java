package roundbook.bucking;

import java.util.Arrays;
import java.util.stream.IntStream;
import roundbook.bucking.BuckingTask.Side;
import roundbook.bucking.Parting.PartedPlace;

/**
 * Where a wall's gaps are taken, in half steps from its left saw cut: at both inside faces, at the
 * middle, and at the sides of the openings that cut its places through.
 */
final class Stations {
  /** How many there are on a wall without openings. */
  static final int USUAL = 3;

  private static final int MIDDLE = 1;

  private final BuckingTask task;
  private final int[][] at;

  Stations(BuckingTask task) {
    this.task = task;
    this.at = new int[task.sides().size()][];
    Arrays.setAll(at, this::along);
  }

  private int[] along(int side) {
    Side wall = task.sides().get(side);
    IntStream usual = IntStream.of(2 * wall.inset(), wall.raw(), 2 * (wall.raw() - wall.inset()));
    IntStream jambs =
        task.parting().places().stream()
            .filter(parted -> parted.place() % at.length == side)
            .flatMapToInt(parted -> IntStream.of(leftJamb(parted), rightJamb(parted)))
            .distinct();
    return IntStream.concat(usual, jambs).toArray();
  }

  private int leftJamb(PartedPlace parted) {
    return 2 * (parted.left() - task.parting().trim());
  }

  private int rightJamb(PartedPlace parted) {
    int trim = task.parting().trim();
    return 2 * (task.side(parted.place()).raw() - parted.right() + trim);
  }

  /** Returns how many stations the wall of a place has. */
  int count(int place) {
    return at[place % at.length].length;
  }

  /** Returns a place's diameter at the middle of its wall. */
  static int middle(int[] diameters) {
    return diameters[MIDDLE];
  }

  /** Measures a place that has one piece at all stations of its wall. */
  void measure(Beside whole, int place, int[] diameters) {
    int[] here = at[place % at.length];
    for (int k = 0; k < here.length; k++) {
      diameters[k] = whole.at(here[k]);
    }
  }

  /** Measures a place of two pieces at all stations of its wall. */
  void measure(Beside left, Beside right, PartedPlace parted, int[] diameters) {
    int[] here = at[parted.place() % at.length];
    int from = leftJamb(parted);
    int to = rightJamb(parted);
    int raw = task.side(parted.place()).raw();
    for (int k = 0; k < here.length; k++) {
      if (here[k] <= from) {
        diameters[k] = left.at(here[k]);
      } else if (here[k] >= to) {
        diameters[k] = right.at(2 * raw - here[k]);
      } else {
        long one = left.at(from);
        long rise = right.at(2 * raw - to) - one;
        diameters[k] = (int) (one + rise * (here[k] - from) / (to - from));
      }
    }
  }

  /** Returns whether the butts of a place's round lie at the left. */
  boolean buttsLeft(int place) {
    return place / at.length % 2 == 0 == task.parting().buttsLeft();
  }

  /**
   * A piece from a corner on: to an opening, or from the left one to the other.
   *
   * @param bole its stem
   * @param from where it begins
   * @param raw its length
   * @param buttOut whether its butt lies at that corner
   */
  record Beside(Bole bole, int from, int raw, boolean buttOut) {
    /** Returns its diameter at half steps from its saw cut at the corner. */
    int at(int fromCorner) {
      return bole.atHalf(2 * from + (buttOut ? fromCorner : 2 * raw - fromCorner));
    }
  }
}
