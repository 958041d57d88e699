package roundbook.balance;

import java.util.function.LongPredicate;

/** Anneals a choice whose sizes are held loosely at first and strictly in the end. */
final class LooseAnneal implements Annealer {
  /** Of 1,024 moves, how many change the size of a round or exchange logs within one. */
  private static final int SIZE_MOVES = 50;

  private static final int ROUND_MOVES = 100;

  /** Of a hundred logs put, how many are cut as suits their neighbours best. */
  private static final int BEST_CUTS = 75;

  /** What an inch of misfit, or whatever the unit is, costs first and last, in unit². */
  private static final Schedule STRICTNESS = new Schedule(0.5, 8);

  private final Model model;
  private final LooseState state;
  private final Dice dice;
  private final Moves moves;
  private final int[] best;
  private final State exact;
  private long least;

  LooseAnneal(Model model, Dice dice) {
    this.model = model;
    this.dice = dice;
    state = new LooseState(model);
    moves = new Moves(model, dice);
    best = new int[model.slots.count];
    exact = new State(model);
  }

  @Override
  public void from(int[] variants) {
    state.set(variants);
    note();
    least = Long.MAX_VALUE;
  }

  @Override
  public void run(Schedule schedule, long count, LongPredicate goOn) {
    for (long done = 0; done < count && !moves.none() && goOn.test(done); done += BLOCK) {
      double share = (double) done / count;
      double heat = JointTables.UNIT * schedule.at(share);
      state.strictness(JointTables.UNIT * STRICTNESS.at(share) / model.task.scale.unit());
      block((int) Math.min(BLOCK, count - done), heat);
    }
    state.set(state.variant);
    noteBetter();
  }

  private void block(int count, double heat) {
    for (int i = 0; i < count; i++) {
      if (step(moves.bound(heat))) {
        noteBetter();
      }
    }
  }

  private void noteBetter() {
    if (state.misfit == 0 && state.total < least) {
      note();
    }
  }

  private void note() {
    least = state.total;
    System.arraycopy(state.variant, 0, best, 0, best.length);
  }

  private boolean step(long bound) {
    long chance = dice.next();
    int kind = (int) (chance >>> 54);
    int slot = moves.slot((int) chance);
    if (kind < SIZE_MOVES) {
      return state.step(model.slots.courseOf[slot], (kind & 1) == 0 ? 1 : -1, bound);
    }
    return kind < SIZE_MOVES + ROUND_MOVES ? exchange(slot, bound) : replace(slot, bound);
  }

  /** Exchanges two logs of a round, or cuts one log in another way. */
  private boolean exchange(int slot, long bound) {
    int c = model.slots.courseOf[slot];
    int from = model.slots.courseSlot[c];
    int other = from + dice.below(model.slots.courseSlot[c + 1] - from);
    if (other == slot) {
      return state.put(slot, cut(state.log(slot), slot), bound);
    }
    return exchange(slot, other, bound);
  }

  private boolean exchange(int slot, int other, long bound) {
    int log = state.log(slot);
    int there = state.log(other);
    if (!model.fits(there, slot) || !model.fits(log, other)) {
      return false;
    }
    int v = cut(there, slot);
    return state.mayPay(slot, v, other, bound) && state.put(slot, v, other, cut(log, other), bound);
  }

  private boolean replace(int slot, long bound) {
    int log = moves.near(state.log(slot));
    if (log < 0) {
      return false;
    }
    int there = state.slotOf[log];
    if (there >= 0) {
      return !state.isMate(slot, there) && exchange(slot, there, bound);
    }
    return model.fits(log, slot) && state.put(slot, cut(log, slot), bound);
  }

  /** Returns a cut of a log: mostly the one that suits its new neighbours best. */
  private int cut(int log, int slot) {
    boolean choice = model.variants(log, slot) > 1;
    return choice && dice.below(100) < BEST_CUTS
        ? state.bestCut(log, slot)
        : moves.variant(log, slot);
  }

  @Override
  public int[] best() {
    state.set(best);
    exact.set(state.straight());
    return exact.variant.clone();
  }

  @Override
  public long bestTotal() {
    return exact.total;
  }
}
