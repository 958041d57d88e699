package roundbook.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import roundbook.balance.BalanceTask.RingPlace;

/**
 * Changes a choice that people work by, one small change after the other, each of which must pay.
 *
 * <p>A change puts another log or another cut into one place, or lets two logs change places. The
 * one that pays most above its price is made first, until none does. Every log that is moved has
 * the price; a cut that is changed has it too, for a page is void by it.
 */
public final class Mender {
  private final State state;
  private final Model model;
  private final long price;
  private final int[] free;
  private final List<Step> steps = new ArrayList<>();
  private Move best;

  private Mender(State state, double price) {
    this.state = state;
    this.model = state.model;
    this.price = Math.round(price * model.grains * model.grains);
    this.free =
        java.util.stream.IntStream.range(0, model.slots.count)
            .filter(slot -> model.slotPin[slot] < 0)
            .toArray();
  }

  /**
   * One change that was made.
   *
   * @param place the place that another log or cut went into
   * @param other the place that it changed with; the same where the log was a spare or only its cut
   *     changed
   * @param gain by how much the score fell, in unit²
   */
  public record Step(RingPlace place, RingPlace other, double gain) {}

  /**
   * What came of it.
   *
   * @param result the choice
   * @param steps the changes in the order they were made
   */
  public record Mended(BalanceResult result, List<Step> steps) {
    /** Copies the list. */
    public Mended {
      steps = List.copyOf(steps);
    }
  }

  /**
   * Changes a choice where that pays.
   *
   * @param task what is wanted; every place must be among the keys of the choice
   * @param logs the log in each place
   * @param cuts the number of its cut in each place
   * @param price how much the score must fall for each log that is moved, in unit²
   */
  public static Mended mend(
      BalanceTask task, Map<RingPlace, Integer> logs, Map<RingPlace, Integer> cuts, double price) {
    Model model = new Model(task);
    int[] variants = new int[model.slots.count];
    for (int slot = 0; slot < variants.length; slot++) {
      RingPlace place = model.slots.place(slot);
      variants[slot] = model.firstVariant(logs.get(place), slot) + cuts.get(place);
    }
    State state = new State(model);
    state.set(variants);
    Mender mender = new Mender(state, price);
    mender.run();
    return new Mended(new BalanceResult(state, task), mender.steps);
  }

  /** A change on trial: variants for one or two slots; a slot below zero is none. */
  private record Move(
      int slot, int variant, int other, int otherVariant, long change, long worth) {}

  private void run() {
    for (int round = 0; round < 4 * free.length; round++) {
      best = null;
      Arrays.stream(free).forEach(this::trySlot);
      if (best == null) {
        return;
      }
      make(best);
    }
  }

  private void make(Move move) {
    put(move);
    state.trial();
    state.keep();
    RingPlace place = model.slots.place(move.slot());
    RingPlace other = move.other() < 0 ? place : model.slots.place(move.other());
    steps.add(new Step(place, other, -model.area(move.change())));
  }

  private void trySlot(int slot) {
    for (int log = 0; log < model.logs; log++) {
      int there = state.slotOf[log];
      boolean own = there == slot;
      if (own || model.fits(log, slot) && (there < 0 || there > slot && canGo(slot, there))) {
        tryLog(slot, log, own ? -1 : there);
      }
    }
  }

  private boolean canGo(int slot, int there) {
    return model.fits(state.logAt(slot), there);
  }

  private void tryLog(int slot, int log, int there) {
    int first = model.firstVariant(log, slot);
    int leaving = state.logAt(slot);
    for (int v = first; v < first + model.variants(log, slot); v++) {
      if (there < 0) {
        consider(slot, v, -1, -1, price);
        continue;
      }
      int back = model.firstVariant(leaving, there);
      for (int w = back; w < back + model.variants(leaving, there); w++) {
        consider(slot, v, there, w, 2 * price);
      }
    }
  }

  private void consider(int slot, int variant, int other, int otherVariant, long cost) {
    if (variant == state.variant[slot]) {
      return;
    }
    Move move = new Move(slot, variant, other, otherVariant, 0, 0);
    put(move);
    long change = state.trial();
    state.undo();
    long worth = -change - cost;
    if (worth > 0 && (best == null || worth > best.worth())) {
      best = new Move(slot, variant, other, otherVariant, change, worth);
    }
  }

  private void put(Move move) {
    if (move.other() >= 0) {
      state.put(move.other(), move.otherVariant());
    }
    state.put(move.slot(), move.variant());
  }
}
