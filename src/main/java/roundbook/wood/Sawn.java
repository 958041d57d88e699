package roundbook.wood;

/**
 * Sections and volumes of a log sawn on two sides to a thickness.
 *
 * <p>Top and bottom stay round. All lengths are in one unit, areas and volumes in its square and
 * cube.
 */
public final class Sawn {
  private Sawn() {}

  /**
   * Returns h, the reach of the sawn face from the centre line: {@code √(d² − T²) / 2}, or zero.
   */
  public static double reach(double diameter, double thickness) {
    return diameter <= thickness
        ? 0
        : StrictMath.sqrt(diameter * diameter - thickness * thickness) / 2;
  }

  /**
   * Returns the whole sawn section: {@code 2 ((T / 2) h + (d² / 4) asin(T / d))}, or the round one
   * {@code π d² / 4} where the log is no thicker than the wall.
   */
  public static double section(double diameter, double thickness) {
    if (diameter <= thickness) {
      return StrictMath.PI * diameter * diameter / 4;
    }
    double half = thickness / 2 * reach(diameter, thickness);
    return 2 * (half + diameter * diameter / 4 * StrictMath.asin(thickness / diameter));
  }

  /**
   * Returns the sawn volume of a straight taper, in closed form.
   *
   * <p>With end radii r₁ and r₂, {@code e = T / 2} and {@code q = √(r² − e²)}, it is {@code 2 ℓ
   * (G(r₂) − G(r₁)) / (r₂ − r₁)} with {@code G(r) = (2 e / 3) r q − (e³ / 3) acosh(r / e) + (r³ /
   * 3) asin(e / r)}. A taper that runs under the thickness is cut where it does; the rest is a
   * cone's frustum.
   */
  public static double volume(double one, double other, double length, double thickness) {
    double low = Math.min(one, other);
    double high = Math.max(one, other);
    if (high <= thickness) {
      return round(low, high, length);
    }
    if (low < thickness) {
      double below = length * (thickness - low) / (high - low);
      return round(low, thickness, below) + volume(thickness, high, length - below, thickness);
    }
    double taper = (high - low) / 2;
    if (taper < 1e-6 * high) {
      return section((low + high) / 2, thickness) * length;
    }
    double e = thickness / 2;
    return 2 * length * (antiderivative(high / 2, e) - antiderivative(low / 2, e)) / taper;
  }

  /** Returns the round volume of a straight taper: {@code (π / 12)(d₁² + d₁ d₂ + d₂²) ℓ}. */
  public static double round(double one, double other, double length) {
    return StrictMath.PI / 12 * (one * one + one * other + other * other) * length;
  }

  private static double antiderivative(double r, double e) {
    double q = StrictMath.sqrt(Math.max(0, r * r - e * e));
    double ratio = r / e;
    double acosh = StrictMath.log(ratio + StrictMath.sqrt(Math.max(0, ratio * ratio - 1)));
    return 2 * e / 3 * r * q
        - e * e * e / 3 * acosh
        + r * r * r / 3 * StrictMath.asin(Math.min(1, e / r));
  }
}
