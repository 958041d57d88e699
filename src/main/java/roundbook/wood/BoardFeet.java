package roundbook.wood;

import roundbook.wood.LogRule.Measure;

/** The board-foot rules that are formulas of the small end and the length. */
final class BoardFeet {
  private static final double SECTION = 4;
  private static final double TAPER_OF_SECTION = 0.5;
  private static final double QUARTER_INCH_KERF = 0.904762;

  private BoardFeet() {}

  static double doyle(Measure log) {
    return nearest(doyleExactly(log.smallInch(), log.wholeFeet()), 1);
  }

  /** A small end of 4 in or less has nothing to saw, though the formula would give something. */
  static double doyleExactly(double inches, double feet) {
    double side = Math.max(0, inches - 4) / 4;
    return side * side * feet;
  }

  static double scribner(Measure log) {
    return nearest(scribnerExactly(log.smallInch(), log.wholeFeet()), 1);
  }

  static double scribnerExactly(double inches, double feet) {
    return Math.max(0, (0.79 * inches * inches - 2 * inches - 4) * feet / 16);
  }

  /** Under 7 1/2 board feet counts as five, and under 4 in as nothing. */
  static double international(Measure log) {
    double inches = log.smallInch();
    if (inches < 4 || log.wholeFeet() <= 0) {
      return 0;
    }
    return Math.max(5, nearest(internationalExactly(inches, log.wholeFeet()), 5));
  }

  static double internationalExactly(double inches, double feet) {
    int sections = (int) Math.floor(feet / SECTION);
    double total = (feet / SECTION - sections) * section(inches);
    for (int i = 0; i < sections; i++) {
      total += section(inches + i * TAPER_OF_SECTION);
    }
    return total;
  }

  private static double section(double inches) {
    return (0.22 * inches * inches - 0.71 * inches) * QUARTER_INCH_KERF;
  }

  static double nearest(double value, double step) {
    return Math.floor(value / step + 0.5 + 1e-9) * step;
  }
}
