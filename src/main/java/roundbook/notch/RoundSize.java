package roundbook.notch;

import java.util.List;
import roundbook.units.Length;

/**
 * The one size that all logs of a round share for their notches.
 *
 * @param sum the sum of the middle diameters of the trimmed logs
 * @param count how many logs the round has
 * @param step the step that sizes are taken to; zero takes the exact mean
 */
public record RoundSize(Length sum, int count, Length step) {
  /** Returns the size of a round of these middle diameters. */
  public static RoundSize of(List<Length> mids, Length step) {
    return new RoundSize(mids.stream().reduce(Length.ZERO, Length::plus), mids.size(), step);
  }

  /** Returns the mean middle diameter, to the nearest nanometre. */
  public Length mean() {
    return sum.dividedBy(count);
  }

  /**
   * Returns D, the mean rounded to the nearest step, ties up (half an inch: common practice):
   * {@code floor(round(mean / step, 6) + 1/2) × step}.
   */
  public Length taken() {
    return sum.meanRoundedTo(count, step);
  }
}
