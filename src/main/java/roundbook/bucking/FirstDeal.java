package roundbook.bucking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.Parting.PartedPlace;

/**
 * The pieces that a search begins with: a greatest matching of pieces and slots, thickest lowest.
 *
 * <p>Stems are cut as {@link Counts} has it. Where openings cut places through, each stem gives one
 * piece, and two lie in a place where a whole one is lacking elsewhere for want of it: such places
 * are looked for one by one, those of the longest walls first.
 */
final class FirstDeal {
  private final BuckingTask task;
  private final JointState state;
  private final boolean oneEach;
  private final Set<Integer> parted = new TreeSet<>();
  private List<Cut> cuts = List.of();

  FirstDeal(BuckingTask task, JointState state) {
    this.task = task;
    this.state = state;
    this.oneEach = !task.parting().places().isEmpty();
  }

  /**
   * What is to be filled.
   *
   * @param number the number of the slot
   * @param demand the number by which the task says which stems may serve it
   * @param raw the length of its piece
   */
  private record Slot(int number, int demand, int raw) {}

  /** Lays settled pieces and the others; false where a place finds none. */
  boolean lay() {
    Optional<List<Cut>> found = oneEach ? Optional.of(whole()) : Counts.cuts(task);
    cuts = new ArrayList<>(found.orElse(List.of()));
    cuts.sort(
        Comparator.comparingInt(
            cut -> -task.boles().get(cut.bole()).atHalf(cut.from() + cut.to())));
    Cut[] dealt = dealt(slots());
    for (PartedPlace place : longestFirst()) {
      if (lacking(dealt) == 0) {
        break;
      }
      parted.add(place.place());
      Cut[] other = dealt(slots());
      if (lacking(other) < lacking(dealt)) {
        dealt = other;
      } else {
        parted.remove(place.place());
      }
    }
    return found.isPresent() && lacking(dealt) == 0 && lay(slots(), dealt);
  }

  private List<Cut> whole() {
    List<Cut> whole = new ArrayList<>();
    for (int bole = 0; bole < task.boles().size(); bole++) {
      int number = bole;
      task.boles().get(bole).free().stream()
          .max(Comparator.comparingInt(Stretch::length))
          .ifPresent(free -> whole.add(new Cut(number, free.from(), free.length())));
    }
    return whole;
  }

  private List<PartedPlace> longestFirst() {
    return task.parting().places().stream()
        .sorted(Comparator.comparingInt(place -> -task.side(place.place()).raw()))
        .toList();
  }

  private List<Slot> slots() {
    List<Slot> slots = new ArrayList<>();
    for (int place = 0; place < task.places(); place++) {
      if (parted.contains(place)) {
        int right = state.rightOf(place);
        PartedPlace lengths = task.parting().places().get(right - task.places());
        slots.add(new Slot(place, state.demand(place, true), lengths.left()));
        slots.add(new Slot(right, state.demand(right, true), lengths.right()));
      } else if (task.settled().piece(place) == null) {
        slots.add(new Slot(place, place, task.side(place).raw()));
      }
    }
    return slots;
  }

  /** Returns the piece of each slot; null where it finds none. */
  private Cut[] dealt(List<Slot> slots) {
    int[] slotOf = new int[cuts.size()];
    Arrays.fill(slotOf, -1);
    Cut[] dealt = new Cut[slots.size()];
    for (int i = 0; i < dealt.length; i++) {
      if (!takes(slots, i, slotOf, null)) {
        takes(slots, i, slotOf, new BitSet());
      }
    }
    for (int cut = 0; cut < slotOf.length; cut++) {
      if (slotOf[cut] >= 0) {
        dealt[slotOf[cut]] = cuts.get(cut);
      }
    }
    return dealt;
  }

  /** Finds a piece that no slot has; or, given those that were seen, one that a slot gives up. */
  private boolean takes(List<Slot> slots, int i, int[] slotOf, BitSet seen) {
    for (int cut = 0; cut < slotOf.length; cut++) {
      boolean open = seen == null ? slotOf[cut] < 0 : !seen.get(cut);
      if (open && serves(cuts.get(cut), slots.get(i))) {
        if (seen != null) {
          seen.set(cut);
        }
        if (slotOf[cut] < 0 || takes(slots, slotOf[cut], slotOf, seen)) {
          slotOf[cut] = i;
          return true;
        }
      }
    }
    return false;
  }

  private boolean serves(Cut piece, Slot slot) {
    return (oneEach ? piece.raw() >= slot.raw() : piece.raw() == slot.raw())
        && task.settled().allowed().test(piece.bole(), slot.demand());
  }

  private static long lacking(Cut[] dealt) {
    return Arrays.stream(dealt).filter(cut -> cut == null).count();
  }

  private boolean lay(List<Slot> slots, Cut[] dealt) {
    for (int place = 0; place < task.places(); place++) {
      Cut settled = task.settled().piece(place);
      if (settled != null) {
        state.put(place, settled.bole(), settled.from(), false);
      }
    }
    for (int i = 0; i < dealt.length; i++) {
      state.put(slots.get(i).number(), dealt[i].bole(), dealt[i].from(), false);
    }
    state.settle();
    return true;
  }
}
