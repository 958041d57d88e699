package roundbook.balance;

import java.util.Arrays;
import java.util.stream.IntStream;

/** The sizes that each round of a task may have, and what sums of middle diameters make them. */
final class BoundSizes {
  private final Model model;
  private final long[][] sizes;
  private final long[][] least;
  private final long[][] most;
  private final double widest;

  /**
   * @param model the task, whose sizes go by steps
   * @param known the score of a choice that is known, in unit²; what costs more alone is left out
   */
  BoundSizes(Model model, double known) {
    this.model = model;
    Aims aims = model.task.aims();
    double excess = StrictMath.sqrt(known / aims.weights().spread()) * model.task.scale.unit();
    widest = aims.mostSpread() + excess + model.task.scale.tick();
    int courses = model.slots.courses();
    sizes = new long[courses][];
    least = new long[courses][];
    most = new long[courses][];
    for (int c = 0; c < courses; c++) {
      if (model.fixedSize[c] >= 0) {
        sizes[c] = new long[] {model.part(model.fixedSize[c])};
        least[c] = new long[] {Long.MIN_VALUE / 4};
        most[c] = new long[] {Long.MAX_VALUE / 4};
      } else {
        fill(c);
      }
    }
  }

  private void fill(int c) {
    Aims aims = model.task.aims();
    int from = model.slots.courseSlot[c];
    int count = model.slots.courseSlot[c + 1] - from;
    long low = 0;
    long high = 0;
    for (int slot = from; slot < from + count; slot++) {
      int[] variants = variants(model, slot);
      low += Arrays.stream(variants).mapToLong(v -> model.fineMids[v]).min().orElse(0);
      high += Arrays.stream(variants).mapToLong(v -> model.fineMids[v]).max().orElse(0);
    }
    long first = aims.size(low, count) / aims.sizeStep();
    int steps = (int) (aims.size(high, count) / aims.sizeStep() - first) + 1;
    sizes[c] = new long[steps];
    least[c] = new long[steps];
    most[c] = new long[steps];
    for (int k = 0; k < steps; k++) {
      sizes[c][k] = model.part((first + k) * aims.sizeStep());
      least[c][k] = aims.leastSum(first + k, count);
      most[c][k] = aims.leastSum(first + k + 1, count) - 1;
    }
  }

  /** Returns the cuts that may stand in a slot. */
  private static int[] variants(Model model, int slot) {
    return IntStream.range(0, model.logs)
        .filter(log -> model.fits(log, slot))
        .flatMap(
            log -> {
              int first = model.firstVariant(log, slot);
              return IntStream.range(first, first + model.variants(log, slot));
            })
        .toArray();
  }

  /** Returns how many sizes a round may have. */
  int count(int course) {
    return sizes[course].length;
  }

  /** Returns a size, in M-th parts of a tick. */
  long size(int course, int k) {
    return sizes[course][k];
  }

  /** Returns whether a sum of middle diameters makes a size. */
  boolean makes(int course, int k, long sum) {
    return sum >= least[course][k] && sum <= most[course][k];
  }

  /** Returns whether a round's size follows from its logs. */
  boolean isFree(int course) {
    return model.fixedSize[course] < 0;
  }

  /** Returns the least sum of middle diameters that makes a size, in units. */
  double least(int course, int k) {
    return (double) least[course][k] / model.task.scale.unit();
  }

  /** Returns the largest sum of middle diameters that makes a size, in units. */
  double most(int course, int k) {
    return (double) most[course][k] / model.task.scale.unit();
  }

  /**
   * Returns whether the mean middle diameter of some cuts can be that of part of a round of a size:
   * it is off that of the whole round by no more than the share of the others in its spread, and
   * that is off the size by half a step.
   */
  boolean isNear(int course, long size, int... variants) {
    if (!isFree(course)) {
      return true;
    }
    int sides = model.slots.courseSlot[course + 1] - model.slots.courseSlot[course];
    double sum = Arrays.stream(variants).mapToDouble(v -> model.fineMids[v]).sum();
    double mean = (double) size * model.task.scale.tick() / model.fold;
    double reach = widest * (sides - variants.length) / sides;
    double rounding = model.task.aims().sizeStep() / 2.0 + model.task.scale.tick();
    return Math.abs(sum / variants.length - mean) <= reach + rounding;
  }
}
