package roundbook.intake;

import java.util.Optional;
import roundbook.job.Log.Source;
import roundbook.job.Log.Sources;
import roundbook.units.Length;

/**
 * The three diameters of a log, what was missing estimated.
 *
 * <p>Butts flare, so half of butt and tip overstates the middle of a butt log by more than an inch.
 * Measured on spruce and pine stems, the middle of a butt log is best taken as {@code tip +
 * min((butt − tip) / 2, 0.13 in/ft × length / 2)}; on an upper log the mean of butt and tip is
 * right.
 *
 * @param butt at the butt end
 * @param mid at half the length
 * @param tip at the tip end
 * @param sources which were measured
 */
record Diameters(Length butt, Length mid, Length tip, Sources sources) {
  private static final long TAPER_NUMERATOR = 13;
  private static final long TAPER_DENOMINATOR = 1200;

  /** Completes the diameters, those that were not read being null; empty when none was read. */
  static Optional<Diameters> of(Length length, Length butt, Length mid, Length tip, boolean upper) {
    if (butt != null && mid != null && tip != null) {
      return Optional.of(new Diameters(butt, mid, tip, Sources.MEASURED));
    }
    if (butt == null && mid == null && tip == null) {
      return Optional.empty();
    }
    Length half = length.dividedBy(2).timesRatio(TAPER_NUMERATOR, TAPER_DENOMINATOR);
    Length endTip = tip == null ? tipOf(butt, mid, half) : tip;
    Length endButt = butt == null ? buttOf(mid, tip, endTip, half) : butt;
    Length middle = mid == null ? middleOf(endButt, endTip, half, upper) : mid;
    Sources sources = new Sources(source(butt), source(mid), source(tip));
    return Optional.of(new Diameters(endButt, middle, endTip, sources));
  }

  /** Goes on from tip and middle in a straight line, else by the usual taper. */
  private static Length buttOf(Length mid, Length tip, Length endTip, Length half) {
    if (mid != null && tip != null && !tip.isMoreThan(mid)) {
      return mid.times(2).minus(tip);
    }
    return (mid == null ? endTip.plus(half) : mid).plus(half);
  }

  private static Length tipOf(Length butt, Length mid, Length half) {
    return mid == null ? butt.minus(half.times(2)) : mid.minus(half);
  }

  private static Length middleOf(Length butt, Length tip, Length half, boolean upper) {
    Length mean = butt.minus(tip).dividedBy(2);
    return tip.plus(upper ? mean : mean.least(half));
  }

  private static Source source(Length read) {
    return read == null ? Source.ESTIMATED : Source.MEASURED;
  }
}
