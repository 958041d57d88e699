package roundbook.plan;

import roundbook.plan.PiecePlan.Weight;
import roundbook.stack.PlacedLog;
import roundbook.wood.GreenWeight;
import roundbook.wood.SawnPiece;

/** Estimates what a trimmed, sawn piece weighs green, and where it balances. */
final class Weigher {
  private static final double CUBIC_INCHES_PER_FOOT = 1728;

  private Weigher() {}

  static Weight weigh(PlacedLog placed) {
    SawnPiece sawn = new SawnPiece(placed.piece(), placed.wall().thickness());
    GreenWeight green = GreenWeight.of(placed.piece().log().traits().species());
    double pounds = sawn.cubicInches() / CUBIC_INCHES_PER_FOOT * green.poundsPerCubicFoot();
    return new Weight(pounds, sawn.balance());
  }
}
