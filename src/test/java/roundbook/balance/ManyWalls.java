package roundbook.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Yards as large as wanted, the same on every machine: buildings of twelve rounds, 18 for a
 * thousand logs, so that a seventh of the logs stay over; one log in two long enough for the long
 * walls only just, the others for any.
 */
final class ManyWalls {
  private static final int ROUNDS = 12;
  private static final double LONG = 388;
  private static final double SHORT = 292;

  private ManyWalls() {}

  /** Returns a yard of so many logs. */
  static YardFile yard(int logs) {
    SplittableRandom random = new SplittableRandom(20261125);
    List<double[]> buildings = new ArrayList<>();
    for (int i = 0; i < Math.max(1, logs * 18 / 1000); i++) {
      buildings.add(new double[] {0, i + 1, ROUNDS, LONG, SHORT, LONG, SHORT});
    }
    List<double[]> all = new ArrayList<>();
    for (int i = 0; i < logs; i++) {
      all.add(log(random, i % 2 == 0 || random.nextInt(10) == 0 ? LONG : SHORT));
    }
    return new YardFile(logs + " logs", buildings, all);
  }

  private static double[] log(SplittableRandom random, double wall) {
    double mid =
        eighth(
            8
                + 1.5
                    * (random.nextDouble()
                        + random.nextDouble()
                        + random.nextDouble()
                        + random.nextDouble()));
    double taper = 1.2 + 1.8 * random.nextDouble();
    double butt = eighth(mid + taper * (0.9 + 0.3 * random.nextDouble()));
    double tip = eighth(mid - taper * (0.8 + 0.3 * random.nextDouble()));
    return new double[] {0, 0, wall + 16 + random.nextInt(36), butt, mid, tip};
  }

  private static double eighth(double inches) {
    return Math.round(8 * inches) / 8.0;
  }
}
