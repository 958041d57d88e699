package roundbook.balance;

import java.util.Arrays;
import java.util.stream.IntStream;
import roundbook.balance.BalanceTask.RingPlace;

/** The log and the cut chosen for every place, with the score. */
public final class BalanceResult {
  private final Model model;
  private final BalanceTask asked;
  private final int[] variants;
  private final long[] sizes;
  private final Score score;

  BalanceResult(State state, BalanceTask asked) {
    model = state.model;
    this.asked = asked;
    variants = state.variant.clone();
    sizes = new long[state.size.length];
    for (int c = 0; c < sizes.length; c++) {
      sizes[c] = sizeOf(c);
    }
    score = Appraisal.of(state);
  }

  private long sizeOf(int course) {
    if (model.fixedSize[course] >= 0) {
      return model.fixedSize[course];
    }
    long sum = 0;
    int from = model.slots.courseSlot[course];
    int to = model.slots.courseSlot[course + 1];
    for (int slot = from; slot < to; slot++) {
      sum += model.fineMids[variants[slot]];
    }
    return model.task.aims().size(sum, to - from);
  }

  /**
   * Returns the task that was filled: the one asked for, or one with as many rounds as possible.
   */
  public BalanceTask task() {
    return model.task;
  }

  /** Returns whether every round asked for was filled. */
  public boolean isComplete() {
    return model.slots.courses() == new Slots(asked).courses();
  }

  /** Returns the log in a place of the task that was filled. */
  public int log(RingPlace place) {
    return model.variantLog[variants[model.slots.of(place)]];
  }

  /** Returns the number of the cut among the cuts of the log for the length class of its place. */
  public int cut(RingPlace place) {
    int slot = model.slots.of(place);
    return variants[slot] - model.firstVariant(model.variantLog[variants[slot]], slot);
  }

  /** Returns the size D of a round as the crew uses it, in fine units. */
  public long size(int building, int round) {
    return sizes[model.slots.buildingCourse[building] + round];
  }

  /** Returns the logs without a place, in order. */
  public int[] unused() {
    boolean[] used = new boolean[model.logs];
    Arrays.stream(variants).forEach(variant -> used[model.variantLog[variant]] = true);
    return IntStream.range(0, used.length).filter(log -> !used[log]).toArray();
  }

  /** Returns the score of the choice. */
  public Score score() {
    return score;
  }

  /** Returns a fresh state of this choice, to try changes on. */
  State state() {
    State state = new State(model);
    state.set(variants);
    return state;
  }
}
