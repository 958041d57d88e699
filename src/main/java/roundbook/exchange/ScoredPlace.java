package roundbook.exchange;

import roundbook.job.Job;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * What fills a place in the numbers that the score is made from, in inches.
 *
 * @param butt diameter at the inside face near the butt
 * @param mid diameter at the middle
 * @param tip diameter at the inside face near the tip
 * @param exact the middle diameter in nanometres, from which sizes are taken
 * @param waste what falls off beyond the squaring allowance, in square inches
 */
record ScoredPlace(double butt, double mid, double tip, long exact, double waste) {
  static ScoredPlace of(FilledPlace place, Job job, double waste) {
    Length mid = place.mid();
    Length overhang = job.rules().overhang();
    return new ScoredPlace(
        place.at(place.nearShoulder(job.building(), overhang)).inches(),
        mid.inches(),
        place.at(place.farShoulder(job.building(), overhang)).inches(),
        mid.nanometres(),
        waste);
  }

  /** Returns the diameter at the butt, the middle or the tip: 0, 1 or 2. */
  double at(int station) {
    return station == 0 ? butt : station == 1 ? mid : tip;
  }
}
