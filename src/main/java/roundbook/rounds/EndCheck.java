package roundbook.rounds;

import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.stack.FilledPlace;

/**
 * Recomputes from first principles whether an end of a log may not lie at its corner.
 *
 * <p>The bearing is cut into strips along the neck, each as long as the chord of the round log at
 * the depth of its underside, in binary inches.
 *
 * @param job what was asked
 * @param notch the notch of the round
 * @param place what fills the place
 * @param left whether its left end is meant, seen from outside
 * @param rounds how many rounds there are
 */
record EndCheck(Job job, Notch notch, FilledPlace place, boolean left, int rounds) {
  private static final int STRIPS = 4_000;

  /** What the strips may differ from the exact area, and more. */
  private static final double TOLERANCE = 1e-4;

  /** Returns whether an end of a place is such that the rules refuse it. */
  static boolean isRefused(Job job, Notch notch, FilledPlace place, int rounds) {
    return new EndCheck(job, notch, place, true, rounds).isRefused()
        || new EndCheck(job, notch, place, false, rounds).isRefused();
  }

  private boolean isRefused() {
    double thickness = place.wall().thickness().inches();
    double upper = notch.upper().inches();
    double shoulder = diameter(crossing() + overhang());
    double line = diameter(0) + (shoulder - diameter(0)) * overhang() / (crossing() + overhang());
    double least = StrictMath.min(shoulder, line);
    boolean off = shoulder < StrictMath.hypot(thickness, 2 * upper) - TOLERANCE;
    double most = job.rules().number(Setting.BEARING_STOP).doubleValue() / 100;
    return least < thickness - TOLERANCE
        || isCrossed() && off
        || isNotched() && gone(least, thickness) > most + TOLERANCE;
  }

  /** Returns whether a log of this plan lies across this one: all but the last on the ring do. */
  private boolean isCrossed() {
    return place.wall().laidFirst() || place.round() < rounds;
  }

  /**
   * Returns whether the log lies on another one; the first on the ground lie on their whole bed.
   */
  private boolean isNotched() {
    boolean onGround = place.round() < 2 && place.wall().laidFirst();
    return !onGround || job.rules().text(Setting.FIRST_BED).equals("starter");
  }

  /** Returns the share of the bearing that has run off a log as thick all along. */
  private double gone(double diameter, double thickness) {
    double top = notch.lower().inches();
    double drop =
        StackCheck.rounded(
            crossing() / job.rules().number(Setting.SLOPE_RUN).doubleValue(),
            job.rules().length(Setting.PRINT_STEP).inches());
    double sum = 0;
    for (int strip = 0; strip < STRIPS; strip++) {
      double depth = top + drop * (strip + 0.5) / STRIPS;
      double chord = StrictMath.sqrt(Math.max(0, diameter * diameter - 4 * depth * depth));
      sum += Math.max(0, thickness - chord);
    }
    return sum / STRIPS / thickness;
  }

  /** Returns the diameter so far from this end. */
  private double diameter(double fromEnd) {
    double trimmed = place.wall().outside().inches() + 2 * overhang();
    return StackCheck.diameter(place, left ? fromEnd : trimmed - fromEnd, trimmed);
  }

  private double crossing() {
    Wall wall = place.wall();
    Wall across = left ? job.building().after(wall) : job.building().before(wall);
    return across.thickness().inches();
  }

  private double overhang() {
    return job.rules().length(Setting.OVERHANG).inches();
  }
}
