package roundbook.balance;

import java.util.Arrays;

/**
 * A complete choice whose sizes are held loosely, changed by trial.
 *
 * <p>Where sizes are rounded to a step, an exchange of logs that carries a round across a step
 * changes all the gaps above and below at once, which makes the ground rugged. Here a size is a
 * choice of its own: it changes by steps, and a round whose middle diameters don't round to it
 * misfits and pays for it. The way across is then made of small changes. A choice without misfit
 * has its true score.
 *
 * <p>The joints of two like columns cost what the better of their two matchings costs; {@link
 * #straight()} carries that out.
 */
final class LooseState {
  private static final int MOST_JOINTS = 4;

  /** Variant in each slot. */
  final int[] variant;

  /** Slot of each log, or -1. */
  final int[] slotOf;

  /** The score without misfits, in squared grains. */
  long total;

  /** Sum of all misfits: by how much sums of middle diameters miss their sizes, in fine units. */
  long misfit;

  /** What a fine unit of misfit costs, in squared grains. */
  double strictness;

  private final Model model;
  private final Slots slots;
  private final Prices prices;
  private final Columns columns;
  private final int[] courseOf;
  private final int[] lead;
  private final boolean[] reversed;
  private final int[] station;
  private final long[] base;
  private final long[] joint;
  private final LooseSizes sizes;
  private final long[] course;
  private final long[] rise;

  private final int[] putSlot = new int[2];
  private final int[] putOld = new int[2];
  private int puts;
  private final int[] touched = new int[2];
  private final long[] newCourse = new long[2];
  private int touches;
  private final int[] tried = new int[MOST_JOINTS];
  private final long[] newJoint = new long[MOST_JOINTS];
  private int tries;
  private long change;

  LooseState(Model model) {
    this.model = model;
    slots = model.slots;
    prices = new Prices(model);
    columns = new Columns(model);
    courseOf = slots.courseOf;
    lead = columns.lead;
    reversed = new boolean[slots.count];
    for (int s = 0; s < slots.count; s++) {
      reversed[s] = slots.round(courseOf[s]) % 2 == 1;
    }
    sizes = new LooseSizes(model);
    variant = new int[slots.count];
    slotOf = new int[model.logs];
    station = new int[3 * slots.count];
    base = new long[slots.count];
    joint = new long[slots.count];
    course = new long[slots.courses()];
    rise = new long[slots.courses()];
  }

  /** Takes a whole choice, with the sizes that its logs round to. */
  void set(int[] variants) {
    System.arraycopy(variants, 0, variant, 0, variants.length);
    Arrays.fill(slotOf, -1);
    sizes.set(variants);
    total = 0;
    misfit = 0;
    for (int s = 0; s < variants.length; s++) {
      slotOf[log(s)] = s;
      stand(s, variants[s]);
      base[s] = columns.above[s] < 0 ? 0 : base(s);
    }
    for (int s = 0; s < variants.length; s++) {
      joint[s] = columns.above[s] < 0 || lead[s] != s ? 0 : joint(s);
      total += joint[s] + model.costs[variants[s]];
    }
    for (int c = 0; c < course.length; c++) {
      course[c] = course(c);
      rise[c] = rise(c);
      total += course[c] + rise[c];
    }
  }

  /** Returns the log in a slot. */
  int log(int slot) {
    return model.variantLog[variant[slot]];
  }

  /** Puts a variant into a slot if that makes the choice worse by no more than a bound. */
  boolean put(int slot, int v, long bound) {
    begin();
    lay(slot, v);
    return settle(bound);
  }

  /** Puts variants into two slots if that makes the choice worse by no more than a bound. */
  boolean put(int slot, int v, int other, int w, long bound) {
    begin();
    lay(slot, v);
    lay(other, w);
    return settle(bound);
  }

  private void begin() {
    puts = 0;
    touches = 0;
    tries = 0;
    change = 0;
  }

  private void lay(int slot, int v) {
    int c = courseOf[slot];
    putSlot[puts] = slot;
    putOld[puts++] = variant[slot];
    change += model.costs[v] - model.costs[variant[slot]];
    replace(slot, v);
    if (touches == 0 || touched[0] != c) {
      touched[touches++] = c;
      change -= course[c];
    }
    if (columns.above[slot] >= 0) {
      touchJoint(lead[slot]);
    }
    if (columns.below[slot] >= 0) {
      touchJoint(lead[columns.below[slot]]);
    }
  }

  private void touchJoint(int s) {
    for (int i = 0; i < tries; i++) {
      if (tried[i] == s) {
        return;
      }
    }
    tried[tries++] = s;
    change -= joint[s];
  }

  private void replace(int slot, int v) {
    sizes.replace(courseOf[slot], model.fineMids[v] - model.fineMids[variant[slot]]);
    variant[slot] = v;
    stand(slot, v);
  }

  private boolean settle(long bound) {
    if (isWithin(bound)) {
      keep();
      return true;
    }
    for (int i = puts - 1; i >= 0; i--) {
      replace(putSlot[i], putOld[i]);
    }
    return false;
  }

  /** Adds up the change, from what is cheap to compute on, until it is sure to be too much. */
  private boolean isWithin(long bound) {
    long misfits = 0;
    for (int i = 0; i < touches; i++) {
      newCourse[i] = course(touched[i]);
      change += newCourse[i];
      misfits += sizes.misfitChange(touched[i]);
    }
    long left = bound - (long) (strictness * misfits);
    for (int i = 0; i < tries && change <= left; i++) {
      newJoint[i] = joint(tried[i]);
      change += newJoint[i];
    }
    return change <= left;
  }

  private void keep() {
    total += change;
    for (int i = 0; i < touches; i++) {
      course[touched[i]] = newCourse[i];
      misfit += sizes.keep(touched[i]);
    }
    for (int i = 0; i < tries; i++) {
      joint[tried[i]] = newJoint[i];
    }
    for (int i = 0; i < puts; i++) {
      slotOf[model.variantLog[putOld[i]]] = -1;
    }
    for (int i = 0; i < puts; i++) {
      slotOf[log(putSlot[i])] = putSlot[i];
    }
  }

  /** Moves the size of a course by one step if that is worse by no more than a bound. */
  boolean step(int c, int by, long bound) {
    if (!sizes.isFree(c, by)) {
      return false;
    }
    boolean below = c > 0 && slots.hasAbove(c - 1);
    int from = slots.courseSlot[below ? c - 1 : c];
    int to = slots.courseSlot[slots.hasAbove(c) ? c + 1 : c];
    long before = sum(c, below, from, to);
    sizes.step(c, by);
    long left = bound + before - (long) (strictness * sizes.misfitChange(c));
    rebase(from, to);
    if (stepped(c, below, from, to, left) > left) {
      sizes.step(c, -by);
      rebase(from, to);
      return false;
    }
    for (int s = from; s < to; s++) {
      joint[s] = lead[s] == s ? joint(s) : 0;
    }
    course[c] = course(c);
    rise[c] = rise(c);
    if (below) {
      rise[c - 1] = rise(c - 1);
    }
    misfit += sizes.keep(c);
    total += sum(c, below, from, to) - before;
    return true;
  }

  private long sum(int c, boolean below, int from, int to) {
    long sum = course[c] + rise[c] + (below ? rise[c - 1] : 0);
    for (int s = from; s < to; s++) {
      sum += joint[s];
    }
    return sum;
  }

  private long stepped(int c, boolean below, int from, int to, long most) {
    long sum = course(c) + rise(c) + (below ? rise(c - 1) : 0);
    for (int s = from; s < to && sum <= most; s++) {
      sum += lead[s] == s ? joint(s) : 0;
    }
    return sum;
  }

  private void rebase(int from, int to) {
    for (int s = from; s < to; s++) {
      base[s] = base(s);
    }
  }

  /** Returns the choice with every pair of like columns in the better of its matchings. */
  int[] straight() {
    for (int s = 0; s < variant.length; s++) {
      int mate = columns.mate[s];
      if (mate > s && columns.above[s] >= 0 && crossed(s, mate) < parallel(s, mate)) {
        cross(columns.above[s], columns.above[mate]);
      }
    }
    return variant.clone();
  }

  private void cross(int one, int other) {
    int t = other;
    for (int s = one; s >= 0; s = columns.above[s]) {
      int v = variant[s];
      variant[s] = variant[t];
      variant[t] = v;
      stand(s, variant[s]);
      stand(t, variant[t]);
      t = columns.above[t];
    }
  }

  private void stand(int slot, int v) {
    boolean turned = reversed[slot];
    station[3 * slot] = model.diameters[turned ? 3 * v + 2 : 3 * v];
    station[3 * slot + 1] = model.diameters[3 * v + 1];
    station[3 * slot + 2] = model.diameters[turned ? 3 * v : 3 * v + 2];
  }

  private long base(int s) {
    int c = courseOf[s];
    return model.slotFirst[s]
        ? 3 * sizes.size[c] + sizes.size[c + 1]
        : sizes.size[c] + 3 * sizes.size[c + 1];
  }

  private long joint(int s) {
    int mate = columns.mate[s];
    return mate < 0 ? joint(s, columns.above[s]) : Math.min(parallel(s, mate), crossed(s, mate));
  }

  private long parallel(int s, int mate) {
    return joint(s, columns.above[s]) + joint(mate, columns.above[mate]);
  }

  private long crossed(int s, int mate) {
    return joint(s, columns.above[mate]) + joint(mate, columns.above[s]);
  }

  private long joint(int s, int above) {
    int u = 3 * s;
    return joint(base[s], above, station[u], station[u + 1], station[u + 2]);
  }

  /** Returns the cost of a joint of the log in a slot with three diameters that meet its own. */
  private long joint(long base, int slot, int left, int mid, int right) {
    int t = 3 * slot;
    return prices.gap(base - left - station[t])
        + prices.gap(base - mid - station[t + 1])
        + prices.gap(base - right - station[t + 2]);
  }

  /** Returns the cut of a log that suits a slot best under and over the logs that lie there. */
  int bestCut(int log, int slot) {
    int first = model.firstVariant(log, slot);
    int best = first;
    long least = Long.MAX_VALUE;
    for (int v = first; v < first + model.variants(log, slot); v++) {
      long cost = cost(v, slot);
      if (cost < least) {
        least = cost;
        best = v;
      }
    }
    return best;
  }

  private long cost(int v, int slot) {
    int above = columns.above[slot];
    int below = columns.below[slot];
    int left = model.diameters[reversed[slot] ? 3 * v + 2 : 3 * v];
    int mid = model.diameters[3 * v + 1];
    int right = model.diameters[reversed[slot] ? 3 * v : 3 * v + 2];
    return model.costs[v]
        + (above < 0 ? 0 : joint(base[slot], above, left, mid, right))
        + (below < 0 ? 0 : joint(base[below], below, left, mid, right));
  }

  private long rise(int c) {
    return slots.hasAbove(c) ? prices.inversion(sizes.size[c], sizes.size[c + 1]) : 0;
  }

  private long course(int c) {
    int least = Integer.MAX_VALUE;
    int most = 0;
    long refused = 0;
    for (int s = slots.courseSlot[c]; s < slots.courseSlot[c + 1]; s++) {
      int mid = model.mids[variant[s]];
      least = Math.min(least, mid);
      most = Math.max(most, mid);
      refused += sizes.size[c] > model.largest[variant[s]] ? prices.refused : 0;
    }
    return prices.spread(most - least) + refused;
  }
}
