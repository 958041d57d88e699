package roundbook.takeoff;

import java.util.List;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.RoundProfile;
import roundbook.wood.RoundProfile.ProfilePoint;

/** Placed logs as profiles in inches along their wall. */
final class WallProfiles {
  private WallProfiles() {}

  /** Returns the natural diameters of a place from its left trimmed end, seen from outside. */
  static RoundProfile left(FilledPlace place) {
    List<ProfilePoint> stations =
        place.logs().stream().flatMap(log -> left(log).stations().stream()).toList();
    return new RoundProfile(stations);
  }

  private static RoundProfile left(PlacedLog log) {
    RoundProfile profile = RoundProfile.inchesOf(log.piece());
    RoundProfile turned = log.buttAtStart() ? profile.reversed() : profile;
    double from = log.fromLeft().inches();
    return new RoundProfile(
        turned.stations().stream()
            .map(each -> new ProfilePoint(each.distance() + from, each.diameter()))
            .toList());
  }

  /** Returns the natural diameters of a place from the end at which its round's butts lie. */
  static RoundProfile butt(FilledPlace place) {
    return place.buttAtStart() ? left(place).reversed() : left(place);
  }

  /** Returns the greatest diameter of a place between two distances from its left trimmed end. */
  static Length thickest(FilledPlace place, Length from, Length to) {
    RoundProfile part = left(place).between(from.inches(), to.inches());
    double most = part.stations().stream().mapToDouble(ProfilePoint::diameter).max().orElseThrow();
    return inches(most);
  }

  /** Returns a length of decimal inches. */
  static Length inches(double inches) {
    return Length.of(inches, LengthUnit.INCH);
  }
}
