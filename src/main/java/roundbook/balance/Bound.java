package roundbook.balance;

import java.util.function.BooleanSupplier;

/**
 * A score that no choice of a task can be under, by Lagrangian relaxation.
 *
 * <p>Each side of a building is laid by itself at the least cost, from its lowest round up, no log
 * twice on it. Prices make the sides agree: one for every log that several sides want; one for each
 * size of a round, so that its sides are reckoned with the same; and one for the sum of middle
 * diameters that makes a size. Whatever the prices, what the sides cost together, less what is paid
 * for logs that there are, is no more than any choice of the task costs; spread is left out, which
 * costs nothing less than zero. Prices follow the subgradient by Polyak's steps. States of a side
 * through which no choice is better than the known one are taken out for good.
 *
 * <p>It holds for choices that keep every tip that is refused, with sizes that go by steps.
 */
public final class Bound {
  /** Share by which sums of rounded numbers may be off, and more. */
  private static final double ROUNDING = 1e-9;

  /** By what share of the known score a choice may be better for the search to end. */
  private static final double NOTHING_LEFT = 2e-5;

  /** Rounds of prices after which states are taken out again. */
  private static final int PRUNE_EVERY = 5;

  /** Rounds of prices without a better bound after which steps are halved. */
  private static final int PATIENCE = 12;

  private static final double LEAST_STEP = 1e-3;

  /** Steps that one round of prices may take. */
  private static final double MOST_WORK = 3e8;

  private static final double MOST_PAIRED = 3e8;

  private final BoundPrices prices;
  private final BoundWay way;
  private final double known;
  private final BooleanSupplier stop;
  private double best;

  private Bound(BoundPrices prices, double known, BooleanSupplier stop) {
    this.prices = prices;
    this.known = known;
    this.stop = stop;
    way = new BoundWay(prices);
  }

  /**
   * Returns a score that no choice for all places of a task is under, in unit²: zero where nothing
   * better was found, and at most the known score.
   *
   * @param task the task; the fourth power of errors is left out
   * @param known the score of a choice that is known
   * @param stop asked now and then; true ends it with the bound that was reached
   */
  public static double of(BalanceTask task, double known, BooleanSupplier stop) {
    Aims aims = task.aims();
    Aims.Weights weights = aims.weights();
    if (aims.sizeStep() == 0 || known <= 0 || task.places() == 0) {
      return 0;
    }
    Aims plain =
        new Aims(
            aims.gap(),
            aims.leastGap(),
            aims.mostSpread(),
            aims.sizeStep(),
            new Aims.Weights(weights.least(), weights.spread(), weights.inversion(), false));
    BoundPrices prices = new BoundPrices(new Model(task.withAims(plain)), known);
    if (prices.work() > MOST_WORK) {
      return 0;
    }
    return new Bound(prices, known, stop).search();
  }

  private double search() {
    if (!rises(1) && !stop.getAsBoolean()) {
      prices.restore();
      way.halt();
      double gap = known - prices.value();
      prices.prune(gap);
      if (prices.pair(gap, MOST_PAIRED)) {
        rises(0.5);
      }
    }
    return Math.max(0, Math.min(known, best - ROUNDING * (1 + best)));
  }

  /** Betters prices until that brings nothing more; returns whether nothing better is left. */
  private boolean rises(double first) {
    double step = first;
    int idle = 0;
    for (int turn = 1; step > LEAST_STEP && !stop.getAsBoolean(); turn++) {
      double value = prices.value();
      if (value >= known * (1 - NOTHING_LEFT)) {
        best = Math.min(value, known * (1 + NOTHING_LEFT));
        return true;
      }
      idle = value > best + 1e-4 * known ? 0 : idle + 1;
      if (value > best) {
        best = value;
        prices.keep();
      }
      if (turn % PRUNE_EVERY == 0) {
        prices.prune(known - value);
      }
      if (idle >= PATIENCE) {
        step /= 2;
        idle = 0;
        prices.restore();
        way.halt();
        continue;
      }
      way.follow(step * (1.05 * known - value));
    }
    return false;
  }
}
