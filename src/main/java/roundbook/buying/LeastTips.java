package roundbook.buying;

import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.notch.Notch;
import roundbook.units.Length;

/**
 * The least diameters at the thin end of a trimmed log, each {@code √(T² + 4 z²)}.
 *
 * @param top for a whole upper bearing, {@code z = U}
 * @param bottom for a whole lower bearing, {@code z = L + s T}
 * @param shoulder for the wood wanted over the shoulder, {@code z = U + Shoulder_least}
 */
public record LeastTips(Length top, Length bottom, Length shoulder) {
  /** Returns the least tips of a wall's logs in a round of a size. */
  public static LeastTips of(BuildRules rules, Building building, Wall wall, Length size) {
    Length crossing = building.before(wall).thickness().most(building.after(wall).thickness());
    NeckFit.Limits limits = new NeckFit.Limits(rules.length(Setting.SHOULDER_LEAST), 0, 0);
    NeckFit fit =
        new NeckFit(
            Notch.of(size, rules),
            new NeckFit.Corner(wall.thickness(), crossing, rules.overhang(), limits),
            NeckFit.Neck.even(size));
    return new LeastTips(fit.leastForTop(), fit.leastForBottom(), fit.leastForShoulder());
  }

  /** Returns the tip that a log must have. */
  public Length least() {
    return top;
  }

  /** Returns the tip with which nothing is lacking at the notch. */
  public Length better() {
    return top.most(bottom).most(shoulder);
  }

  LeastTips most(LeastTips other) {
    return new LeastTips(
        top.most(other.top), bottom.most(other.bottom), shoulder.most(other.shoulder));
  }
}
