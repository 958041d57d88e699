package roundbook.balance;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import roundbook.balance.BalanceTask.RingPlace;

/**
 * A task laid out in flat arrays of integers for the search.
 *
 * <p>Every gap error is held in grains of {@code 1/(4 M)} tick, where M is 1 with rounded sizes and
 * otherwise the least common multiple of the buildings' numbers of sides: then sizes, gaps and
 * squares are exact, and the order of summing does not matter. A <em>variant</em> is one cut of one
 * log for one length class.
 */
final class Model {
  final BalanceTask task;
  final Slots slots;
  final Kinds kinds;
  final int logs;
  final int classes;

  /** M: grains are a quarter of the M-th part of a tick. */
  final int fold;

  /** Grains in the unit of the score. */
  final double grains;

  /** Length class of each slot. */
  final int[] slotClass;

  /** Whether each slot is on a first-laid side. */
  final boolean[] slotFirst;

  /** Log that each slot is pinned to, or -1. */
  final int[] slotPin;

  /** Slot that each log is pinned to, or -1. */
  final int[] logPin;

  /** Size each course is bound to in fine units, or -1. */
  final long[] fixedSize;

  /** First variant of class c and log l at index {@code c × logs + l}; ends with the next. */
  final int[] first;

  /** First variant of each class; one more entry than there are classes. */
  final int[] classFrom;

  /** Log of each variant. */
  final int[] variantLog;

  /** Diameters of each variant in 2 M-th parts of a tick: butt, mid, tip. */
  final int[] diameters;

  /** Middle diameter of each variant in ticks. */
  final int[] mids;

  /** Middle diameter of each variant in fine units. */
  final long[] fineMids;

  /** Cost of each variant in squared grains. */
  final long[] costs;

  /** Largest size each variant may stand in, in M-th parts of a tick. */
  final long[] largest;

  /** Whether some variant has a largest size. */
  final boolean refuses;

  /** Whether sizes are exact means. */
  final boolean exact;

  Model(BalanceTask task) {
    this.task = task;
    slots = new Slots(task);
    kinds = new Kinds(task, slots);
    logs = task.logs();
    classes = task.lengthClasses();
    exact = task.aims().sizeStep() == 0;
    fold = exact ? commonSides(task) : 1;
    grains = 4.0 * fold * task.scale.unit() / task.scale.tick();
    slotClass = new int[slots.count];
    slotFirst = new boolean[slots.count];
    for (int s = 0; s < slots.count; s++) {
      int building = slots.buildingOf[slots.courseOf[s]];
      slotClass[s] = task.lengthClass(building, slots.side(s));
      slotFirst[s] = task.laidFirst(building, slots.side(s));
    }
    slotPin = new int[slots.count];
    logPin = new int[logs];
    pins();
    fixedSize = new long[slots.courses()];
    for (int c = 0; c < fixedSize.length; c++) {
      fixedSize[c] = task.fixedSize(slots.buildingOf[c], slots.round(c)).orElse(-1L);
    }
    first = new int[logs * classes + 1];
    for (int i = 0; i < logs * classes; i++) {
      first[i + 1] = first[i] + task.cuts(i % logs, i / logs).size();
    }
    classFrom = IntStream.rangeClosed(0, classes).map(c -> first[c * logs]).toArray();
    int variants = first[logs * classes];
    variantLog = new int[variants];
    diameters = new int[3 * variants];
    mids = new int[variants];
    fineMids = new long[variants];
    costs = new long[variants];
    largest = new long[variants];
    for (int i = 0; i < logs * classes; i++) {
      fill(first[i], i % logs, task.cuts(i % logs, i / logs));
    }
    refuses = Arrays.stream(largest).anyMatch(size -> size < Long.MAX_VALUE);
  }

  private static int commonSides(BalanceTask task) {
    int common = 1;
    for (int b = 0; b < task.buildings(); b++) {
      int sides = task.sides(b);
      int rest = common;
      for (int divisor = sides; divisor != 0; ) {
        int next = rest % divisor;
        rest = divisor;
        divisor = next;
      }
      common = common / rest * sides;
    }
    return common;
  }

  private void pins() {
    Arrays.fill(slotPin, -1);
    for (int log = 0; log < logs; log++) {
      logPin[log] = -1;
    }
    task.pins().forEach(this::pin);
  }

  private void pin(RingPlace place, int log) {
    slotPin[slots.of(place)] = log;
    logPin[log] = slots.of(place);
  }

  private void fill(int from, int log, List<Cut> cuts) {
    for (int i = 0; i < cuts.size(); i++) {
      Cut cut = cuts.get(i);
      int variant = from + i;
      variantLog[variant] = log;
      mids[variant] = ticks(cut.mid());
      fineMids[variant] = cut.mid();
      diameters[3 * variant] = 2 * fold * ticks(cut.butt());
      diameters[3 * variant + 1] = 2 * fold * mids[variant];
      diameters[3 * variant + 2] = 2 * fold * ticks(cut.tip());
      costs[variant] = Math.round(cut.cost() * grains * grains);
      largest[variant] =
          cut.largestSize() == Long.MAX_VALUE ? Long.MAX_VALUE : part(cut.largestSize());
    }
  }

  private int ticks(long fine) {
    return Math.toIntExact(Math.floorDiv(2 * fine + task.scale.tick(), 2 * task.scale.tick()));
  }

  /** Returns a length in M-th parts of a tick, to the nearest. */
  long part(long fine) {
    long tick = task.scale.tick();
    return Math.floorDiv(2 * fold * fine + tick, 2 * tick);
  }

  /** Returns a length in grains, to the nearest. */
  long grain(long fine) {
    return 4 * part(fine);
  }

  /** Returns a squared number of grains in unit². */
  double area(long squaredGrains) {
    return squaredGrains / (grains * grains);
  }

  /** Returns how many slots are not pinned to a log. */
  int freeSlots() {
    return (int) Arrays.stream(slotPin).filter(log -> log < 0).count();
  }

  /** Returns the first variant of a log in a slot. */
  int firstVariant(int log, int slot) {
    return first[slotClass[slot] * logs + log];
  }

  /** Returns how many variants a log has in a slot; none when it is too short. */
  int variants(int log, int slot) {
    int i = slotClass[slot] * logs + log;
    return first[i + 1] - first[i];
  }

  /** Returns how many variants a length class has at most. */
  int mostVariants() {
    return IntStream.range(0, classes).map(c -> classFrom[c + 1] - classFrom[c]).max().orElse(0);
  }

  /** Returns whether a log may stand in a slot, all hard rules told but for its tip. */
  boolean fits(int log, int slot) {
    if (slotPin[slot] >= 0) {
      return slotPin[slot] == log;
    }
    return logPin[log] == -1
        && variants(log, slot) > 0
        && kinds.allowed[kinds.ofLog[log]][kinds.ofSlot[slot]];
  }
}
