package roundbook.balance;

import java.util.function.LongPredicate;

/**
 * Anneals a choice whose sizes always follow its logs: for sizes that are exact means, and for many
 * places.
 */
final class Anneal implements Annealer {
  /** To what power of their number logs are looked for last where the reach narrows. */
  private static final double NARROWEST = 0.6;

  private final Model model;
  private final State state;
  private final Moves moves;
  private final int[] best;
  private final boolean narrows;
  private long bestTotal;

  /**
   * Makes an annealer.
   *
   * @param narrows whether logs less and less like in size are passed over as it cools, which pays
   *     where there are many
   */
  Anneal(Model model, Dice dice, boolean narrows) {
    this.model = model;
    this.narrows = narrows;
    state = new State(model);
    moves = new Moves(model, dice);
    best = new int[model.slots.count];
  }

  @Override
  public void from(int[] variants) {
    state.set(variants);
    note();
    bestTotal = Long.MAX_VALUE;
  }

  @Override
  public void run(Schedule schedule, long count, LongPredicate goOn) {
    double square = model.grains * model.grains;
    for (long done = 0; done < count && !moves.none() && goOn.test(done); done += BLOCK) {
      double share = (double) done / count;
      double heat = square * schedule.at(share);
      moves.reach(narrows ? 1 - (1 - NARROWEST) * share : 1);
      for (int i = 0; i < Math.min(BLOCK, count - done); i++) {
        step(heat);
      }
    }
    noteBetter();
  }

  private void step(double heat) {
    if (!propose()) {
      return;
    }
    long most = moves.bound(heat);
    if (state.trial(most) <= most) {
      state.keep();
      noteBetter();
    } else {
      state.undo();
    }
  }

  private void noteBetter() {
    if (state.total < bestTotal) {
      note();
    }
  }

  private void note() {
    bestTotal = state.total;
    System.arraycopy(state.variant, 0, best, 0, best.length);
  }

  private boolean propose() {
    int slot = moves.slot();
    int log = state.logAt(slot);
    int other = moves.near(log);
    if (other < 0 || !model.fits(other, slot)) {
      return false;
    }
    int there = state.slotOf[other];
    if (there >= 0) {
      if (!model.fits(log, there)) {
        return false;
      }
      state.put(there, moves.variant(log, there));
    }
    state.put(slot, moves.variant(other, slot));
    return true;
  }

  @Override
  public int[] best() {
    return best.clone();
  }

  @Override
  public long bestTotal() {
    return bestTotal;
  }
}
