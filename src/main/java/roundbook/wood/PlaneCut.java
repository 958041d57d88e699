package roundbook.wood;

import java.util.function.DoubleUnaryOperator;

/**
 * What a level plane cuts off a sawn log: a flat bed, a plate's seat, a sill or a head.
 *
 * @param log the log
 * @param reach height of the plane from the centre line, on the side that is cut off; negative
 *     where the plane lies past the centre line
 */
public record PlaneCut(SawnLog log, double reach) {
  private static final int PARTS = 16;

  /**
   * Returns the area cut off a section: {@code S − T k} while the plane meets both sawn faces, a
   * segment of the circle beyond them.
   */
  public static double area(double diameter, double thickness, double reach) {
    if (reach < 0) {
      return SawnLog.section(diameter, thickness) - area(diameter, thickness, -reach);
    }
    double r = diameter / 2;
    if (reach >= r) {
      return 0;
    }
    if (reach <= SawnLog.faceReach(diameter, thickness)) {
      return SawnLog.section(diameter, thickness) / 2 - thickness * reach;
    }
    double chord = Math.sqrt((r - reach) * (r + reach));
    return r * r * StrictMath.acos(reach / r) - reach * chord;
  }

  /** Returns the volume cut off, by Simpson's rule on parts of each straight stretch. */
  public double volume() {
    DoubleUnaryOperator cut = x -> area(log.profile().at(x), log.thickness(), reach);
    double total = 0;
    for (Taper taper : log.profile().tapers(log.thickness() / 2)) {
      double step = taper.length() / PARTS;
      for (int part = 0; part < PARTS; part++) {
        double from = taper.from() + part * step;
        total += Simpson.over(from, from + step, cut);
      }
    }
    return total;
  }
}
