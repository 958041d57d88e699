package roundbook.wood;

/**
 * The bearing areas that lock a half-dovetail corner, by the move that each stops.
 *
 * <p>They are areas projected on a plane square to the move; what they carry is for an engineer.
 *
 * @param neck the neck of the log
 * @param diameter natural diameter of the log at its shoulder
 */
public record CornerLock(CornerNeck neck, double diameter) {
  /**
   * Returns the area of the shoulders, which stops the log from being pulled out along its axis and
   * the crossing wall from being pushed in: {@code 2 S(d) − T (U + L) + s T² / 2}.
   */
  public double shoulders() {
    double thickness = neck.thickness();
    double section = SawnLog.section(diameter, thickness);
    double slanted = neck.slope() * thickness * thickness / 2;
    return section - thickness * neck.height() + slanted;
  }

  /**
   * Returns the area of the sloped bearing, which stops the log from sliding in along its axis:
   * {@code s_x T_x T}. It holds only while the log cannot rise.
   *
   * @param crossing T_x, of the crossing wall
   */
  public double slidingIn(double crossing) {
    return neck.crossingSlope() * crossing * neck.thickness();
  }
}
