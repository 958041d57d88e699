package roundbook.exchange;

import java.util.Optional;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * Why a round has the logs it has, in numbers.
 *
 * @param round the round
 * @param thin least middle diameter of its trimmed logs
 * @param thick largest of them
 * @param handThin least middle diameter of any log that serves a wall
 * @param handThick largest of them
 * @param thickerAbove logs of higher rounds that are thicker than the thickest of this round
 * @param longOnShort its logs that would be long enough for a longer wall
 * @param next the next best choice: the exchange of one of its logs that costs least
 */
public record Reason(
    int round,
    Length thin,
    Length thick,
    Length handThin,
    Length handThick,
    int thickerAbove,
    int longOnShort,
    Optional<Exchange> next) {
  /** Returns by how much the middle diameters of the round differ. */
  public Length spread() {
    return thick.minus(thin);
  }

  /**
   * One log exchanged for another.
   *
   * @param out the log of the round
   * @param in the tag of the other log
   * @param from where the other log stands; empty for a spare
   * @param cost by how much the score would grow, in square inches
   */
  public record Exchange(FilledPlace out, String in, Optional<FilledPlace> from, double cost) {}
}
