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
 * <p>Costs are those of {@link JointTables}: what a variant would cost in a slot is a few look-ups,
 * and an exchange of logs that have no joint in common is the sum of two such costs.
 */
final class LooseState {
  /** Variant in each slot. */
  final int[] variant;

  /** Slot of each log, or -1. */
  final int[] slotOf;

  /** The score without misfits. */
  long total;

  /** Sum of all misfits: by how much sums of middle diameters miss their sizes, in fine units. */
  long misfit;

  private final Model model;
  private final int[] courseOf;
  private final int[] courseSlot;
  private final int[] own;
  private final int refused;
  private final LooseSizes sizes;
  private final LooseJoints joints;
  private final LooseCourses courses;

  LooseState(Model model) {
    this.model = model;
    courseOf = model.slots.courseOf;
    courseSlot = model.slots.courseSlot;
    variant = new int[model.slots.count];
    slotOf = new int[model.logs];
    JointTables tables = new JointTables(model);
    own = tables.own();
    refused = tables.refused();
    sizes = new LooseSizes(model);
    joints = new LooseJoints(model, tables, variant);
    courses = new LooseCourses(model, tables, sizes, variant);
  }

  /** Takes a whole choice, with the sizes that its logs round to. */
  void set(int[] variants) {
    System.arraycopy(variants, 0, variant, 0, variants.length);
    Arrays.fill(slotOf, -1);
    sizes.set(variants);
    total = joints.set(sizes.size) + courses.set();
    misfit = 0;
    for (int s = 0; s < variants.length; s++) {
      slotOf[log(s)] = s;
      total += own(s, variants[s]);
    }
  }

  /** Sets what a fine unit of misfit costs. */
  void strictness(double price) {
    courses.strictness(price);
  }

  /** Returns the log in a slot. */
  int log(int slot) {
    return model.variantLog[variant[slot]];
  }

  /** Returns whether slots are those of like columns, which may exchange logs without effect. */
  boolean isMate(int s, int t) {
    return joints.isMate(s, t);
  }

  private int own(int s, int v) {
    boolean refuses = model.refuses && sizes.size[courseOf[s]] > model.largest[v];
    return refuses ? own[v] + refused : own[v];
  }

  /** Returns what a variant would cost in a slot, the logs around it staying. */
  private int cost(int s, int v) {
    return joints.cost(s, v) + own(s, v);
  }

  private int cost(int s) {
    return joints.cost(s) + own(s, variant[s]);
  }

  /** Returns the cut of a log that suits a slot best beside, under and over the logs there. */
  int bestCut(int log, int slot) {
    int first = model.firstVariant(log, slot);
    int best = first;
    int least = Integer.MAX_VALUE;
    for (int v = first; v < first + model.variants(log, slot); v++) {
      int cost = cost(slot, v);
      if (cost < least) {
        least = cost;
        best = v;
      }
    }
    return best;
  }

  /** Puts a variant into a slot if that makes the choice worse by no more than a bound. */
  boolean put(int s, int v, long bound) {
    long change = cost(s, v) - cost(s);
    if (change - courses.credit(s) > bound) {
      return false;
    }
    change += courses.spreadChange(s, v);
    if (change + courses.price(sizes.misfitChange(courseOf[s], more(s, v))) > bound) {
      return false;
    }
    total += change;
    lay(s, v);
    joints.laid(s);
    misfit += courses.keep(courseOf[s]);
    return true;
  }

  /**
   * Returns whether a variant in one slot may make the choice worse by no more than a bound, once
   * its log's slot has another: not if it costs more by itself than both slots do.
   */
  boolean mayPay(int s, int v, int t, long bound) {
    return joints.isNear(s, t) || cost(s, v) - cost(s) - cost(t) <= bound + credit(s, t);
  }

  private long credit(int s, int t) {
    return courses.credit(s) + (courseOf[s] == courseOf[t] ? 0 : courses.credit(t));
  }

  /** Puts variants into two slots if that makes the choice worse by no more than a bound. */
  boolean put(int s, int v, int t, int w, long bound) {
    int c = courseOf[s];
    int e = courseOf[t];
    long change = joints.isNear(s, t) ? changeNear(s, v, t, w) : changeApart(s, v, t, w);
    if (change > bound + credit(s, t)) {
      return false;
    }
    long misfits;
    if (c == e) {
      change += courses.spreadChange(s, v, t, w);
      misfits = sizes.misfitChange(c, more(s, v) + more(t, w));
    } else {
      change += courses.spreadChange(s, v) + courses.spreadChange(t, w);
      misfits = sizes.misfitChange(c, more(s, v)) + sizes.misfitChange(e, more(t, w));
    }
    if (change + courses.price(misfits) > bound) {
      return false;
    }
    total += change;
    lay(t, w);
    lay(s, v);
    joints.laid(s);
    joints.laid(t);
    misfit += courses.keep(c) + (c == e ? 0 : courses.keep(e));
    return true;
  }

  private long changeNear(int s, int v, int t, int w) {
    int before = own(s, variant[s]) + own(t, variant[t]);
    return joints.change(s, v, t, w) + own(s, v) + own(t, w) - before;
  }

  private long changeApart(int s, int v, int t, int w) {
    return cost(s, v) + cost(t, w) - cost(s) - cost(t);
  }

  /** Returns by how much the sum of middle diameters grows with a variant in a slot. */
  private long more(int s, int v) {
    return model.fineMids[v] - model.fineMids[variant[s]];
  }

  private void lay(int s, int v) {
    if (slotOf[log(s)] == s) {
      slotOf[log(s)] = -1;
    }
    sizes.replace(courseOf[s], more(s, v));
    variant[s] = v;
    slotOf[log(s)] = s;
  }

  /** Moves the size of a course by one step if that is worse by no more than a bound. */
  boolean step(int c, int by, long bound) {
    if (!sizes.isFree(c, by)) {
      return false;
    }
    boolean below = c > 0 && model.slots.hasAbove(c - 1);
    long before = sizes.size[c];
    sizes.step(c, by);
    long change = courses.riseChange(c) + (below ? courses.riseChange(c - 1) : 0);
    change += model.refuses ? refusedChange(c, before) : 0;
    long left = bound - courses.price(sizes.misfitChange(c, 0));
    change += change <= left && below ? joints.moved(c - 1, by, 3 * by) : 0;
    change += change <= left ? joints.moved(c, 3 * by, by) : 0;
    if (change > left) {
      sizes.step(c, -by);
      return false;
    }
    total += change;
    keepStep(c, by, below);
    return true;
  }

  private long refusedChange(int c, long before) {
    long change = 0;
    for (int s = courseSlot[c]; s < courseSlot[c + 1]; s++) {
      long largest = model.largest[variant[s]];
      change += (sizes.size[c] > largest ? refused : 0) - (before > largest ? refused : 0);
    }
    return change;
  }

  private void keepStep(int c, int by, boolean below) {
    if (below) {
      joints.move(c - 1, by, 3 * by);
      courses.keepRise(c - 1);
    }
    joints.move(c, 3 * by, by);
    courses.keepRise(c);
    int to = courseSlot[model.slots.hasAbove(c) ? c + 2 : c + 1];
    for (int s = courseSlot[below ? c - 1 : c]; s < to; s++) {
      joints.link(s);
    }
    misfit += courses.keep(c);
  }

  /** Returns the choice with every pair of like columns in the better of its matchings. */
  int[] straight() {
    joints.straighten();
    return variant.clone();
  }
}
