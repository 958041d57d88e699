package roundbook.bucking;

import java.util.Arrays;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.BuckingTask.Side;

/** A piece in every place, and what that costs, kept up to date while pieces change. */
final class JointState {
  final BuckingTask task;
  final Grains grains;
  final int sides;
  final int[] bole;
  final int[] from;
  final int[][] at;
  final int[] count;
  private final int[] butt;
  private final int[] mid;
  private final int[] tip;
  private final long[] sum;
  private final long[] size;
  private final long[] layer;
  private final long[] spread;
  private final long[] waste;
  private long total;

  JointState(BuckingTask task) {
    this.task = task;
    this.grains = new Grains(task);
    this.sides = task.sides().size();
    int places = task.places();
    int boles = task.boles().size();
    this.bole = new int[places];
    Arrays.fill(bole, -1);
    this.from = new int[places];
    this.at = new int[boles][Math.min(places, 12)];
    this.count = new int[boles];
    this.butt = new int[places];
    this.mid = new int[places];
    this.tip = new int[places];
    this.sum = new long[task.rounds()];
    this.size = new long[task.rounds()];
    this.layer = new long[task.rounds()];
    this.spread = new long[task.rounds()];
    this.waste = new long[boles];
  }

  /** Puts a piece into a place; costs are not reckoned before {@link #settle}. */
  void put(int place, int stem, int start) {
    if (bole[place] >= 0) {
      take(place);
    }
    Side side = task.side(place);
    Bole shape = task.boles().get(stem);
    int end = start + side.raw();
    butt[place] = shape.atHalf(2 * (start + side.inset()));
    mid[place] = shape.atHalf(start + end);
    tip[place] = shape.atHalf(2 * (end - side.inset()));
    bole[place] = stem;
    from[place] = start;
    if (count[stem] == at[stem].length) {
      at[stem] = Arrays.copyOf(at[stem], 2 * count[stem]);
    }
    at[stem][count[stem]++] = place;
    sum[place / sides] += mid[place];
  }

  private void take(int place) {
    int stem = bole[place];
    int i = 0;
    while (at[stem][i] != place) {
      i++;
    }
    at[stem][i] = at[stem][--count[stem]];
    sum[place / sides] -= mid[place];
  }

  /** Exchanges the pieces of two rounds, side by side, and reckons every cost anew. */
  void turn(int round, int other) {
    for (int side = 0; side < sides; side++) {
      int one = round * sides + side;
      int two = other * sides + side;
      int stem = bole[one];
      int start = from[one];
      put(one, bole[two], from[two]);
      put(two, stem, start);
    }
    settle();
  }

  /** Reckons every cost anew. */
  void settle() {
    for (int round = 0; round < size.length; round++) {
      round(round);
    }
    for (int round = 0; round < size.length; round++) {
      layer(round);
    }
    for (int stem = 0; stem < waste.length; stem++) {
      waste(stem);
    }
  }

  /** Reckons the costs of two rounds and two stems anew, the same ones where only one changed. */
  void settle(int one, int other, int stem, int second) {
    round(one);
    layer(one);
    if (one > 0) {
      layer(one - 1);
    }
    if (other != one) {
      round(other);
      layer(other);
      if (other > 0) {
        layer(other - 1);
      }
      if (one == other + 1 || other == one + 1) {
        layer(Math.min(one, other));
      }
    }
    waste(stem);
    waste(second);
  }

  private void round(int round) {
    long given = task.settled().size(round);
    size[round] = given > 0 ? given : grains.size(sum[round], sides);
    int least = Integer.MAX_VALUE;
    int most = Integer.MIN_VALUE;
    for (int place = round * sides; place < (round + 1) * sides; place++) {
      least = Math.min(least, mid[place]);
      most = Math.max(most, mid[place]);
    }
    total -= spread[round];
    spread[round] = grains.spread(most - least);
    total += spread[round];
  }

  private void layer(int round) {
    if (round + 1 >= size.length) {
      return;
    }
    long below = size[round];
    long above = size[round + 1];
    long cost = grains.inversion(below, above);
    for (int side = 0; side < sides; side++) {
      boolean first = task.sides().get(side).first();
      long spacing = first ? 3 * below + above : below + 3 * above;
      int low = round * sides + side;
      int high = low + sides;
      cost += grains.gap(spacing, (long) butt[low] + tip[high]);
      cost += grains.gap(spacing, (long) mid[low] + mid[high]);
      cost += grains.gap(spacing, (long) tip[low] + butt[high]);
    }
    total += cost - layer[round];
    layer[round] = cost;
  }

  private void waste(int stem) {
    int last = 0;
    int used = 0;
    for (int i = 0; i < count[stem]; i++) {
      int place = at[stem][i];
      int raw = task.side(place).raw();
      last = Math.max(last, from[place] + raw);
      used += raw;
    }
    long cost = count[stem] == 0 ? 0 : grains.waste * (task.boles().get(stem).end(last) - used);
    total += cost - waste[stem];
    waste[stem] = cost;
  }

  /** Returns whether a piece can be cut there, but for the pieces of two places. */
  boolean isFree(int stem, int start, int raw, int but, int orBut) {
    if (!task.boles().get(stem).holds(start, raw)) {
      return false;
    }
    int others = 0;
    for (int i = 0; i < count[stem]; i++) {
      int place = at[stem][i];
      if (place != but && place != orBut) {
        others++;
        int there = from[place];
        boolean apart =
            there + task.side(place).raw() + task.kerf() <= start
                || start + raw + task.kerf() <= there;
        if (!apart) {
          return false;
        }
      }
    }
    return others < task.boles().get(stem).most();
  }

  /** Returns the sum of all costs, in grains. */
  long total() {
    return total;
  }

  /** Returns the cost of the wood skipped, in grains. */
  long wasted() {
    return Arrays.stream(waste).sum();
  }

  /** Returns the size of a round, in ticks. */
  long size(int round) {
    return size[round];
  }

  /** Returns every gap at both ends and the middle of the joints, in ticks. */
  double[] gaps() {
    double[] gaps = new double[Math.max(0, size.length - 1) * sides * 3];
    int next = 0;
    for (int low = 0; low + sides < mid.length; low++) {
      int high = low + sides;
      long below = size[low / sides];
      long above = size[high / sides];
      long spacing = task.side(low).first() ? 3 * below + above : below + 3 * above;
      gaps[next++] = grains.gapTicks(spacing, (long) butt[low] + tip[high]);
      gaps[next++] = grains.gapTicks(spacing, (long) mid[low] + mid[high]);
      gaps[next++] = grains.gapTicks(spacing, (long) tip[low] + butt[high]);
    }
    return gaps;
  }

  /** Returns the pieces, by place. */
  Cut[] cuts() {
    Cut[] cuts = new Cut[bole.length];
    Arrays.setAll(cuts, i -> new Cut(bole[i], from[i], task.side(i).raw()));
    return cuts;
  }
}
