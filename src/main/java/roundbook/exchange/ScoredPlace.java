package roundbook.exchange;

import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * What fills a place in the numbers that the score is made from, in inches.
 *
 * @param butt diameter at the trimmed butt end
 * @param mid diameter at the middle
 * @param tip diameter at the trimmed tip end
 * @param exact the middle diameter in nanometres, from which sizes are taken
 * @param offcut length cut off beyond the squaring allowance
 */
record ScoredPlace(double butt, double mid, double tip, long exact, double offcut) {
  static ScoredPlace of(FilledPlace place, Job job) {
    Length offcut = place.offcut(job.rules().length(Setting.SQUARING_ALLOWANCE));
    Length mid = place.mid();
    return new ScoredPlace(
        place.butt().inches(),
        mid.inches(),
        place.tip().inches(),
        mid.nanometres(),
        offcut.inches());
  }

  /** Returns the diameter at the butt, the middle or the tip: 0, 1 or 2. */
  double at(int station) {
    return station == 0 ? butt : station == 1 ? mid : tip;
  }
}
