package roundbook.balance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The cheapest ways to lay one side of a building from its lowest round to its top, at prices.
 *
 * <p>A state is a round, a size of it and a cut of a log there; a way costs its joints and what its
 * states cost. No log lies twice on a way: each state keeps some of the cheapest ways to it, with
 * the logs on each, and of those that are dropped the least cost, as a way of unknown logs. So no
 * way that keeps the rule is cheaper than the one that is found.
 */
final class WallPaths {
  /** Courses of the side, from the lowest. */
  final int courses;

  /** Global variant of each local one. */
  final int[] variants;

  /** Log of each local variant. */
  final int[] logs;

  /** Local variants that may still stand in each round at each size. */
  final int[][][] alive;

  /** By how much ways through each of them cost more than the cheapest, when last pruned. */
  final double[][][] excess;

  private final Model model;
  private final BoundSizes sizes;
  private final int[] slots;
  private final double square;
  private final Prices prices;
  private final Map<Long, double[][]> joints = new HashMap<>();
  private final Ways[][] ways;
  private long[] bit;

  /**
   * @param model the task
   * @param sizes the sizes that each round may have
   * @param slots the slots of the side, from the lowest
   */
  WallPaths(Model model, BoundSizes sizes, int[] slots) {
    this.model = model;
    this.sizes = sizes;
    this.slots = slots;
    square = model.grains * model.grains;
    prices = new Prices(model);
    courses = slots.length;
    variants = variants(model, slots[0]);
    logs = Arrays.stream(variants).map(variant -> model.variantLog[variant]).toArray();
    alive = new int[courses][][];
    excess = new double[courses][][];
    ways = new Ways[courses][];
    for (int r = 0; r < courses; r++) {
      int course = model.slots.courseOf[slots[r]];
      alive[r] = new int[sizes.count(course)][];
      excess[r] = new double[alive[r].length][];
      ways[r] = new Ways[alive[r].length];
      for (int k = 0; k < alive[r].length; k++) {
        alive[r][k] = standing(slots[r], sizes.size(course, k));
        excess[r][k] = new double[alive[r][k].length];
      }
    }
  }

  /** Returns all cuts of the length class of a slot, so that like sides number them alike. */
  private static int[] variants(Model model, int slot) {
    return IntStream.range(0, model.logs)
        .flatMap(
            log -> {
              int first = model.firstVariant(log, slot);
              return IntStream.range(first, first + model.variants(log, slot));
            })
        .toArray();
  }

  private int[] standing(int slot, long size) {
    return IntStream.range(0, variants.length)
        .filter(v -> model.fits(logs[v], slot) && size <= model.largest[variants[v]])
        .filter(v -> sizes.isNear(model.slots.courseOf[slot], size, variants[v]))
        .toArray();
  }

  /** Returns how many joints one search for the cheapest way reckons with. */
  double work() {
    double work = 0;
    for (int r = 1; r < courses; r++) {
      work += states(r) * states(r - 1);
    }
    return work;
  }

  private double states(int r) {
    return Arrays.stream(alive[r]).mapToDouble(at -> at.length).sum();
  }

  /** Returns whether another side has the same logs to lay, as early. */
  boolean isLike(WallPaths other) {
    return model.slotClass[slots[0]] == model.slotClass[other.slots[0]]
        && model.slotFirst[slots[0]] == model.slotFirst[other.slots[0]];
  }

  /** Returns whether the middle of two cuts lies as near to a size as it must. */
  boolean isNear(int r, int k, int one, int other) {
    int course = model.slots.courseOf[slots[r]];
    return sizes.isNear(course, sizes.size(course, k), variants[one], variants[other]);
  }

  /** What states cost, in unit². */
  interface StateCost {
    /** Returns the cost of a local variant in a round at a size. */
    double of(int round, int size, int variant);
  }

  /**
   * Finds the cheapest way.
   *
   * @param cost what states cost
   * @param tracking the logs that may not lie twice, at most 64 of them
   * @return what it costs, infinite where there is none
   */
  double find(StateCost cost, int[] tracking) {
    bit = new long[model.logs];
    for (int i = 0; i < tracking.length; i++) {
      bit[tracking[i]] = 1L << i;
    }
    for (int k = 0; k < alive[0].length; k++) {
      Ways first = new Ways(alive[0][k].length);
      ways[0][k] = first;
      for (int i = 0; i < alive[0][k].length; i++) {
        first.begin(i);
        first.offer(i, 0, bit[logs[alive[0][k][i]]], -1);
        first.add(i, cost.of(0, k, alive[0][k][i]));
      }
    }
    for (int r = 1; r < courses; r++) {
      for (int k = 0; k < alive[r].length; k++) {
        ways[r][k] = extended(r, k, cost);
      }
    }
    return Arrays.stream(ways[courses - 1]).mapToDouble(Ways::least).min().orElse(Ways.NEVER);
  }

  private Ways extended(int r, int k, StateCost cost) {
    int[] states = alive[r][k];
    Ways to = new Ways(states.length);
    for (int i = 0; i < states.length; i++) {
      to.begin(i);
      for (int below = 0; below < alive[r - 1].length; below++) {
        if (alive[r - 1][below].length > 0) {
          extend(r, k, below, i, to);
        }
      }
      to.add(i, cost.of(r, k, states[i]));
    }
    return to;
  }

  private void extend(int r, int k, int below, int i, Ways to) {
    int[] states = alive[r - 1][below];
    Ways from = ways[r - 1][below];
    int variant = alive[r][k][i];
    double[] joint = joints(r, below, k)[variant];
    double rise = rise(r, below, k);
    long own = bit[logs[variant]];
    double limit = to.limit(i);
    for (int j = 0; j < states.length; j++) {
      double more = joint[states[j]] + rise;
      if (from.least[j] + more < limit && logs[states[j]] != logs[variant]) {
        to.extend(i, from, j, more, own, (below << 20 | j) * Ways.ENTRIES);
        limit = to.limit(i);
      }
    }
  }

  /** One state of a way: its size and its local variant. */
  record Stop(int size, int variant) {}

  /** Returns the states of the cheapest way that was found, from the lowest round. */
  Stop[] cheapest() {
    Stop[] path = new Stop[courses];
    int k = 0;
    for (int size = 1; size < alive[courses - 1].length; size++) {
      k = ways[courses - 1][size].least() < ways[courses - 1][k].least() ? size : k;
    }
    int i = ways[courses - 1][k].cheapest();
    int entry = ways[courses - 1][k].entry(i);
    for (int r = courses - 1; r >= 0; r--) {
      path[r] = new Stop(k, alive[r][k][i]);
      int from = ways[r][k].from[entry];
      if (r > 0) {
        k = from / Ways.ENTRIES >> 20;
        i = from / Ways.ENTRIES & (1 << 20) - 1;
        entry = i * Ways.ENTRIES + from % Ways.ENTRIES;
      }
    }
    return path;
  }

  /**
   * Takes out states through which every way costs too much.
   *
   * @param cost what states cost, as when the cheapest way was found
   * @param gap by how much more than the cheapest a way may cost
   */
  void prune(StateCost cost, double gap) {
    double least = Arrays.stream(ways[courses - 1]).mapToDouble(Ways::least).min().orElse(0);
    double[][] above = new double[alive[courses - 1].length][];
    for (int k = 0; k < above.length; k++) {
      above[k] = new double[alive[courses - 1][k].length];
    }
    for (int r = courses - 1; r >= 0; r--) {
      double[][] here = above;
      above = r == 0 ? here : below(r, here, cost);
      for (int k = 0; k < alive[r].length; k++) {
        keep(r, k, ways[r][k].least, here[k], least, gap);
      }
    }
  }

  private void keep(int r, int k, double[] to, double[] on, double least, double gap) {
    int[] kept = IntStream.range(0, to.length).filter(i -> to[i] + on[i] - least <= gap).toArray();
    excess[r][k] = Arrays.stream(kept).mapToDouble(i -> to[i] + on[i] - least).toArray();
    int[] states = alive[r][k];
    alive[r][k] = Arrays.stream(kept).map(i -> states[i]).toArray();
  }

  /** Returns what the states below have to come at least, from what those of a round have. */
  private double[][] below(int r, double[][] above, StateCost cost) {
    double[][] least = new double[alive[r - 1].length][];
    for (int k = 0; k < least.length; k++) {
      least[k] = new double[alive[r - 1][k].length];
      Arrays.fill(least[k], Ways.NEVER);
      for (int up = 0; up < above.length; up++) {
        for (int i = 0; i < above[up].length; i++) {
          int variant = alive[r][up][i];
          double more = above[up][i] + cost.of(r, up, variant) + rise(r, k, up);
          double[] joint = joints(r, k, up)[variant];
          for (int j = 0; j < least[k].length; j++) {
            least[k][j] = Math.min(least[k][j], more + joint[alive[r - 1][k][j]]);
          }
        }
      }
    }
    return least;
  }

  /** Returns the share of a side in what a larger round above a smaller costs. */
  double rise(int r, int below, int k) {
    int course = model.slots.courseOf[slots[r]];
    int sides = model.slots.courseSlot[course + 1] - model.slots.courseSlot[course];
    return prices.inversion(sizes.size(course - 1, below), sizes.size(course, k)) / square / sides;
  }

  /** Returns what the joint of two cuts costs under a round at two sizes. */
  double[][] joints(int r, int below, int k) {
    int course = model.slots.courseOf[slots[r]];
    long low = sizes.size(course - 1, below);
    long high = sizes.size(course, k);
    long base = model.slotFirst[slots[r]] ? 3 * low + high : low + 3 * high;
    return joints.computeIfAbsent(base, this::joints);
  }

  private double[][] joints(long base) {
    int n = variants.length;
    double[][] costs = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        int v = 3 * variants[i];
        int w = 3 * variants[j];
        long cost =
            prices.gap(base - model.diameters[v] - model.diameters[w + 2])
                + prices.gap(base - model.diameters[v + 1] - model.diameters[w + 1])
                + prices.gap(base - model.diameters[v + 2] - model.diameters[w]);
        costs[i][j] = cost / square;
        costs[j][i] = costs[i][j];
      }
    }
    return costs;
  }
}
