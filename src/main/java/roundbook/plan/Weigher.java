package roundbook.plan;

import roundbook.job.BuildRules;
import roundbook.job.Piece;
import roundbook.plan.PiecePlan.Weight;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Estimates what a trimmed, sawn piece weighs green, and where it balances. */
final class Weigher {
  private static final int STRIPS = 96;
  private static final double CUBIC_INCHES_PER_FOOT = 1728;
  private final double poundsPerCubicFoot;

  Weigher(BuildRules rules) {
    this.poundsPerCubicFoot = 36;
  }

  Weight weigh(PlacedLog placed) {
    Piece piece = placed.piece();
    double length = piece.trimmed().inches();
    double volume = 0;
    double moment = 0;
    for (int i = 0; i <= STRIPS; i++) {
      int weight = i == 0 || i == STRIPS ? 1 : i % 2 == 0 ? 2 : 4;
      double along = length * i / STRIPS;
      double diameter = piece.at(piece.trimmed().timesRatio(i, STRIPS)).inches();
      double section = weight * section(diameter, placed.wall().thickness().inches());
      volume += section;
      moment += section * along;
    }
    double cubicFeet = volume * length / STRIPS / 3 / CUBIC_INCHES_PER_FOOT;
    Length balance = Length.of(moment / volume, LengthUnit.INCH);
    return new Weight(cubicFeet * poundsPerCubicFoot, balance);
  }

  /** Returns the section of a log sawn on two sides: {@code T h + (d² / 2) asin(T / d)}. */
  private static double section(double diameter, double thickness) {
    if (diameter <= thickness) {
      return StrictMath.PI * diameter * diameter / 4;
    }
    double reach = StrictMath.sqrt(diameter * diameter - thickness * thickness) / 2;
    return thickness * reach + diameter * diameter / 2 * StrictMath.asin(thickness / diameter);
  }
}
