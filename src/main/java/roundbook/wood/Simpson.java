package roundbook.wood;

import java.util.function.DoubleUnaryOperator;

/** Simpson's rule on the two ends and the middle. */
final class Simpson {
  private Simpson() {}

  static double over(double from, double to, DoubleUnaryOperator value) {
    double middle = value.applyAsDouble((from + to) / 2);
    return (to - from) * (value.applyAsDouble(from) + 4 * middle + value.applyAsDouble(to)) / 6;
  }
}
