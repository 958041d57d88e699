package roundbook.bucking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.Parting.PartedPlace;

/**
 * The pieces that a search begins with.
 *
 * <p>Stems are cut as {@link Counts} has it. Where openings cut places through, each stem gives one
 * piece, and two lie in a place where a whole one is lacking elsewhere for want of them: such
 * places are looked for one by one, those of the longest walls first.
 */
final class FirstDeal {
  private final BuckingTask task;
  private final JointState state;
  private final Set<Integer> parted = new HashSet<>();

  FirstDeal(BuckingTask task, JointState state) {
    this.task = task;
    this.state = state;
  }

  /** Lays settled pieces and the others, thickest lowest; false where a place finds none. */
  boolean lay() {
    Optional<List<Cut>> cuts = cuts();
    if (cuts.isEmpty()) {
      return false;
    }
    List<Cut> falling = new ArrayList<>(cuts.get());
    falling.sort(
        Comparator.comparingInt(
            cut -> -task.boles().get(cut.bole()).atHalf(cut.from() + cut.to())));
    List<Dealing.Slot> slots = slots();
    Cut[] dealt = new Dealing(task, slots, falling).dealt();
    for (PartedPlace place : longestFirst()) {
      if (lacking(dealt) == 0) {
        break;
      }
      parted.add(place.place());
      List<Dealing.Slot> more = slots();
      Cut[] other = new Dealing(task, more, falling).dealt();
      if (lacking(other) < lacking(dealt)) {
        slots = more;
        dealt = other;
      } else {
        parted.remove(place.place());
      }
    }
    return lacking(dealt) == 0 && lay(slots, dealt);
  }

  private Optional<List<Cut>> cuts() {
    return task.parting().places().isEmpty() ? Counts.cuts(task) : Optional.of(whole());
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
        .filter(place -> task.settled().piece(place.place()) == null)
        .sorted(
            Comparator.comparingInt((PartedPlace place) -> -task.side(place.place()).raw())
                .thenComparingInt(PartedPlace::place))
        .toList();
  }

  private List<Dealing.Slot> slots() {
    List<Dealing.Slot> slots = new ArrayList<>();
    for (int place = 0; place < task.places(); place++) {
      if (parted.contains(place)) {
        int right = state.rightOf(place);
        PartedPlace lengths = task.parting().places().get(right - task.places());
        slots.add(new Dealing.Slot(place, state.demand(place, true), lengths.left()));
        slots.add(new Dealing.Slot(right, state.demand(right, true), lengths.right()));
      } else if (task.settled().piece(place) == null) {
        slots.add(new Dealing.Slot(place, place, task.side(place).raw()));
      }
    }
    return slots;
  }

  private static long lacking(Cut[] dealt) {
    return Arrays.stream(dealt).filter(cut -> cut == null).count();
  }

  private boolean lay(List<Dealing.Slot> slots, Cut[] dealt) {
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
