package roundbook.balance;

/**
 * One way to trim a log to one length class, with its diameters.
 *
 * <p>Diameters are those of the trimmed log in the task's fine unit (nanometres, say). Where the
 * excess of a long log comes off is a choice, so a log may have several cuts for one length class.
 *
 * @param butt diameter at the trimmed butt end
 * @param mid diameter at the middle of the trimmed log; the round's size is the mean of these
 * @param tip diameter at the trimmed tip end
 * @param offcut length cut off beyond the allowance, for the report
 * @param cost what this cut costs in the score besides its diameters, in unit² (waste, a long log
 *     spent on a short wall)
 * @param largestSize the largest round size D that this cut may stand in (its tip is too thin for
 *     the marks of a larger one), or {@link Long#MAX_VALUE}
 */
public record Cut(long butt, long mid, long tip, long offcut, double cost, long largestSize) {
  /** Checks that the diameters are above zero. */
  public Cut {
    if (Math.min(butt, Math.min(mid, tip)) <= 0 || offcut < 0 || Double.isNaN(cost)) {
      throw new IllegalArgumentException("not the cut of a log: " + butt + " " + mid + " " + tip);
    }
  }

  /** Returns a cut without waste that may stand in a round of any size. */
  public static Cut of(long butt, long mid, long tip) {
    return new Cut(butt, mid, tip, 0, 0, Long.MAX_VALUE);
  }

  /**
   * Returns this cut with its waste.
   *
   * @param length length cut off beyond the allowance
   * @param price its cost in unit²
   */
  public Cut wasting(long length, double price) {
    return new Cut(butt, mid, tip, length, price, largestSize);
  }

  /** Returns this cut, kept out of rounds larger than a size. */
  public Cut upTo(long size) {
    return new Cut(butt, mid, tip, offcut, cost, size);
  }
}
