package roundbook.plan;

import roundbook.plan.PiecePlan.Weight;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.RoundProfile;
import roundbook.wood.SawnLog;
import roundbook.wood.Species;

/** Estimates what a trimmed, sawn piece weighs green, and where it balances. */
final class Weigher {
  private static final double CUBIC_INCHES_PER_FOOT = 1728;

  private Weigher() {}

  static Weight weigh(PlacedLog placed) {
    RoundProfile profile = RoundProfile.inchesOf(placed.piece());
    SawnLog sawn = new SawnLog(profile, placed.wall().thickness().inches());
    Species species = Species.find(placed.piece().log().traits().species()).species();
    double pounds = sawn.volume() / CUBIC_INCHES_PER_FOOT * species.greenPounds();
    return new Weight(pounds, Length.of(sawn.balancePoint(), LengthUnit.INCH));
  }
}
