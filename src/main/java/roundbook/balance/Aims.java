package roundbook.balance;

/**
 * What makes one plan better than another, as one number.
 *
 * <p>The score F, in unit² and lower the better, adds up
 *
 * <ul>
 *   <li>over every joint and its three stations (both ends and the middle) {@code (gap - wanted
 *       gap)²},
 *   <li>{@code leastWeight × (least gap - gap)²} where a gap falls short of the least one,
 *   <li>over every round {@code spreadWeight × (spread - most spread)²} where its middle diameters
 *       differ by more,
 *   <li>{@code inversionWeight × (D above - D)²} where a round is larger than the one below,
 *   <li>and the cost of every cut.
 * </ul>
 *
 * <p>The gap at a station is {@code (3 D + D₊)/4 + g - (d + d₊)/2} on a first-laid side and {@code
 * (D + 3 D₊)/4 + g - (d + d₊)/2} on a second-laid one, with D and D₊ the sizes of a round and the
 * round above it as the crew uses them, rounded to the size step. Butts strictly alternate, so the
 * butt end of one log always meets the tip end of its neighbour.
 *
 * @param gap wanted gap g
 * @param leastGap least gap that is no fault
 * @param mostSpread spread of middle diameters in one round that is no fault
 * @param sizeStep step that a round's size is rounded to, ties up: {@code floor(round(mean / step,
 *     6) + 1/2) × step}; zero keeps the exact mean
 * @param weights the weights of the faults
 */
public record Aims(long gap, long leastGap, long mostSpread, long sizeStep, Weights weights) {
  /** Checks that nothing is below zero. */
  public Aims {
    if (Math.min(Math.min(gap, mostSpread), sizeStep) < 0 || leastGap > gap) {
      throw new IllegalArgumentException("gap, spread and step must not be below zero");
    }
  }

  /**
   * How much each fault weighs against an uneven gap of the same size.
   *
   * @param least weight of a gap's shortfall
   * @param spread weight of a round's excess spread
   * @param inversion weight of a larger round above a smaller one
   * @param worstFirst whether the search also weighs the fourth power of each gap's error, which
   *     trades a little evenness for a smaller worst gap
   * @param refused what a log costs in a round that is too large for it, in unit²; it is not part
   *     of the score, by which plans are told
   */
  public record Weights(int least, int spread, int inversion, boolean worstFirst, double refused) {
    /** The cost of a log that may not lie in a round: more than any plan's gaps come to. */
    private static final double NEVER = 1_000;

    /** The usual weights: 20, 20 and 10, without the fourth power. */
    public static final Weights USUAL = new Weights(20, 20, 10, false);

    /** Checks that no weight is below zero. */
    public Weights {
      if (least < 0 || spread < 0 || inversion < 0 || refused < 0) {
        throw new IllegalArgumentException("weights must not be below zero");
      }
    }

    /** Weights under which no log lies in a round too large for it while another may. */
    public Weights(int least, int spread, int inversion, boolean worstFirst) {
      this(least, spread, inversion, worstFirst, NEVER);
    }

    /** Returns these weights with a price for logs in rounds too large for them. */
    public Weights refusing(double price) {
      return new Weights(least, spread, inversion, worstFirst, price);
    }
  }

  /**
   * Returns the usual aims of the trade (common practice): gap one inch, at least half of it, mids
   * of a round within one inch, sizes to the half inch.
   *
   * @param inch one inch in the task's fine unit
   */
  public static Aims usual(long inch) {
    return new Aims(inch, inch / 2, inch, inch / 2, Weights.USUAL);
  }

  /** Returns these aims with another size step; zero plans with the exact mean. */
  public Aims withSizeStep(long step) {
    return new Aims(gap, leastGap, mostSpread, step, weights);
  }

  /** Returns these aims without the fourth power of errors. */
  Aims plain() {
    Weights even = new Weights(weights.least, weights.spread, weights.inversion, false);
    return new Aims(gap, leastGap, mostSpread, sizeStep, even.refusing(weights.refused));
  }

  /**
   * Returns the size of a round of a sum of middle diameters: their mean, rounded to the step.
   *
   * <p>The quotient is rounded to six decimals before the half is added, so that a value
   * interpolated to the nearest fine unit falls on a tie where the exact one does.
   *
   * @param sum sum of the middle diameters
   * @param count how many there are
   */
  public long size(long sum, int count) {
    if (sizeStep == 0) {
      return Math.floorDiv(2 * sum + count, 2L * count);
    }
    return steps(sum, count) * sizeStep;
  }

  private long steps(long sum, int count) {
    long whole = sizeStep * count;
    return Math.floorDiv(2_000_000 * sum + 1_000_001 * whole, 2_000_000 * whole);
  }

  /** Returns the least sum of middle diameters whose size is this many steps. */
  long leastSum(long steps, int count) {
    return -Math.floorDiv(-(2_000_000 * steps - 1_000_001) * sizeStep * count, 2_000_000L);
  }
}
