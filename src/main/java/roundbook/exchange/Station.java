package roundbook.exchange;

import roundbook.job.Job;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.units.Length;

/**
 * A piece in the numbers that the score is made from, in inches.
 *
 * @param butt diameter at the trimmed butt end
 * @param mid diameter at the middle
 * @param tip diameter at the trimmed tip end
 * @param exact the middle diameter in nanometres, from which sizes are taken
 * @param offcut length cut off beyond the squaring allowance
 */
record Station(double butt, double mid, double tip, long exact, double offcut) {
  static Station of(Piece piece, Job job) {
    Length allowance = job.rules().length(Setting.SQUARING_ALLOWANCE).times(2);
    Length offcut = piece.log().length().minus(piece.trimmed()).minus(allowance);
    Length mid = piece.mid();
    return new Station(
        piece.butt().inches(),
        mid.inches(),
        piece.tip().inches(),
        mid.nanometres(),
        offcut.inches());
  }

  /** Returns the diameter at the butt, the middle or the tip: 0, 1 or 2. */
  double at(int station) {
    return station == 0 ? butt : station == 1 ? mid : tip;
  }
}
