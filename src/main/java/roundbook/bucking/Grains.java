package roundbook.bucking;

import roundbook.balance.Aims;

/** What gaps, rounds and skipped wood cost, in squared quarter ticks. */
final class Grains {
  private static final int PARTS = 4;

  private final Aims aims;
  private final double square;
  private final long gap;
  private final long lack;
  private final long mostSpread;

  /** What a step of skipped wood costs. */
  final long waste;

  Grains(BuckingTask task) {
    aims = task.aims();
    square = (double) PARTS * task.unit() * PARTS * task.unit();
    gap = PARTS * aims.gap();
    lack = PARTS * (aims.leastGap() - aims.gap());
    mostSpread = aims.mostSpread();
    waste = Math.round(task.wastePrice() * square);
  }

  /** Returns a number of grains as unit². */
  double units(long grains) {
    return grains / square;
  }

  /** Returns unit² as grains. */
  double grains(double units) {
    return units * square;
  }

  /**
   * Returns what a gap costs.
   *
   * @param spacing four times the spacing of the centre lines without the gap wanted
   * @param thick the two diameters there added up
   */
  long gap(long spacing, long thick) {
    long error = spacing - 2 * thick;
    long cost = error * error;
    long missing = lack - error;
    return missing > 0 ? cost + aims.weights().least() * missing * missing : cost;
  }

  /** Returns a gap, its size in ticks, of its spacing and its diameters. */
  double gapTicks(long spacing, long thick) {
    return (spacing - 2 * thick + gap) / (double) PARTS;
  }

  /** Returns whether a gap of its spacing and its diameters lies outside two limits, in ticks. */
  boolean isOutside(long spacing, long thick, Parting limits) {
    long found = spacing - 2 * thick + gap;
    return found < PARTS * limits.least() || found > PARTS * limits.most();
  }

  /** Returns what middle diameters cost that differ by so many ticks. */
  long spread(long ticks) {
    long excess = PARTS * (ticks - mostSpread);
    return excess > 0 ? aims.weights().spread() * excess * excess : 0;
  }

  /** Returns what a round costs that is larger than the one below. */
  long inversion(long below, long above) {
    long step = PARTS * (above - below);
    return step > 0 ? aims.weights().inversion() * step * step : 0;
  }

  /** Returns the size of a round of a sum of middle diameters. */
  long size(long sum, int count) {
    return aims.size(sum, count);
  }
}
