package roundbook.takeoff;

import roundbook.stack.PlacedLog;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.RoundProfile;

/** Placed logs as profiles in inches along their wall, from its left trimmed end. */
final class Along {
  private Along() {}

  /** Returns the natural diameters of a log from the left trimmed end, seen from outside. */
  static RoundProfile left(PlacedLog log) {
    RoundProfile profile = RoundProfile.inchesOf(log.piece());
    return log.buttAtStart() ? profile.reversed() : profile;
  }

  /** Returns the greatest diameter of a log between two distances from the left trimmed end. */
  static Length thickest(PlacedLog log, Length from, Length to) {
    RoundProfile part = left(log).between(from.inches(), to.inches());
    double most =
        part.stations().stream().mapToDouble(RoundProfile.Station::diameter).max().orElseThrow();
    return inches(most);
  }

  /** Returns a length of decimal inches. */
  static Length inches(double inches) {
    return Length.of(inches, LengthUnit.INCH);
  }
}
