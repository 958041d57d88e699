package roundbook.balance;

/** The aims of a task in grains: what a gap, a course and a step up cost. */
final class Prices {
  /** How much the fourth power of an error of one unit weighs when the worst gap comes first. */
  private static final double QUARTIC = 4;

  /** Cost of one log in a round too large for it, in squared grains. */
  final long refused;

  private final long least;
  private final long leastWeight;
  private final long spread;
  private final long spreadWeight;
  private final long inversionWeight;
  private final double quartic;
  private final long grainsPerTick;

  Prices(Model model) {
    Aims aims = model.task.aims();
    double square = model.grains * model.grains;
    refused = (long) (aims.weights().refused() * square);
    least = model.grain(aims.leastGap()) - model.grain(aims.gap());
    leastWeight = aims.weights().least();
    spread = model.grain(aims.mostSpread());
    spreadWeight = aims.weights().spread();
    inversionWeight = aims.weights().inversion();
    quartic = aims.weights().worstFirst() ? QUARTIC / square : 0;
    grainsPerTick = 4L * model.fold;
  }

  /** Returns what a gap costs that is off by so much. */
  long gap(long error) {
    long square = error * error;
    long cost = square + leastGap(error);
    return quartic == 0 ? cost : cost + (long) (square * quartic * square);
  }

  /** Returns what a gap's shortfall from the least one costs. */
  long leastGap(long error) {
    long lack = least - error;
    return lack > 0 ? leastWeight * lack * lack : 0;
  }

  /** Returns what middle diameters cost that differ by so many ticks. */
  long spread(long ticks) {
    long excess = grainsPerTick * ticks - spread;
    return excess > 0 ? spreadWeight * excess * excess : 0;
  }

  /** Returns the ticks by which middle diameters may differ at no cost. */
  int freeSpread() {
    return (int) (spread / grainsPerTick);
  }

  /**
   * Returns what a round costs that is larger than the one below, sizes in M-th parts of a tick.
   */
  long inversion(long below, long above) {
    long step = 4 * (above - below);
    return step > 0 ? inversionWeight * step * step : 0;
  }
}
