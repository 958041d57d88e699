package roundbook.balance;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The cheapest ways to lay two sides of a building together, at prices: log by log from the lowest
 * round up, first on one side, then on the other, no log twice on both.
 *
 * <p>A state is a round, a size of it and a cut of a log on each side. Laying the upper log of one
 * side and then that of the other takes two steps of a log each instead of one of two.
 */
final class PairPaths {
  private final WallPaths one;
  private final WallPaths other;
  private final Model model;
  private final double spreadShare;
  private final Prices prices;
  private final int[][][] left;
  private final int[][][] right;
  private final boolean[][][] allowed;
  private final boolean[][][] meets;
  private final Ways[][] ways;
  private long[] bit;

  /**
   * @param model the task
   * @param one a side
   * @param other another of the same building and length class, laid as early; or the same again,
   *     for two that are alike
   * @param gap by how much more than the cheapest ways both may cost together, as reckoned without
   *     any spread
   * @param spreadShare the share of a round's excess spread that these two are told of
   */
  PairPaths(Model model, WallPaths one, WallPaths other, double gap, double spreadShare) {
    this.model = model;
    this.one = one;
    this.other = other;
    this.spreadShare = spreadShare;
    prices = new Prices(model);
    ways = new Ways[one.courses][];
    allowed = new boolean[one.courses][][];
    left = new int[one.courses][][];
    right = new int[one.courses][][];
    meets = new boolean[one.courses][][];
    for (int r = 0; r < one.courses; r++) {
      ways[r] = new Ways[one.alive[r].length];
      allowed[r] = new boolean[one.alive[r].length][];
      left[r] = one.alive[r].clone();
      right[r] = other.alive[r].clone();
      meets[r] = new boolean[one.alive[r].length][r == 0 ? 0 : one.alive[r - 1].length];
      Arrays.stream(meets[r]).forEach(below -> Arrays.fill(below, true));
      for (int k = 0; k < allowed[r].length; k++) {
        allowed[r][k] = allowed(r, k, gap);
      }
    }
  }

  private boolean[] allowed(int r, int k, double gap) {
    boolean[] grid = new boolean[left[r][k].length * right[r][k].length];
    for (int i = 0; i < grid.length; i++) {
      int x = i / right[r][k].length;
      int y = i % right[r][k].length;
      int v = left[r][k][x];
      int w = right[r][k][y];
      double excess = one.excess[r][k][x] + other.excess[r][k][y] + spread(v, w);
      grid[i] = one.logs[v] != one.logs[w] && excess <= gap && one.isNear(r, k, v, w);
    }
    return grid;
  }

  /** Returns how many steps there are. */
  double work() {
    double work = 0;
    for (int r = 1; r < one.courses; r++) {
      for (int k = 0; k < left[r].length; k++) {
        for (int below = 0; below < left[r - 1].length; below++) {
          double x = left[r - 1][below].length;
          double y = right[r - 1][below].length;
          work += left[r][k].length * y * (x + right[r][k].length);
        }
      }
    }
    return work;
  }

  /** What two states cost. */
  private double cost(int r, int k, int i, WallPaths.StateCost first, WallPaths.StateCost second) {
    int beside = right[r][k].length;
    int v = left[r][k][i / beside];
    int w = right[r][k][i % beside];
    return first.of(r, k, v) + second.of(r, k, w) + spread(v, w) * spreadShare;
  }

  /** Returns what the middle diameters of two cuts cost alone that differ too much. */
  private double spread(int v, int w) {
    long apart = Math.abs(model.mids[one.variants[v]] - model.mids[one.variants[w]]);
    return model.area(prices.spread(apart));
  }

  /**
   * Finds the cheapest way.
   *
   * @param first what states of the first side cost
   * @param second what states of the other cost
   * @param tracking the logs that may not lie twice, at most 64 of them
   * @return what it costs, infinite where there is none
   */
  double find(WallPaths.StateCost first, WallPaths.StateCost second, int[] tracking) {
    bit = new long[model.logs];
    for (int i = 0; i < tracking.length; i++) {
      bit[tracking[i]] = 1L << i;
    }
    for (int r = 0; r < one.courses; r++) {
      for (int k = 0; k < allowed[r].length; k++) {
        ways[r][k] = new Ways(allowed[r][k].length);
        for (int i = 0; i < allowed[r][k].length; i++) {
          ways[r][k].begin(i);
        }
        if (r == 0) {
          begin(k);
        }
        for (int below = 0; r > 0 && below < allowed[r - 1].length; below++) {
          if (meets[r][k][below]) {
            lay(r, k, below);
          }
        }
        for (int i = 0; i < allowed[r][k].length; i++) {
          ways[r][k].add(i, allowed[r][k][i] ? cost(r, k, i, first, second) : 0);
        }
      }
    }
    Ways[] last = ways[one.courses - 1];
    return Arrays.stream(last).mapToDouble(Ways::least).min().orElse(Ways.NEVER);
  }

  private void begin(int k) {
    int beside = right[0][k].length;
    for (int i = 0; i < allowed[0][k].length; i++) {
      if (allowed[0][k][i]) {
        long own = bit[one.logs[left[0][k][i / beside]]];
        ways[0][k].offer(i, 0, own | bit[one.logs[right[0][k][i % beside]]], -1);
      }
    }
  }

  /** Lays a round over another, both at given sizes. */
  private void lay(int r, int k, int below) {
    int[] low = left[r - 1][below];
    int[] beside = right[r - 1][below];
    int[] high = left[r][k];
    Ways from = ways[r - 1][below];
    double[][] joints = one.joints(r, below, k);
    Ways middle = new Ways(high.length * beside.length);
    for (int i = 0; i < high.length * beside.length; i++) {
      int variant = high[i / beside.length];
      int y = i % beside.length;
      middle.begin(i);
      long own = bit[one.logs[variant]];
      double[] joint = joints[variant];
      double limit = one.logs[variant] == one.logs[beside[y]] ? 0 : Ways.NEVER;
      for (int x = 0; x < low.length; x++) {
        int state = x * beside.length + y;
        double more = joint[low[x]];
        if (from.least[state] + more < limit && one.logs[low[x]] != one.logs[variant]) {
          middle.extend(i, from, state, more, own, (below << 18 | state) * Ways.ENTRIES);
          limit = middle.limit(i);
        }
      }
      middle.add(i, 0);
    }
    layOther(r, k, below, middle);
  }

  private void layOther(int r, int k, int below, Ways middle) {
    int[] beside = right[r - 1][below];
    int[] above = right[r][k];
    double[][] joints = other.joints(r, below, k);
    double rise = one.rise(r, below, k) + other.rise(r, below, k);
    for (int i = 0; i < allowed[r][k].length; i++) {
      if (allowed[r][k][i]) {
        int variant = above[i % above.length];
        long own = bit[one.logs[variant]];
        int row = i / above.length * beside.length;
        double[] joint = joints[variant];
        double limit = ways[r][k].limit(i);
        for (int y = 0; y < beside.length; y++) {
          double more = joint[beside[y]] + rise;
          if (middle.least[row + y] + more < limit && one.logs[beside[y]] != one.logs[variant]) {
            ways[r][k].extend(i, middle, row + y, more, own, -1);
            limit = ways[r][k].limit(i);
          }
        }
      }
    }
  }

  /**
   * Takes out states through which every way costs too much.
   *
   * @param first what states of the first side cost, as when the cheapest way was found
   * @param second what states of the other cost
   * @param gap by how much more than the cheapest a way may cost
   */
  void prune(WallPaths.StateCost first, WallPaths.StateCost second, double gap) {
    Ways[] last = ways[one.courses - 1];
    double most = gap + Arrays.stream(last).mapToDouble(Ways::least).min().orElse(0);
    double[][] on = zeros(one.courses - 1);
    for (int r = one.courses - 1; r >= 0; r--) {
      double[][] here = on;
      on = r == 0 ? here : zeros(r - 1);
      for (double[] least : on) {
        Arrays.fill(least, r == 0 ? 0 : Ways.NEVER);
      }
      for (int k = 0; k < here.length; k++) {
        double[] rest = here[k].clone();
        for (int i = 0; i < rest.length; i++) {
          allowed[r][k][i] &= ways[r][k].least[i] + rest[i] <= most;
          rest[i] = allowed[r][k][i] ? rest[i] + cost(r, k, i, first, second) : Ways.NEVER;
        }
        for (int below = 0; r > 0 && below < on.length; below++) {
          if (meets[r][k][below]) {
            meets[r][k][below] = under(r, k, below, rest, on[below]) <= most;
          }
        }
      }
    }
    for (int r = 0; r < one.courses; r++) {
      for (int k = 0; k < allowed[r].length; k++) {
        compact(r, k);
      }
    }
  }

  private double[][] zeros(int r) {
    return Arrays.stream(allowed[r]).map(grid -> new double[grid.length]).toArray(double[][]::new);
  }

  /**
   * Works out what the states under a round have to come at least.
   *
   * @param rest what those of the round have to come, their own cost included
   * @param on what is known of the states under it, lowered
   * @return what the cheapest way costs that goes over both sizes
   */
  private double under(int r, int k, int below, double[] rest, double[] on) {
    int[] low = left[r - 1][below];
    int[] beside = right[r - 1][below];
    int[] high = left[r][k];
    int[] above = right[r][k];
    double[][] joints = one.joints(r, below, k);
    double rise = one.rise(r, below, k) + other.rise(r, below, k);
    double[] middle = new double[high.length * beside.length];
    for (int i = 0; i < middle.length; i++) {
      double[] joint = other.joints(r, below, k)[beside[i % beside.length]];
      int row = i / beside.length * above.length;
      double least = Ways.NEVER;
      for (int z = 0; z < above.length; z++) {
        least = Math.min(least, rest[row + z] + joint[above[z]]);
      }
      middle[i] = least;
    }
    double cheapest = Ways.NEVER;
    for (int i = 0; i < on.length; i++) {
      double[] joint = joints[low[i / beside.length]];
      int y = i % beside.length;
      double least = Ways.NEVER;
      for (int w = 0; w < high.length; w++) {
        least = Math.min(least, middle[w * beside.length + y] + joint[high[w]]);
      }
      on[i] = Math.min(on[i], least + rise);
      cheapest = Math.min(cheapest, least + rise + ways[r - 1][below].least[i]);
    }
    return cheapest;
  }

  /** Leaves out cuts that stand in no state any more. */
  private void compact(int r, int k) {
    int beside = right[r][k].length;
    boolean[] grid = allowed[r][k];
    int[] rows =
        IntStream.range(0, left[r][k].length)
            .filter(x -> IntStream.range(0, beside).anyMatch(y -> grid[x * beside + y]))
            .toArray();
    int[] columns =
        IntStream.range(0, beside)
            .filter(y -> Arrays.stream(rows).anyMatch(x -> grid[x * beside + y]))
            .toArray();
    boolean[] kept = new boolean[rows.length * columns.length];
    for (int i = 0; i < kept.length; i++) {
      kept[i] = grid[rows[i / columns.length] * beside + columns[i % columns.length]];
    }
    int[] low = left[r][k];
    int[] high = right[r][k];
    left[r][k] = Arrays.stream(rows).map(x -> low[x]).toArray();
    right[r][k] = Arrays.stream(columns).map(y -> high[y]).toArray();
    allowed[r][k] = kept;
  }

  /** Returns the states of the cheapest way of each side, from the lowest round. */
  WallPaths.Stop[][] cheapest() {
    WallPaths.Stop[][] paths = new WallPaths.Stop[2][one.courses];
    Ways[] last = ways[one.courses - 1];
    int k = 0;
    for (int size = 1; size < last.length; size++) {
      k = last[size].least() < last[k].least() ? size : k;
    }
    int i = last[k].cheapest();
    int entry = last[k].entry(i);
    for (int r = one.courses - 1; r >= 0; r--) {
      int beside = right[r][k].length;
      paths[0][r] = new WallPaths.Stop(k, left[r][k][i / beside]);
      paths[1][r] = new WallPaths.Stop(k, right[r][k][i % beside]);
      int from = ways[r][k].from[entry];
      if (r > 0) {
        k = from / Ways.ENTRIES >> 18;
        i = from / Ways.ENTRIES & (1 << 18) - 1;
        entry = i * Ways.ENTRIES + from % Ways.ENTRIES;
      }
    }
    return paths;
  }
}
