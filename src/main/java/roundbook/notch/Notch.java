package roundbook.notch;

import roundbook.job.BuildRules;
import roundbook.units.Length;
import roundbook.units.Slope;

/**
 * The notch numbers that every log of a round shares.
 *
 * <p>With D the size of the round and g the gap wanted at the crown, the lower mark is {@code L =
 * (D − g) / 4} below the centre line and the upper mark {@code U = L + g} above it, so that {@code
 * U + L = (D + g) / 2} (common practice). The neck's top falls by the slope from the inside face to
 * the outside face; its underside falls by the same slope from the shoulder to the trimmed end.
 *
 * <p>Marks are rounded once, so that courses stay true: {@code L' = r(L)} and {@code U' = r((D + g)
 * / 2) − L'}, where r rounds to the print step, ties up. The drop of the slope is rounded once too,
 * which keeps both mating planes at one slope.
 *
 * @param size D, the size of the round
 * @param gap g, the gap wanted
 * @param slope s, the slope of the necks
 * @param printStep the step that marks are rounded to; zero leaves them exact
 */
public record Notch(Length size, Length gap, Slope slope, Length printStep) {
  /** Returns the notch of a round's size under a job's rules. */
  public static Notch of(Length size, BuildRules rules) {
    return new Notch(size, rules.gap(), rules.slope(), rules.printStep());
  }

  /** Returns L before rounding, {@code (D − g) / 4}. */
  public Length exactLower() {
    return size.minus(gap).dividedBy(4);
  }

  /** Returns L', the lower mark at the shoulder, both faces, below the centre line. */
  public Length lower() {
    return exactLower().roundedTo(printStep);
  }

  /** Returns U', the upper mark on the inside face, above the centre line. */
  public Length upper() {
    return neckHeight().minus(lower());
  }

  /** Returns U' + L', the height of the neck on the inside face: {@code r((D + g) / 2)}. */
  public Length neckHeight() {
    return size.plus(gap).dividedBy(2).roundedTo(printStep);
  }

  /** Returns the drop of the slope across a thickness, rounded once. */
  public Length drop(Length thickness) {
    return slope.dropOver(thickness).roundedTo(printStep);
  }

  /**
   * Returns the upper mark on the outside face, {@code U' − r(s T)}.
   *
   * @param thickness T of the log's own wall
   */
  public Length upperOutside(Length thickness) {
    return upper().minus(drop(thickness));
  }

  /**
   * Returns the lower mark at the corner line, above the outer face of the crossing wall, {@code L'
   * + r(s T_x)}, the same on both faces.
   *
   * @param crossing T_x, thickness of the crossing wall
   */
  public Length lowerCorner(Length crossing) {
    return lower().plus(drop(crossing));
  }

  /**
   * Returns the lower mark at the trimmed end, {@code r(L' + s (T_x + o))}; it mates with nothing
   * and is rounded alone.
   *
   * @param crossing T_x, thickness of the crossing wall
   * @param overhang o, from the crossing wall's outer face to the trimmed end
   */
  public Length lowerEnd(Length crossing, Length overhang) {
    return lower().plus(slope.dropOver(crossing.plus(overhang))).roundedTo(printStep);
  }

  /**
   * Returns the height of the neck where it is thinnest, at the shoulder on the outside face:
   * {@code U' + L' − r(s T)}.
   *
   * @param thickness T of the log's own wall
   */
  public Length thinnest(Length thickness) {
    return neckHeight().minus(drop(thickness));
  }
}
