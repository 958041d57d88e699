package roundbook.bucking;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import roundbook.bucking.BuckingTask.Cut;

/** Gives each open place a piece of its length that may lie there: a matching, thickest lowest. */
final class Dealing {
  private final BuckingTask task;
  private final int[] open;
  private final List<Cut> cuts;
  private final int[] placeOf;

  /**
   * Begins with pieces.
   *
   * @param open the places, from the lowest round up
   * @param cuts as many pieces, the thickest first
   */
  Dealing(BuckingTask task, int[] open, List<Cut> cuts) {
    this.task = task;
    this.open = open;
    this.cuts = cuts;
    this.placeOf = new int[cuts.size()];
  }

  /** Returns the number of the piece of each open place; empty where one finds none. */
  Optional<int[]> places() {
    Arrays.fill(placeOf, -1);
    for (int i = 0; i < open.length; i++) {
      if (!takes(i, new BitSet())) {
        return Optional.empty();
      }
    }
    int[] dealt = new int[open.length];
    for (int cut = 0; cut < placeOf.length; cut++) {
      dealt[placeOf[cut]] = cut;
    }
    return Optional.of(dealt);
  }

  private boolean takes(int i, BitSet seen) {
    for (int cut = 0; cut < placeOf.length; cut++) {
      if (!seen.get(cut) && serves(cut, open[i])) {
        seen.set(cut);
        if (placeOf[cut] < 0 || takes(placeOf[cut], seen)) {
          placeOf[cut] = i;
          return true;
        }
      }
    }
    return false;
  }

  private boolean serves(int cut, int place) {
    Cut piece = cuts.get(cut);
    return piece.raw() == task.side(place).raw()
        && task.settled().allowed().test(piece.bole(), place);
  }
}
