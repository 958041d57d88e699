package roundbook.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Logs made up for one yard, each figure a whole number of the tape's steps, and the ways to write
 * them.
 *
 * <p>Lengths of 2.4 to 9 m, middles of 20 to 45 cm, tapers of 0.4 to 3 cm a metre.
 */
final class YardLogs {
  /** A way to write lengths and diameters. */
  enum Tape {
    METRES("m", "cm", 10, 1),
    CENTIMETRES("cm", "cm", 10, 5),
    MILLIMETRES("mm", "mm", 10, 1),
    DECIMETRES("dm", "mm", 100, 1),
    FEET("ft", "in", 76.2, 6.35),
    MARKS("ft", "in", 25.4, 6.35),
    FRACTIONS("ft", "in", 76.2, 6.35);

    final String length;
    final String diameter;
    final double lengthStep;
    final double diameterStep;

    Tape(String length, String diameter, double lengthStep, double diameterStep) {
      this.length = length;
      this.diameter = diameter;
      this.lengthStep = lengthStep;
      this.diameterStep = diameterStep;
    }

    boolean metric() {
      return ordinal() <= DECIMETRES.ordinal();
    }
  }

  /** A log by its steps of the tape. */
  record Steps(long length, long butt, long mid, long tip) {}

  final Tape tape;
  final SplittableRandom random;

  YardLogs(Tape tape, SplittableRandom random) {
    this.tape = tape;
    this.random = random;
  }

  List<Steps> logs(int count) {
    List<Steps> logs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double length = 2600 + random.nextDouble() * 6000;
      double mid = 220 + random.nextDouble() * 200;
      double fall = length / 1000 * (5 + random.nextDouble() * 15) / 2;
      double step = tape.diameterStep;
      logs.add(
          new Steps(
              Math.round(length / tape.lengthStep),
              Math.round((mid + fall) / step),
              Math.round(mid / step),
              Math.round((mid - fall) / step)));
    }
    return logs;
  }

  MadeTally.True truth(int row, String tag, Steps log) {
    double step = tape.diameterStep;
    return new MadeTally.True(
        row,
        tag,
        log.length() * tape.lengthStep,
        log.butt() * step,
        log.mid() * step,
        log.tip() * step,
        MadeTally.Use.READ);
  }

  String length(Steps log) {
    double millimetres = log.length() * tape.lengthStep;
    return switch (tape) {
      case METRES -> decimal(millimetres / 1000, 2);
      case CENTIMETRES -> decimal(millimetres / 10, 0);
      case DECIMETRES -> decimal(millimetres / 100, 0);
      case MILLIMETRES -> decimal(millimetres, 0);
      case MARKS -> log.length() / 12 + "' " + log.length() % 12 + "\"";
      default -> decimal(log.length() / 4.0, 2);
    };
  }

  String diameter(long steps) {
    return switch (tape) {
      case METRES, CENTIMETRES -> decimal(steps * tape.diameterStep / 10, 1);
      case MILLIMETRES, DECIMETRES -> decimal(steps, 0);
      case FRACTIONS, MARKS -> fraction(steps);
      default -> decimal(steps / 4.0, 2);
    };
  }

  private static String fraction(long quarters) {
    String whole = String.valueOf(quarters / 4);
    return switch ((int) (quarters % 4)) {
      case 0 -> whole;
      case 2 -> whole + " 1/2";
      default -> whole + " " + quarters % 4 + "/4";
    };
  }

  static String decimal(double number, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", number);
  }
}
