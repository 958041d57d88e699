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

  /** Completes the diameters; empty when none was read. */
  static Optional<Diameters> of(
      Length length,
      Optional<Length> butt,
      Optional<Length> mid,
      Optional<Length> tip,
      boolean upperLog) {
    if (butt.isEmpty() && mid.isEmpty() && tip.isEmpty()) {
      return Optional.empty();
    }
    Length half = length.dividedBy(2).timesRatio(TAPER_NUMERATOR, TAPER_DENOMINATOR);
    Length endTip = tip.orElseGet(() -> tipOf(butt, mid, half));
    Length endButt = butt.orElseGet(() -> buttOf(mid, tip, endTip, half));
    Length middle = mid.orElseGet(() -> middleOf(endButt, endTip, half, upperLog));
    Sources sources = new Sources(source(butt), source(mid), source(tip));
    return Optional.of(new Diameters(endButt, middle, endTip, sources));
  }

  /** Goes on from tip and middle in a straight line, else by the usual taper. */
  private static Length buttOf(
      Optional<Length> mid, Optional<Length> tip, Length endTip, Length half) {
    boolean line = mid.isPresent() && tip.isPresent() && !tip.get().isMoreThan(mid.get());
    return line ? mid.get().times(2).minus(tip.get()) : mid.orElse(endTip.plus(half)).plus(half);
  }

  private static Length tipOf(Optional<Length> butt, Optional<Length> mid, Length half) {
    return mid.map(middle -> middle.minus(half))
        .orElseGet(() -> butt.orElseThrow().minus(half.times(2)));
  }

  private static Length middleOf(Length butt, Length tip, Length half, boolean upperLog) {
    Length mean = butt.minus(tip).dividedBy(2);
    return tip.plus(upperLog ? mean : mean.least(half));
  }

  private static Source source(Optional<Length> read) {
    return read.isPresent() ? Source.MEASURED : Source.ESTIMATED;
  }
}
