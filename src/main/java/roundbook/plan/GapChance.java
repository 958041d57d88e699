package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Measures;
import roundbook.job.Setting;
import roundbook.stack.Corners;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * The chance that a gap leaves its limits though the plan has it inside, by how finely this crew
 * marks.
 *
 * <p>Up to four marks lie between two logs of a wall at each end, fewer where corners were read
 * between; at the middle the mean of both ends errs. Each mark errs by as much as the corners read
 * otherwise than expected, a half of it, for a reading after a round has four marks too: by the
 * median, which one wrong reading does not move. Until eight corners were read a mark errs by 1/16
 * in (1.6 mm). An end whose diameter was not measured errs by 1/8 in (3.2 mm): a middle does not
 * tell how a log was hewn there (both *common practice*). Errors are taken as normal.
 *
 * @param job the job with what is built
 * @param stack the heights and gaps
 */
record GapChance(Job job, Stack stack) {
  /** A joint is watched from this chance on. */
  static final double WATCHED = 0.2;

  private static final double MARK = 1 / 16.0;
  private static final double END = 1 / 8.0;
  private static final int READINGS_LEAST = 8;
  private static final double UNREAD = 4;

  /** Half of a normal distribution lies within so many standard deviations. */
  private static final double QUARTILE = 0.6745;

  /** Returns the chance that the gap of a joint is outside the limits at one station at least. */
  double outside(Joint joint) {
    double mark = mark();
    double end = variance(joint.lower()) + variance(joint.upper());
    Building building = job.building();
    double left = marks(joint, building.endCorner(joint.lower().wall()));
    double right = marks(joint, building.startCorner(joint.lower().wall()));
    double middle = (left + right) / 4;
    double inside =
        (1 - outside(joint.left(), StrictMath.sqrt(left * mark * mark + end / 4)))
            * (1 - outside(joint.middle(), StrictMath.sqrt(middle) * mark))
            * (1 - outside(joint.right(), StrictMath.sqrt(right * mark * mark + end / 4)));
    return 1 - inside;
  }

  /**
   * Returns how many marks' variances lie in the gap at a corner.
   *
   * <p>Unread, four marks lie between the two logs. Of a reading's misfit each of k marks has the
   * k-th part, which leaves 1 − 1/k of a mark's variance in one of them and as much in all the
   * others together; the upper log then has its own marks over the top that was read.
   */
  private double marks(Joint joint, String corner) {
    AsBuilt built = job.built();
    int below = joint.lower().round();
    if (built.reading(below, corner).isEmpty()) {
      return UNREAD;
    }
    double under = built.firstReading(below, corner).isPresent() ? 1 / 2.0 : 3 / 4.0;
    boolean onTop =
        joint.upper().wall().laidFirst() || built.firstReading(below + 1, corner).isPresent();
    return under + (onTop ? 1 : 3);
  }

  /** Returns whether both logs of a joint are known as hewn and the upper one is not cut yet. */
  boolean canTell(Joint joint) {
    return !job.built().isCut(joint.upper().place())
        && joint.lower().isMeasured(job.built())
        && joint.upper().isMeasured(job.built());
  }

  private Measures measured(FilledPlace place) {
    return job.built().measures(place.place());
  }

  private double variance(FilledPlace place) {
    Measures typed = measured(place);
    boolean known = typed.butt().isPresent() && typed.tip().isPresent();
    return known ? 0 : END * END;
  }

  private double outside(Length gap, double deviation) {
    double half = job.rules().printStep().inches() / 2;
    double least = job.rules().length(Setting.GAP_LEAST).inches() - half;
    double most = job.rules().length(Setting.GAP_MOST).inches() + half;
    return below((least - gap.inches()) / deviation) + below((gap.inches() - most) / deviation);
  }

  /** Returns the standard deviation of one mark, in inches, by the corners that were read. */
  private double mark() {
    AsBuilt built = job.built();
    Corners corners = stack.corners();
    List<Double> misfits = new ArrayList<>();
    for (Corner corner : built.readings().keySet()) {
      Corners.At at = corners.at(corner.round(), corner.name());
      double expected = at.firstHigh().plus(at.secondChange()).inches();
      int marks = built.firstReading(corner.round(), corner.name()).isPresent() ? 2 : 4;
      misfits.add((at.high().inches() - expected) / StrictMath.sqrt(marks));
    }
    if (misfits.size() < READINGS_LEAST) {
      return MARK;
    }
    List<Double> sorted = misfits.stream().map(Math::abs).sorted().toList();
    return StrictMath.max(MARK / 2, sorted.get(sorted.size() / 2) / QUARTILE);
  }

  /**
   * Returns the share of a standard normal distribution below a value, to 7.5e-8: Abramowitz and
   * Stegun, Handbook of Mathematical Functions, 26.2.17.
   */
  static double below(double value) {
    if (value > 0) {
      return 1 - below(-value);
    }
    double t = 1 / (1 - 0.2316419 * value);
    double density = StrictMath.exp(-value * value / 2) / StrictMath.sqrt(2 * StrictMath.PI);
    double sum =
        t
            * (0.319381530
                + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    return density * sum;
  }
}
