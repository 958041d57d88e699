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
  /** The moisture range in percent, 6 to 14, over which change coefficients hold: its middle. */
  private static final double MIDDLE_MOISTURE = 10;

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

  /**
   * Returns the loss by the settlement formula of the standard for log structures (ICC 400 section
   * 304, known second-hand): {@code (M_d − M_s) / (M_f 100 / S − M_f + M_d)}.
   *
   * @param percent S, loss from green to ovendry, in percent
   * @param design M_d, the moisture it is built at, in percent; counted as M_f where above it
   * @param service M_s, the moisture it comes to, in percent, and M_f, fibre saturation
   */
  public static Shrinkage settlement(double percent, double design, Service service) {
    double saturation = service.saturation();
    double built = Math.min(design, saturation);
    double end = Math.min(service.moisture(), saturation);
    return new Shrinkage((built - end) / (saturation * 100 / percent - saturation + built));
  }

  /**
   * The moisture that wood comes to in a building, and its limit of shrinking.
   *
   * @param moisture in service, in percent
   * @param saturation fibre saturation point, in percent
   */
  public record Service(double moisture, double saturation) {}

  /**
   * Returns the loss by a change coefficient, {@code C (M₁ − M₂)} (Wood Handbook, equation 13-2);
   * meant for moistures of 6 to 14 percent.
   */
  public static Shrinkage byCoefficient(double coefficient, double before, double after) {
    return new Shrinkage(coefficient * (before - after));
  }

  /**
   * Returns the change coefficient that belongs to a loss from green to ovendry, {@code (S / M_f) /
   * (100 − S (M_f − 10) / M_f)}; it gives the cells of the Handbook's Table 13-5.
   *
   * @param percent S, in percent
   * @param saturation M_f, in percent
   */
  public static double coefficient(double percent, double saturation) {
    double perPoint = percent / saturation;
    return perPoint / (100 - perPoint * (saturation - MIDDLE_MOISTURE));
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

  /**
   * Returns the gap when necks lose this share and the logs between another, {@code g − f_n (D + g)
   * + f_l D}: a corner kept wet holds the wall up while the logs dry.
   *
   * @param size D, of the round
   * @param gap g, as built
   * @param logs what the logs lose between the corners
   */
  public double gapLeft(double size, double gap, Shrinkage logs) {
    return gap - lost(size + gap) + logs.lost(size);
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

  /**
   * Returns the most that a neck can ride up on its shoulder's play before it slides shut, {@code s
   * (1 − f) f T / 2}.
   */
  public double wedgeLift(double slope, double thickness) {
    return slope * left(shoulderOpening(thickness));
  }
}
