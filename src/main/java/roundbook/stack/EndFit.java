package roundbook.stack;

import java.util.function.Predicate;
import roundbook.job.BuildRules;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.NeckFit;
import roundbook.notch.Notch;
import roundbook.units.Length;

/**
 * What the two ends of logs lose under the marks of their rounds.
 *
 * @param rules the job's rules
 * @param building the ring of walls
 * @param rounds how many rounds there are
 */
public record EndFit(BuildRules rules, Building building, int rounds) {
  /** Creates the fit of ends of rounds none of which is known to be the last. */
  public EndFit(BuildRules rules, Building building) {
    this(rules, building, Integer.MAX_VALUE);
  }

  /** Returns the fit of a place's butt end. */
  public NeckFit butt(Course course, FilledPlace placed) {
    return fit(
        course.notch(), placed, true, placed.crossingAtButt(building).thickness(), marks(placed));
  }

  /** Returns the fit of a place's tip end. */
  public NeckFit tip(Course course, FilledPlace placed) {
    return fit(
        course.notch(), placed, false, placed.crossingAtTip(building).thickness(), marks(placed));
  }

  /** Returns whether an end of a place is flagged. */
  public boolean isFlagged(Course course, FilledPlace placed) {
    return butt(course, placed).isFlagged() || tip(course, placed).isFlagged();
  }

  /** Returns whether the rules refuse ends that are graded stop. */
  public boolean refuses() {
    return rules.text(Setting.TIP_RULE).equals("refuse");
  }

  /** Returns which marks are cut on a place's log. */
  private NeckFit.Marks marks(FilledPlace placed) {
    boolean first = placed.wall().laidFirst();
    boolean starter = rules.text(Setting.FIRST_BED).equals("starter");
    if (placed.round() == 1 && first && !starter) {
      return NeckFit.Marks.UPPER;
    }
    return placed.round() == rounds && !first ? NeckFit.Marks.LOWER : NeckFit.Marks.BOTH;
  }

  /**
   * Returns whether no end of a log is graded stop in a round with both its marks, whichever way
   * round it may lie.
   */
  public boolean holds(FilledPlace placed, Notch notch) {
    Length before = building.before(placed.wall()).thickness();
    Length after = building.after(placed.wall()).thickness();
    return holds(placed, notch, before) && (after.equals(before) || holds(placed, notch, after));
  }

  private boolean holds(FilledPlace placed, Notch notch, Length crossing) {
    return fit(notch, placed, true, crossing, NeckFit.Marks.BOTH).grade() != NeckFit.Grade.STOP
        && fit(notch, placed, false, crossing, NeckFit.Marks.BOTH).grade() != NeckFit.Grade.STOP;
  }

  /**
   * Returns the least diameter, by sixteenths of an inch, that will do for the end of a log in a
   * round of a size, as thick all along its neck.
   */
  public static Length least(Job job, Length size, Predicate<NeckFit> will) {
    Wall wall = job.building().walls().get(0);
    NeckFit.Corner corner =
        new NeckFit.Corner(
            wall.thickness(),
            job.building().after(wall).thickness(),
            job.rules().overhang(),
            limits(job.rules()));
    Notch notch = Notch.of(size, job.rules());
    Length end = wall.thickness();
    while (end.isLessThan(size) && !will.test(new NeckFit(notch, corner, NeckFit.Neck.even(end)))) {
      end = end.plus(Length.ofInchFraction(1, 16));
    }
    return end;
  }

  /** Returns from where on ends are flagged. */
  public static NeckFit.Limits limits(BuildRules rules) {
    return new NeckFit.Limits(
        rules.length(Setting.SHOULDER_LEAST),
        rules.number(Setting.BEARING_LOOK).doubleValue() / 100,
        rules.number(Setting.BEARING_STOP).doubleValue() / 100);
  }

  private NeckFit fit(
      Notch notch, FilledPlace placed, boolean atButt, Length crossing, NeckFit.Marks marks) {
    Length overhang = rules.overhang();
    Length neck = crossing.plus(overhang);
    Length shoulder = placed.at(atButt ? neck : placed.trimmed().minus(neck));
    return new NeckFit(
        notch,
        new NeckFit.Corner(placed.wall().thickness(), crossing, overhang, limits(rules), marks),
        NeckFit.Neck.straight(atButt ? placed.butt() : placed.tip(), shoulder, crossing, overhang));
  }
}
