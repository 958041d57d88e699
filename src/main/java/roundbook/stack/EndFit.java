package roundbook.stack;

import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.notch.Notch;
import roundbook.units.Length;

/**
 * Whether the two ends of logs hold the marks of their rounds.
 *
 * @param rules the job's rules
 * @param building the ring of walls
 */
public record EndFit(BuildRules rules, Building building) {
  /** Returns the fit of a place's butt end, by the thinnest of its neck there. */
  public NeckFit butt(Course course, FilledPlace placed) {
    Length near = placed.nearShoulder(building, rules.overhang());
    Length thinnest = placed.butt().least(placed.at(near));
    return fit(course, placed, placed.crossingAtButt(building), thinnest);
  }

  /** Returns the fit of a place's tip end, by the thinnest of its neck there. */
  public NeckFit tip(Course course, FilledPlace placed) {
    Length far = placed.farShoulder(building, rules.overhang());
    Length thinnest = placed.tip().least(placed.at(far));
    return fit(course, placed, placed.crossingAtTip(building), thinnest);
  }

  /** Returns whether the rules refuse tips without full bearings. */
  public boolean refuses() {
    return rules.text(Setting.TIP_RULE).equals("refuse");
  }

  /** Returns whether an end so thick has full bearings at either corner of a wall. */
  public boolean bears(Length diameter, Wall wall, Notch notch) {
    Length crossing = building.before(wall).thickness().most(building.after(wall).thickness());
    NeckFit.Corner corner =
        new NeckFit.Corner(wall.thickness(), crossing, rules.overhang(), Length.ZERO);
    return !diameter.isLessThan(new NeckFit(notch, corner, diameter).leastForBearing());
  }

  private NeckFit fit(Course course, FilledPlace placed, Wall crossing, Length diameter) {
    NeckFit.Corner corner =
        new NeckFit.Corner(
            placed.wall().thickness(),
            crossing.thickness(),
            rules.overhang(),
            rules.length(Setting.SHOULDER_LEAST));
    return new NeckFit(course.notch(), corner, diameter);
  }
}
