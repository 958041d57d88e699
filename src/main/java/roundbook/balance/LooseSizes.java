package roundbook.balance;

import java.util.Arrays;

/** The sizes of courses as choices of their own, and by how much the logs laid misfit them. */
final class LooseSizes {
  /** Size of each course in M-th parts of a tick. */
  final long[] size;

  private final Model model;
  private final Aims aims;
  private final long[] steps;
  private final long[] sum;
  private final long[] from;
  private final long[] to;
  private final long[] misfit;

  LooseSizes(Model model) {
    this.model = model;
    aims = model.task.aims();
    int courses = model.slots.courses();
    size = new long[courses];
    steps = new long[courses];
    sum = new long[courses];
    from = new long[courses];
    to = new long[courses];
    misfit = new long[courses];
  }

  /** Sums up a choice and rounds every size from it. */
  void set(int[] variants) {
    Arrays.fill(sum, 0);
    for (int s = 0; s < variants.length; s++) {
      sum[model.slots.courseOf[s]] += model.fineMids[variants[s]];
    }
    for (int c = 0; c < size.length; c++) {
      steps[c] = aims.size(sum[c], model.slots.sides(c)) / aims.sizeStep();
      resize(c);
      misfit[c] = 0;
    }
  }

  /** Changes the sum of middle diameters of a course. */
  void replace(int c, long by) {
    sum[c] += by;
  }

  /** Returns whether the size of a course may move by so many steps. */
  boolean isFree(int c, int by) {
    return model.fixedSize[c] < 0 && steps[c] + by > 0;
  }

  /** Moves the size of a course. */
  void step(int c, int by) {
    steps[c] += by;
    resize(c);
  }

  private void resize(int c) {
    if (model.fixedSize[c] >= 0) {
      size[c] = model.part(model.fixedSize[c]);
      from[c] = Long.MIN_VALUE;
      to[c] = Long.MAX_VALUE;
    } else {
      size[c] = model.part(steps[c] * aims.sizeStep());
      from[c] = aims.leastSum(steps[c], model.slots.sides(c));
      to[c] = aims.leastSum(steps[c] + 1, model.slots.sides(c));
    }
  }

  /** Returns by how much the sum of a course missed its size when it was last kept. */
  long misfit(int c) {
    return misfit[c];
  }

  private long misfit(int c, long of) {
    if (of < from[c]) {
      return from[c] - of;
    }
    return of >= to[c] ? of - to[c] + 1 : 0;
  }

  /** Returns by how much the misfit of a course grows where its sum does, from what was kept. */
  long misfitChange(int c, long by) {
    return misfit(c, sum[c] + by) - misfit[c];
  }

  /** Keeps the misfit of a course; returns by how much it has grown. */
  long keep(int c) {
    long change = misfitChange(c, 0);
    misfit[c] += change;
    return change;
  }
}
