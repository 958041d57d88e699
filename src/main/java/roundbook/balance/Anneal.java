package roundbook.balance;

import java.util.Comparator;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * One run of annealing: tries small changes, keeps those that are better or not too much worse.
 *
 * <p>What is too much shrinks with the temperature, which falls geometrically over the run.
 */
final class Anneal {
  private static final int TABLE = 1 << 12;
  private static final int BLOCK = 1 << 10;

  private final Model model;
  private final State state;
  private final Dice dice;
  private final int[] ranked;
  private final int[] rank;
  private final int[] free;
  private final int[] stride = new int[TABLE];
  private final double[] minusLog = new double[TABLE];
  private final int[] best;
  private long bestTotal;

  Anneal(State state, Dice dice) {
    this.state = state;
    this.dice = dice;
    model = state.model;
    ranked =
        IntStream.range(0, model.logs)
            .filter(log -> model.logPin[log] == -1)
            .boxed()
            .sorted(Comparator.comparingLong(log -> SortAndDeal.mid(model, log)))
            .mapToInt(Integer::intValue)
            .toArray();
    rank = new int[model.logs];
    for (int i = 0; i < ranked.length; i++) {
      rank[ranked[i]] = i;
    }
    free = IntStream.range(0, model.slots.count).filter(s -> model.slotPin[s] < 0).toArray();
    double reach = StrictMath.log(Math.max(2, ranked.length));
    for (int i = 0; i < TABLE; i++) {
      double u = (i + 0.5) / TABLE;
      stride[i] = (int) StrictMath.exp(u * reach);
      minusLog[i] = -StrictMath.log(u);
    }
    best = state.variant.clone();
    bestTotal = state.total;
  }

  /** Returns the least score met, in squared grains. */
  long bestTotal() {
    return bestTotal;
  }

  /** Returns the choice of the least score. */
  int[] best() {
    return best.clone();
  }

  /** Runs from one temperature to another, in unit², trying so many moves. */
  void run(double hot, double cold, long moves, BooleanSupplier stop) {
    if (free.length == 0) {
      return;
    }
    double square = model.grains * model.grains;
    double fall = StrictMath.log(cold / hot);
    for (long done = 0; done < moves && !stop.getAsBoolean(); done += BLOCK) {
      double heat = square * hot * StrictMath.exp(fall * done / moves);
      for (int i = 0; i < BLOCK; i++) {
        step(heat);
      }
    }
  }

  private void step(double heat) {
    if (!propose()) {
      return;
    }
    long bound = (long) (heat * minusLog[(int) (dice.next() >>> 52)]);
    if (state.trial() <= bound) {
      state.keep();
      if (state.total < bestTotal) {
        bestTotal = state.total;
        System.arraycopy(state.variant, 0, best, 0, best.length);
      }
    } else {
      state.undo();
    }
  }

  private boolean propose() {
    int slot = free[dice.below(free.length)];
    int log = state.logAt(slot);
    int far = stride[(int) (dice.next() >>> 52)];
    int at = rank[log] + (dice.next() < 0 ? far : -far);
    if (at < 0 || at >= ranked.length) {
      return false;
    }
    int other = ranked[at];
    if (!model.fits(other, slot)) {
      return false;
    }
    int there = state.slotOf[other];
    if (there >= 0) {
      if (!model.fits(log, there)) {
        return false;
      }
      state.put(there, someVariant(log, there));
    }
    state.put(slot, someVariant(other, slot));
    return true;
  }

  private int someVariant(int log, int slot) {
    int count = model.variants(log, slot);
    return model.firstVariant(log, slot) + (count == 1 ? 0 : dice.below(count));
  }
}
