package roundbook.wood;

import java.util.function.ToDoubleFunction;

/**
 * A trimmed log sawn or hewn on two sides to a thickness.
 *
 * <p>Its top and bottom stay round. Where the natural diameter is no more than the thickness no
 * face is sawn and the section is the whole circle.
 *
 * @param profile natural diameters of the trimmed piece, from its butt end
 * @param thickness T, between the two sawn faces
 */
public record SawnLog(RoundProfile profile, double thickness) {
  /** Checks that the thickness is positive. */
  public SawnLog {
    requirePositive(thickness);
  }

  private static void requirePositive(double thickness) {
    if (!(thickness > 0)) {
      throw new IllegalArgumentException("thickness must be positive: " + thickness);
    }
  }

  /**
   * Returns how far the sawn face reaches above, and below, the centre line: {@code √(d² − T²) /
   * 2}, or zero where {@code d <= T}.
   */
  public static double faceReach(double diameter, double thickness) {
    requirePositive(thickness);
    return Taper.reach(diameter / 2, thickness / 2);
  }

  /**
   * Returns the area of the sawn section, {@code T h + (d² / 2) asin(T / d)} with h the reach of
   * the face, or the whole circle where {@code d <= T}.
   */
  public static double section(double diameter, double thickness) {
    requirePositive(thickness);
    return 2 * Taper.halfSection(diameter / 2, thickness / 2);
  }

  /** Returns the volume of the sawn piece before any notch is cut, exactly, in closed form. */
  public double volume() {
    return 2 * sum(taper -> taper.halfVolume(thickness / 2));
  }

  /** Returns the area of the sawn section at a distance from the butt end. */
  public double sectionAt(double distance) {
    return section(profile.at(distance), thickness);
  }

  /**
   * Returns the volume of the piece while still round, {@code (π / 12) (d₁² + d₁ d₂ + d₂²) ℓ} over
   * each straight stretch.
   */
  public double roundVolume() {
    return 2 * sum(taper -> taper.halfVolume(Double.MAX_VALUE));
  }

  /**
   * Returns the distance from the butt end at which the sawn piece balances, {@code ∫u A du / ∫A
   * du}, before any notch is cut.
   *
   * <p>Caution: knots, wet sapwood and notches move it. Test the lift a hand's breadth off the
   * bearers before any lift.
   */
  public double balancePoint() {
    double e = thickness / 2;
    return sum(taper -> taper.halfMoment(e)) / sum(taper -> taper.halfVolume(e)) - profile.start();
  }

  private double sum(ToDoubleFunction<Taper> part) {
    return profile.tapers(thickness / 2).stream().mapToDouble(part).sum();
  }
}
