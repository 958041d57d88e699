package roundbook.wood;

/**
 * How much wood loses across the grain, as a share.
 *
 * <p>Wood shrinks across the grain only, and only below its fibre saturation point; along the grain
 * the loss is let go. A log with its heart boxed in loses something between the radial and the
 * tangential figure. Give both and their mean.
 *
 * <p>Caution: every figure is a mean of many trees. Leave more room over a frame than it says.
 *
 * @param share f, what is lost of each unit across the grain; negative if the wood swells
 */
public record Shrinkage(double share) {
  /**
   * Returns the loss from green to a moisture, {@code S₀ (1 − M / M_f)}, none above fibre
   * saturation (Wood Handbook, FPL-GTR-282, equation 4-9, which has 30 percent for M_f).
   *
   * @param ovendry S₀, loss from green to ovendry, as a share
   * @param moisture M, in percent
   * @param saturation M_f, fibre saturation point, in percent
   */
  public static Shrinkage fromGreen(double ovendry, double moisture, double saturation) {
    double dry = Math.max(0, Math.min(moisture, saturation));
    return new Shrinkage(ovendry * (1 - dry / saturation));
  }

  /**
   * Returns the loss after this one has come to pass already, of what is left: {@code 1 − (1 −
   * f_later) / (1 − f_now)}. So a half-dry log's share of its present size is found.
   */
  public Shrinkage until(Shrinkage later) {
    return new Shrinkage(1 - (1 - later.share) / (1 - share));
  }

  /** Returns what is left of a size across the grain, {@code (1 − f) x}: log, course or gap. */
  public double left(double size) {
    return (1 - share) * size;
  }

  /** Returns what a size across the grain loses, {@code f x}. */
  public double lost(double size) {
    return share * size;
  }

  /**
   * Returns the room to leave over a frame, {@code f (z_head − z_stand)}: the height from what the
   * frame stands on to its head, not the height of the wall above it.
   *
   * @param head height of the frame's head
   * @param stand height of what it stands on: a cut log, or the foundation for a door, post or
   *     stair
   */
  public double clearance(double head, double stand) {
    return share * (head - stand);
  }

  /** Returns how far each shoulder opens, {@code f T / 2}. */
  public double shoulderOpening(double thickness) {
    return lost(thickness) / 2;
  }

  /**
   * Returns how far the hook opens at its outer edge, {@code s f T}, counted on the size as built
   * (the joint has shrunk itself, so exactly it is {@code s f (1 − f) T}).
   */
  public double hookOpening(double slope, double thickness) {
    return slope * lost(thickness);
  }
}
