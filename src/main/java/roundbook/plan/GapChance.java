package roundbook.plan;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
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
 * <p>Four marks lie between two logs of a wall at each end, two at the middle by the mean of both
 * ends; each errs by as much as the corners read otherwise than expected, a half of it, for a
 * reading after a round has four marks too: by the median, which one wrong reading does not move.
 * Until eight corners were read a mark errs by 1/16 in (1.6 mm). An end whose diameter was not
 * measured errs by 1/8 in (3.2 mm): a middle does not tell how a log was hewn there (both *common
 * practice*). Errors are taken as normal.
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

  /** Half of a normal distribution lies within so many standard deviations. */
  private static final double QUARTILE = 0.6745;

  /** Returns the chance that the gap of a joint is outside the limits at one station at least. */
  double outside(Joint joint) {
    double mark = mark();
    double end = variance(joint.lower()) + variance(joint.upper());
    double ends = StrictMath.sqrt(4 * mark * mark + end / 4);
    double middle = StrictMath.sqrt(2) * mark;
    double inside =
        (1 - outside(joint.left(), ends))
            * (1 - outside(joint.middle(), middle))
            * (1 - outside(joint.right(), ends));
    return 1 - inside;
  }

  /** Returns whether both logs of a joint are known as hewn and the upper one is not cut yet. */
  boolean canTell(Joint joint) {
    return !job.built().isCut(joint.upper().place())
        && isMeasured(joint.lower())
        && isMeasured(joint.upper());
  }

  private boolean isMeasured(FilledPlace place) {
    return place.logs().stream()
        .allMatch(log -> job.built().knowsMiddle(place.placeOf(log), log.piece().log().tag()));
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
