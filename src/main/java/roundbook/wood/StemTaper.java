package roundbook.wood;

/**
 * How thick a standing tree is along its stem, by published models of its breast-height diameter
 * and its height.
 *
 * <p>A model misses a single tree by half an inch to an inch eight to ten metres up: a help for
 * marking trees, never for cutting them up.
 */
public enum StemTaper {
  /**
   * Norway spruce: E. Hansen, J. Rahlf, R. Astrup, T. Gobakken, Taper, volume, and bark thickness
   * models for spruce, pine, and birch in Norway, Scandinavian Journal of Forest Research 2023.
   */
  NORWAY_SPRUCE("Norway spruce") {
    @Override
    double peeled(double height, double breast, double top) {
      double over =
          hansen(
              height,
              breast,
              top,
              1.0625010,
              0.9590684,
              0.9982461,
              2.2909135,
              -0.5201230,
              3.8808849,
              -2.1078922,
              0.1695809);
      return over - (2.32391608 + 0.06830421 * breast + 0.39936183 * over) / 10;
    }
  },

  /** Scots pine, from the same paper. */
  SCOTS_PINE("Scots pine") {
    @Override
    double peeled(double height, double breast, double top) {
      double over =
          hansen(
              height,
              breast,
              top,
              1.14798036,
              0.90295964,
              1.00118665,
              0.24116857,
              -0.09667025,
              -0.50359177,
              0.32132441,
              0.05546691);
      return over - (2.9306985 - 0.4045155 * breast + 1.2126856 * over) / 10;
    }
  },

  /**
   * Eastern white pine: the form of A. Kozak, My last words on taper equations, The Forestry
   * Chronicle 80 (2004), with the figures for the northeast that foresters' open code carries.
   */
  WHITE_PINE("white pine") {
    @Override
    double peeled(double height, double breast, double top) {
      return kozak(
          height,
          breast,
          top,
          1.04881379,
          1.00779696,
          -0.04595353,
          0.38085445,
          -0.85956463,
          0.34380669,
          4.60836993,
          0.111855,
          -0.5523203);
    }
  },

  /** Red spruce, of the same form and region. */
  RED_SPRUCE("red spruce") {
    @Override
    double peeled(double height, double breast, double top) {
      return kozak(
          height,
          breast,
          top,
          0.89797987,
          1.00579742,
          0.01667313,
          0.49500865,
          -0.63375155,
          0.3836274,
          1.41380994,
          0.08866994,
          -0.29753964);
    }
  };

  private static final int HALVINGS = 60;
  private static final double MOST_BREAST = 200;

  private final String title;

  StemTaper(String title) {
    this.title = title;
  }

  /** Returns the species that the model is of. */
  public String title() {
    return title;
  }

  /**
   * Returns the diameter without bark.
   *
   * @param height height above the ground, m
   * @param breast diameter over bark at 1.3 m, cm
   * @param top height of the tree, m
   * @return the diameter, cm
   */
  abstract double peeled(double height, double breast, double top);

  /**
   * Returns the diameter without bark.
   *
   * @param height height above the ground, m, under the top
   * @param breast diameter over bark at breast height, 1.3 m, in cm
   * @param top height of the tree, m
   * @return the diameter, cm, none where the model would go under nothing
   */
  public double diameter(double height, double breast, double top) {
    return Math.max(0, peeled(height, breast, top));
  }

  /**
   * Returns the breast-height diameter over bark of a tree that is as thick as wanted at a height.
   *
   * @param peeled the diameter wanted there without bark, cm
   * @param height the height above the ground, m
   * @param top height of the tree, m
   * @return the diameter, cm; no number where no tree of that height reaches it
   */
  public double breastFor(double peeled, double height, double top) {
    double thin = 1;
    double thick = MOST_BREAST;
    if (height >= top || diameter(height, thick, top) < peeled) {
      return Double.NaN;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (thin + thick) / 2;
      if (diameter(height, middle, top) < peeled) {
        thin = middle;
      } else {
        thick = middle;
      }
    }
    return thick;
  }

  /** The form of A. Kozak, A variable-exponent taper equation, Can. J. For. Res. 18 (1988). */
  private static double hansen(double height, double breast, double top, double... b) {
    double z = height / top;
    double base = (1 - Math.sqrt(z)) / (1 - Math.sqrt(0.2));
    double exponent =
        b[3] * z * z
            + b[4] * StrictMath.log(z + 0.001)
            + b[5] * Math.sqrt(z)
            + b[6] * StrictMath.exp(z)
            + b[7] * breast / top;
    double size = b[0] * StrictMath.pow(breast, b[1]) * StrictMath.pow(b[2], breast);
    return size * StrictMath.pow(base, exponent);
  }

  private static double kozak(double height, double breast, double top, double... a) {
    double z = height / top;
    double q = 1 - StrictMath.cbrt(z);
    double x = q / (1 - StrictMath.cbrt(1.3 / top));
    double exponent =
        a[3] * z * z * z * z
            + a[4] * StrictMath.exp(-breast / top)
            + a[5] * StrictMath.pow(x, 0.1)
            + a[6] / breast
            + a[7] * StrictMath.pow(top, q)
            + a[8] * x;
    return a[0]
        * StrictMath.pow(breast, a[1])
        * StrictMath.pow(top, a[2])
        * StrictMath.pow(x, exponent);
  }
}
