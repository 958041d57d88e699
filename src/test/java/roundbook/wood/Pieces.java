package roundbook.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import roundbook.wood.RoundProfile.ProfilePoint;

/** Random pieces of invented logs, and an integrator that knows nothing of closed forms. */
final class Pieces {
  /** A piece, its wall's thickness and the seed it was drawn from. */
  record Drawn(long seed, RoundProfile profile, double thickness) {}

  private Pieces() {}

  /**
   * Draws pieces of 2 to 6 stations; some taper hardly at all, some not, some are thinner than the
   * wall over a part or all of their length.
   */
  static List<Drawn> draw(long firstSeed, int count) {
    List<Drawn> drawn = new ArrayList<>();
    for (long seed = firstSeed; seed < firstSeed + count; seed++) {
      Random random = new Random(seed);
      double thickness = 4 + 6 * random.nextDouble();
      drawn.add(new Drawn(seed, profile(random, 40 + 260 * random.nextDouble()), thickness));
    }
    return drawn;
  }

  /** Draws a profile over a length. */
  static RoundProfile profile(Random random, double length) {
    int last = 1 + random.nextInt(5);
    double[] steps = {0, 1e-12, 1e-9, 1e-7, 1e-5, 1e-3, 0.1, 1, 3};
    List<ProfilePoint> stations = new ArrayList<>();
    double diameter = 7 + 10 * random.nextDouble();
    for (int i = 0; i <= last; i++) {
      stations.add(new ProfilePoint(length * i / last, diameter));
      double step = steps[random.nextInt(steps.length)] * (random.nextInt(3) == 0 ? 1 : -1);
      diameter = Math.max(3, diameter + step);
    }
    return new RoundProfile(stations);
  }

  /** Integrates over a profile's length, kink by kink, with Apache Commons Math. */
  static double integrate(DoubleUnaryOperator value, Iterable<Double> kinks) {
    IterativeLegendreGaussIntegrator gauss =
        new IterativeLegendreGaussIntegrator(24, 1e-12, 1e-12, 1, 64);
    double total = 0;
    Double from = null;
    for (Double to : kinks) {
      boolean wide = from != null && to - from > 1e-9;
      total += wide ? gauss.integrate(1_000_000, value::applyAsDouble, from, to) : 0;
      from = to;
    }
    return total;
  }
}
