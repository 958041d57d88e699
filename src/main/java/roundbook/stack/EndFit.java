package roundbook.stack;

import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Piece;
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
  /** Returns the fit of a placed log's butt end, by the thinnest of its neck there. */
  public NeckFit butt(Course course, PlacedLog placed) {
    Length near = placed.nearShoulder(building, rules.overhang());
    Length thinnest = placed.piece().butt().least(placed.piece().at(near));
    return fit(course, placed, placed.crossingAtButt(building), thinnest);
  }

  /** Returns the fit of a placed log's tip end, by the thinnest of its neck there. */
  public NeckFit tip(Course course, PlacedLog placed) {
    Length far = placed.farShoulder(building, rules.overhang());
    Length thinnest = placed.piece().tip().least(placed.piece().at(far));
    return fit(course, placed, placed.crossingAtTip(building), thinnest);
  }

  /** Returns whether the rules refuse tips without full bearings. */
  public boolean refuses() {
    return rules.text(Setting.TIP_RULE).equals("refuse");
  }

  /**
   * Returns whether a piece's tip end has full bearings at either corner of a wall; of a pair of
   * short logs, whose tips may lie at both corners, whether both ends have.
   */
  public boolean tipBears(Piece piece, Wall wall, Notch notch) {
    Length crossing = building.before(wall).thickness().most(building.after(wall).thickness());
    NeckFit.Corner corner =
        new NeckFit.Corner(wall.thickness(), crossing, rules.overhang(), Length.ZERO);
    Length tip = piece.log().pair().isPresent() ? piece.tip().least(piece.butt()) : piece.tip();
    NeckFit fit = new NeckFit(notch, corner, tip);
    return !tip.isLessThan(fit.leastForBearing());
  }

  private NeckFit fit(Course course, PlacedLog placed, Wall crossing, Length diameter) {
    NeckFit.Corner corner =
        new NeckFit.Corner(
            placed.wall().thickness(),
            crossing.thickness(),
            rules.overhang(),
            rules.length(Setting.SHOULDER_LEAST));
    return new NeckFit(course.notch(), corner, diameter);
  }
}
