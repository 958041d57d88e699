package roundbook.balance;

import java.util.Arrays;

/**
 * A complete choice with its score, changed by trial: put variants, look at the change, then keep
 * or undo it.
 *
 * <p>The cost of every joint and course is kept, so a trial computes only those it touches: while a
 * round's size stays, the joints above and below each log put; else all joints of the round.
 */
final class State {
  private static final int MOST = 64;

  final Model model;

  /** Variant in each slot. */
  final int[] variant;

  /** Slot of each log, or -1. */
  final int[] slotOf;

  /** The score in squared grains. */
  long total;

  /** Size of each course in M-th parts of a tick. */
  final long[] size;

  private final Prices prices;
  private final int[] courseSlot;
  private final int[] courseOf;
  private final boolean[] hasAbove;
  private final boolean[] reversed;

  /**
   * M over the number of sides of each course: what a sum of middles counts as in an exact mean.
   */
  private final long[] share;

  private final int[] station;
  private final long[] sum;
  private final long[] fineSum;
  private final long[] from;
  private final long[] to;
  private final long[] joint;
  private final long[] course;
  private final long[] rise;

  private final int[] putSlot = new int[MOST];
  private final int[] putOld = new int[MOST];
  private int puts;
  private final int[] touched = new int[MOST];
  private final boolean[] resized = new boolean[MOST];
  private final long[] newCourse = new long[MOST];
  private final long[] oldSize = new long[MOST];
  private final long[] oldFrom = new long[MOST];
  private final long[] oldTo = new long[MOST];
  private int touches;
  private int[] newJointAt = new int[MOST];
  private long[] newJoint = new long[MOST];
  private int joints;
  private final int[] newRiseAt = new int[2 * MOST];
  private final long[] newRise = new long[2 * MOST];
  private int rises;
  private final int[] courseMark;
  private final int[] jointMark;
  private final int[] riseMark;
  private int mark;
  private long change;

  State(Model model) {
    this.model = model;
    prices = new Prices(model);
    Slots slots = model.slots;
    courseSlot = slots.courseSlot;
    courseOf = slots.courseOf;
    int courses = slots.courses();
    hasAbove = new boolean[courses];
    reversed = new boolean[courses];
    share = new long[courses];
    for (int c = 0; c < courses; c++) {
      hasAbove[c] = slots.hasAbove(c);
      reversed[c] = slots.round(c) % 2 == 1;
      share[c] = model.fold / slots.sides(c);
    }
    variant = new int[slots.count];
    slotOf = new int[model.logs];
    station = new int[3 * slots.count];
    joint = new long[slots.count];
    jointMark = new int[slots.count];
    sum = new long[courses];
    fineSum = new long[courses];
    size = new long[courses];
    from = new long[courses];
    to = new long[courses];
    course = new long[courses];
    rise = new long[courses];
    courseMark = new int[courses];
    riseMark = new int[courses];
  }

  /** Takes a whole choice: a variant for every slot. */
  void set(int[] variants) {
    System.arraycopy(variants, 0, variant, 0, variants.length);
    Arrays.fill(slotOf, -1);
    Arrays.fill(sum, 0);
    Arrays.fill(fineSum, 0);
    for (int s = 0; s < variant.length; s++) {
      slotOf[model.variantLog[variant[s]]] = s;
      stand(s, variant[s]);
      sum[courseOf[s]] += model.mids[variant[s]];
      fineSum[courseOf[s]] += model.fineMids[variant[s]];
    }
    for (int c = 0; c < size.length; c++) {
      resize(c);
    }
    total = 0;
    for (int s = 0; s < variant.length; s++) {
      joint[s] = hasAbove[courseOf[s]] ? jointCost(s) : 0;
      total += joint[s] + model.costs[variant[s]];
    }
    for (int c = 0; c < size.length; c++) {
      course[c] = courseCost(c);
      rise[c] = hasAbove[c] ? prices.inversion(size[c], size[c + 1]) : 0;
      total += course[c] + rise[c];
    }
  }

  /** Returns the log in a slot. */
  int logAt(int slot) {
    return model.variantLog[variant[slot]];
  }

  /** Puts a variant into a slot, on trial. */
  void put(int slot, int v) {
    int c = courseOf[slot];
    if (puts == 0) {
      mark++;
    }
    if (courseMark[c] != mark) {
      courseMark[c] = mark;
      touched[touches++] = c;
    }
    putSlot[puts] = slot;
    putOld[puts++] = variant[slot];
    change += model.costs[v] - model.costs[variant[slot]];
    replace(slot, v);
  }

  /** Returns by how much the score changes through what was put since the last keep or undo. */
  long trial() {
    return trial(Long.MAX_VALUE);
  }

  /**
   * Returns by how much the score changes through what was put since the last keep or undo; where
   * that is more than a bound, some number that is too. Such a change may not be kept.
   */
  long trial(long most) {
    for (int i = 0; i < touches; i++) {
      int c = touched[i];
      oldSize[i] = size[c];
      oldFrom[i] = from[c];
      oldTo[i] = to[c];
      resized[i] = (model.exact || fineSum[c] < from[c] || fineSum[c] >= to[c]) && resize(c);
    }
    for (int i = 0; i < puts; i++) {
      touchJoint(putSlot[i]);
      int c = courseOf[putSlot[i]];
      if (c > 0 && hasAbove[c - 1]) {
        touchJoint(putSlot[i] - model.slots.sides(c));
      }
    }
    for (int i = 0; i < touches; i++) {
      int c = touched[i];
      newCourse[i] = courseCost(c);
      change += newCourse[i] - course[c];
      if (resized[i]) {
        retryCourse(c);
      }
    }
    for (int i = 0; i < joints && change <= most; i++) {
      newJoint[i] = jointCost(newJointAt[i]);
      change += newJoint[i];
    }
    return change;
  }

  /** Keeps what was put. */
  void keep() {
    total += change;
    for (int i = 0; i < touches; i++) {
      course[touched[i]] = newCourse[i];
    }
    for (int i = 0; i < joints; i++) {
      joint[newJointAt[i]] = newJoint[i];
    }
    for (int i = 0; i < rises; i++) {
      rise[newRiseAt[i]] = newRise[i];
    }
    for (int i = 0; i < puts; i++) {
      int log = model.variantLog[putOld[i]];
      if (slotOf[log] == putSlot[i]) {
        slotOf[log] = -1;
      }
    }
    for (int i = 0; i < puts; i++) {
      slotOf[logAt(putSlot[i])] = putSlot[i];
    }
    clear();
  }

  /** Undoes what was put. */
  void undo() {
    for (int i = puts - 1; i >= 0; i--) {
      replace(putSlot[i], putOld[i]);
    }
    for (int i = 0; i < touches; i++) {
      size[touched[i]] = oldSize[i];
      from[touched[i]] = oldFrom[i];
      to[touched[i]] = oldTo[i];
    }
    clear();
  }

  private void clear() {
    puts = 0;
    touches = 0;
    joints = 0;
    rises = 0;
    change = 0;
  }

  private void replace(int slot, int v) {
    int c = courseOf[slot];
    int old = variant[slot];
    variant[slot] = v;
    sum[c] += model.mids[v] - model.mids[old];
    fineSum[c] += model.fineMids[v] - model.fineMids[old];
    stand(slot, v);
  }

  private void stand(int slot, int v) {
    boolean turned = reversed[courseOf[slot]];
    station[3 * slot] = model.diameters[turned ? 3 * v + 2 : 3 * v];
    station[3 * slot + 1] = model.diameters[3 * v + 1];
    station[3 * slot + 2] = model.diameters[turned ? 3 * v : 3 * v + 2];
  }

  private boolean resize(int c) {
    long before = size[c];
    int count = model.slots.sides(c);
    if (model.fixedSize[c] >= 0) {
      size[c] = model.part(model.fixedSize[c]);
      from[c] = Long.MIN_VALUE;
      to[c] = Long.MAX_VALUE;
    } else if (model.exact) {
      size[c] = share[c] * sum[c];
    } else {
      Aims aims = model.task.aims();
      long steps = aims.size(fineSum[c], count) / aims.sizeStep();
      size[c] = model.part(steps * aims.sizeStep());
      from[c] = aims.leastSum(steps, count);
      to[c] = aims.leastSum(steps + 1, count);
    }
    return size[c] != before;
  }

  private void retryCourse(int c) {
    for (int s = courseSlot[c]; s < courseSlot[c + 1]; s++) {
      touchJoint(s);
    }
    retryRise(c);
    if (c > 0 && hasAbove[c - 1]) {
      for (int s = courseSlot[c - 1]; s < courseSlot[c]; s++) {
        touchJoint(s);
      }
      retryRise(c - 1);
    }
  }

  private void retryRise(int c) {
    if (hasAbove[c] && riseMark[c] != mark) {
      riseMark[c] = mark;
      newRiseAt[rises] = c;
      newRise[rises] = prices.inversion(size[c], size[c + 1]);
      change += newRise[rises++] - rise[c];
    }
  }

  /** Takes a joint's cost out of the change; what it costs now is added last, while that pays. */
  private void touchJoint(int s) {
    if (jointMark[s] == mark || !hasAbove[courseOf[s]]) {
      return;
    }
    jointMark[s] = mark;
    if (joints == newJoint.length) {
      newJoint = Arrays.copyOf(newJoint, 2 * joints);
      newJointAt = Arrays.copyOf(newJointAt, 2 * joints);
    }
    newJointAt[joints++] = s;
    change -= joint[s];
  }

  /** Returns the error of the gap above a slot at a station. */
  long error(int s, int k) {
    int c = courseOf[s];
    int t = s + courseSlot[c + 1] - courseSlot[c];
    return base(s, c) - (station[3 * s + k] + station[3 * t + k]);
  }

  private long base(int s, int c) {
    return model.slotFirst[s] ? 3 * size[c] + size[c + 1] : size[c] + 3 * size[c + 1];
  }

  private long jointCost(int s) {
    int c = courseOf[s];
    int t = 3 * (s + courseSlot[c + 1] - courseSlot[c]);
    int u = 3 * s;
    long base = base(s, c);
    return prices.gap(base - (station[u] + station[t]))
        + prices.gap(base - (station[u + 1] + station[t + 1]))
        + prices.gap(base - (station[u + 2] + station[t + 2]));
  }

  private long courseCost(int c) {
    long cost = prices.spread(spread(c));
    return model.refuses ? cost + refusedCost(c) : cost;
  }

  /** Returns by how many ticks the middle diameters of a course differ at most. */
  long spread(int c) {
    int least = Integer.MAX_VALUE;
    int most = 0;
    for (int s = courseSlot[c]; s < courseSlot[c + 1]; s++) {
      int mid = model.mids[variant[s]];
      least = Math.min(least, mid);
      most = Math.max(most, mid);
    }
    return most - least;
  }

  private long refusedCost(int c) {
    long cost = 0;
    for (int s = courseSlot[c]; s < courseSlot[c + 1]; s++) {
      cost += size[c] > model.largest[variant[s]] ? prices.refused : 0;
    }
    return cost;
  }
}
