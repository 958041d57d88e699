package roundbook.balance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What states and steps of a bound cost, in whole units, rounded down. */
final class BoundCosts {
  /** Units of the known score. */
  static final int KNOWN = 1 << 24;

  /** What costs as much stands in no choice that is better than the known one. */
  private static final int MOST = 1 << 26;

  final Model model;
  final BoundSizes sizes;

  /** What share of a spread's cost is told by prices between the sides of a round. */
  private static final double BETWEEN = 0.5;

  private final Prices prices;
  private final double scale;

  /**
   * Tables by length class and base: all are made with the graphs of lone sides, then only read.
   */
  private final List<Map<Long, int[][]>> tables = new ArrayList<>();

  /**
   * @param known the score of a choice that is known, in unit²
   */
  BoundCosts(Model model, BoundSizes sizes, double known) {
    this.model = model;
    this.sizes = sizes;
    prices = new Prices(model);
    scale = KNOWN / known / (model.grains * model.grains);
    for (int c = 0; c < model.classes; c++) {
      tables.add(new HashMap<>());
    }
  }

  private int of(double squaredGrains) {
    return (int) Math.min(MOST, Math.floor(squaredGrains * scale));
  }

  /** Returns what a variant costs by itself. */
  int own(int variant) {
    return of(model.costs[variant]);
  }

  /**
   * Returns what two variants of a round cost that differ too much, their sides' share of what is
   * told by each two sides.
   */
  int spread(int course, int one, int other) {
    long apart = Math.abs((long) model.mids[one] - model.mids[other]);
    return of(prices.spread(apart) * share(course, 2) * (1 - BETWEEN));
  }

  /** Returns what middle diameters of a whole round cost that differ by so many ticks. */
  int spread(long ticks) {
    return of(prices.spread(ticks));
  }

  /** Returns a middle diameter, in units of length. */
  double mid(int variant) {
    return (double) model.mids[variant] * model.task.scale.tick() / model.task.scale.unit();
  }

  /**
   * Returns by how much less a spread of middle diameters may cost than is paid for it, for an inch
   * so much: where {@code w (S - most)²} is the cost, {@code p most + p² / 4 w}.
   */
  double saved(double paid) {
    return paid == 0 ? 0 : paid * (mostSpread() + paid / (4 * BETWEEN * weight()));
  }

  /** Returns by how much that grows with what is paid. */
  double savedMore(double paid) {
    return mostSpread() + paid / (2 * BETWEEN * weight());
  }

  private double mostSpread() {
    return (double) model.task.aims().mostSpread() / model.task.scale.unit();
  }

  private double weight() {
    return Math.max(
        1e-9, model.task.aims().weights().spread() * scale * model.grains * model.grains);
  }

  private double share(int course, int columns) {
    return (double) columns / model.slots.sides(course);
  }

  /** Returns the share of some sides in what a larger round above a smaller one costs. */
  int rise(int course, int size, int above, int columns) {
    long cost = prices.inversion(sizes.size(course, size), sizes.size(course + 1, above));
    return of(cost * share(course, columns));
  }

  /**
   * Returns what any two variants of a length class cost over each other, counted from its first.
   *
   * @param slot a slot of the lower round
   * @param size number of the lower round's size
   * @param above number of the upper round's size
   */
  int[][] joints(int slot, int size, int above) {
    int course = model.slots.courseOf[slot];
    long low = sizes.size(course, size);
    long high = sizes.size(course + 1, above);
    long base = model.slotFirst[slot] ? 3 * low + high : low + 3 * high;
    int c = model.slotClass[slot];
    Map<Long, int[][]> made = tables.get(c);
    int[][] found = made.get(base);
    if (found == null) {
      found = joints(c, base);
      made.put(base, found);
    }
    return found;
  }

  private int[][] joints(int lengthClass, long base) {
    int from = model.classFrom[lengthClass];
    int[][] costs = new int[model.classFrom[lengthClass + 1] - from][];
    int[] d = model.diameters;
    for (int i = 0; i < costs.length; i++) {
      costs[i] = new int[costs.length];
      for (int j = 0; j <= i; j++) {
        int v = 3 * (from + i);
        int w = 3 * (from + j);
        long butt = prices.gap(base - d[v] - d[w + 2]);
        long mid = prices.gap(base - d[v + 1] - d[w + 1]);
        long tip = prices.gap(base - d[v + 2] - d[w]);
        costs[i][j] = of(butt + mid + tip);
        costs[j][i] = costs[i][j];
      }
    }
    return costs;
  }
}
