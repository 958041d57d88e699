package roundbook.wood;

/**
 * The wood left in a half-dovetail neck between its two planes.
 *
 * <p>The neck runs from the shoulder to the trimmed end. Its top falls across the log and its
 * underside falls along it.
 *
 * @param height U + L, upper and lower mark together at the inside shoulder: {@code (D + g) / 2}
 * @param thickness T, of the log's own wall
 * @param length {@code T_x + o}, from the shoulder to the trimmed end
 * @param slope s, fall of the top for a run of one
 * @param crossingSlope s_x, fall of the underside for a run of one
 */
public record CornerNeck(
    double height, double thickness, double length, double slope, double crossingSlope) {
  /**
   * Returns the volume of the neck, {@code T (T_x + o) [U + L + (s_x (T_x + o) − s T) / 2]}.
   *
   * <p>It takes both faces for full. A waney tail holds a little less.
   */
  public double volume() {
    return thickness * length * (height + (crossingSlope * length - slope * thickness) / 2);
  }

  /**
   * Returns the volume cut away at this end of a sawn log, {@code (T_x + o) A(d)} less the neck.
   *
   * @param diameter natural diameter at the middle of the neck's length
   */
  public double removedFrom(double diameter) {
    return length * SawnLog.section(diameter, thickness) - volume();
  }
}
