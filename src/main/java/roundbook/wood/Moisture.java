package roundbook.wood;

/**
 * The moisture that wood settles at in still air.
 *
 * <p>All moistures are weights of water as a percentage of the weight of ovendry wood. The equation
 * is 4-5 of the Wood Handbook (USDA Forest Products Laboratory, FPL-GTR-190 and FPL-GTR-282), with
 * h the relative humidity as a share:
 *
 * <pre>
 * M = (1800 / W) [K h / (1 − K h) + (K₁ K h + 2 K₁ K₂ K² h²) / (1 + K₁ K h + K₁ K₂ K² h²)]
 * W  = 349  + 1.29 t     + 0.0135 t²
 * K  = 0.805 + 0.000736 t − 0.00000273 t²
 * K₁ = 6.27 − 0.00938 t  − 0.000303 t²
 * K₂ = 1.91 + 0.0407 t   − 0.000293 t²     (t in degrees Celsius)
 * </pre>
 */
public final class Moisture {
  private static final double[] CELSIUS = {
    349,
    1.29,
    0.0135,
    0.805,
    0.000736,
    -0.00000273,
    6.27,
    -0.00938,
    -0.000303,
    1.91,
    0.0407,
    -0.000293
  };
  private static final double[] FAHRENHEIT = {
    330,
    0.452,
    0.00415,
    0.791,
    0.000463,
    -0.000000844,
    6.34,
    0.000775,
    -0.0000935,
    1.09,
    0.0284,
    -0.0000904
  };

  private Moisture() {}

  /**
   * Returns the equilibrium moisture in percent.
   *
   * @param celsius temperature of the air in degrees Celsius
   * @param humidity relative humidity in percent, 0 to 100
   */
  public static double inEquilibriumCelsius(double celsius, double humidity) {
    return equilibrium(CELSIUS, celsius, humidity);
  }

  /**
   * Returns the equilibrium moisture in percent, by the Handbook's own figures for degrees
   * Fahrenheit: {@code W = 330 + 0.452 t + 0.00415 t²}, {@code K = 0.791 + 0.000463 t − 0.000000844
   * t²}, {@code K₁ = 6.34 + 0.000775 t − 0.0000935 t²}, {@code K₂ = 1.09 + 0.0284 t − 0.0000904
   * t²}.
   *
   * @param fahrenheit temperature of the air in degrees Fahrenheit
   * @param humidity relative humidity in percent, 0 to 100
   */
  public static double inEquilibriumFahrenheit(double fahrenheit, double humidity) {
    return equilibrium(FAHRENHEIT, fahrenheit, humidity);
  }

  private static double equilibrium(double[] figures, double degrees, double humidity) {
    if (!(humidity >= 0 && humidity <= 100)) {
      throw new IllegalArgumentException("humidity is not 0 to 100 percent: " + humidity);
    }
    double kh = quadratic(figures, 3, degrees) * humidity / 100;
    double first = quadratic(figures, 6, degrees) * kh;
    double second = first * quadratic(figures, 9, degrees) * kh;
    double bound = kh / (1 - kh) + (first + 2 * second) / (1 + first + second);
    return 1800 / quadratic(figures, 0, degrees) * bound;
  }

  private static double quadratic(double[] figures, int at, double t) {
    return figures[at] + (figures[at + 1] + figures[at + 2] * t) * t;
  }
}
