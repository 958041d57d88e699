package roundbook.bucking;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import roundbook.bucking.BuckingTask.Cut;

/** Gives slots pieces that may lie there: a greatest matching, thickest lowest. */
final class Dealing {
  private final BuckingTask task;
  private final List<Slot> slots;
  private final List<Cut> cuts;
  private final int[] slotOf;

  /**
   * What is to be filled.
   *
   * @param number the number of the slot
   * @param demand the number by which the task says which stems may serve it
   * @param raw the length of its piece
   */
  record Slot(int number, int demand, int raw) {}

  /**
   * Begins with pieces.
   *
   * @param slots the slots, from the lowest round up
   * @param cuts pieces, the thickest first; of plain logs the whole, as long as need be
   */
  Dealing(BuckingTask task, List<Slot> slots, List<Cut> cuts) {
    this.task = task;
    this.slots = slots;
    this.cuts = cuts;
    this.slotOf = new int[cuts.size()];
  }

  /** Returns the piece of each slot; null where it finds none. */
  Cut[] dealt() {
    Arrays.fill(slotOf, -1);
    for (int i = 0; i < slots.size(); i++) {
      if (!takesFree(i)) {
        takes(i, new BitSet());
      }
    }
    Cut[] dealt = new Cut[slots.size()];
    for (int cut = 0; cut < slotOf.length; cut++) {
      if (slotOf[cut] >= 0) {
        dealt[slotOf[cut]] = cuts.get(cut);
      }
    }
    return dealt;
  }

  /** Others change only to make room where no piece that is left would do. */
  private boolean takesFree(int i) {
    for (int cut = 0; cut < slotOf.length; cut++) {
      if (slotOf[cut] < 0 && serves(cuts.get(cut), slots.get(i))) {
        slotOf[cut] = i;
        return true;
      }
    }
    return false;
  }

  private boolean takes(int i, BitSet seen) {
    for (int cut = 0; cut < slotOf.length; cut++) {
      if (!seen.get(cut) && serves(cuts.get(cut), slots.get(i))) {
        seen.set(cut);
        if (slotOf[cut] < 0 || takes(slotOf[cut], seen)) {
          slotOf[cut] = i;
          return true;
        }
      }
    }
    return false;
  }

  private boolean serves(Cut piece, Slot slot) {
    boolean plain = !task.parting().places().isEmpty();
    return (plain ? piece.raw() >= slot.raw() : piece.raw() == slot.raw())
        && task.settled().allowed().test(piece.bole(), slot.demand());
  }
}
