package roundbook.wood;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The diameters in which round backer for chinking is sold.
 *
 * <p>Backer must be squeezed a little to stay where it is pushed, so it is bought somewhat thicker
 * than the joint is high (common practice: a quarter thicker).
 *
 * @param sizes the stock diameters, in the unit of the joints
 * @param squeeze how much thicker than the joint it must be, as a share: 0.25 for a quarter
 */
public record BackerStock(List<Double> sizes, double squeeze) {
  /** Sorts the sizes. */
  public BackerStock {
    sizes = sizes.stream().sorted().toList();
  }

  /** Returns the usual inch sizes, 1/4 in to 4 in, squeezed by a quarter (common practice). */
  public static BackerStock inches() {
    return new BackerStock(
        List.of(0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0), 0.25);
  }

  /** Returns the usual millimetre sizes, 6 to 100, squeezed by a quarter (common practice). */
  public static BackerStock millimetres() {
    return new BackerStock(
        List.of(6.0, 8.0, 10.0, 13.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 80.0, 100.0), 0.25);
  }

  /** Returns the diameter wanted for a joint of that height: {@code height (1 + squeeze)}. */
  public double wanted(double height) {
    return height * (1 + squeeze);
  }

  /**
   * Returns the next stock size up for a joint of that height where it is widest, or nothing if
   * none is thick enough: then double it, rip boards, or narrow the gap.
   */
  public OptionalDouble sizeFor(double height) {
    double wanted = wanted(height) * (1 - 1e-9);
    return sizes.stream().mapToDouble(Double::doubleValue).filter(s -> s >= wanted).findFirst();
  }
}
