package roundbook.job;

import roundbook.units.Length;

/**
 * The part of a log that is laid in a wall, after both ends are cut.
 *
 * @param log the log it is cut from
 * @param cutOffButt how much is cut off the log's butt end
 * @param trimmed the length left between the two cuts
 */
public record Piece(Log log, Length cutOffButt, Length trimmed) {
  /** Returns the natural diameter at a distance from the trimmed butt end. */
  public Length at(Length fromButt) {
    return log.profile().at(cutOffButt.plus(fromButt));
  }

  /** Returns the diameter at the trimmed butt end. */
  public Length butt() {
    return at(Length.ZERO);
  }

  /**
   * Returns the diameter at the middle of the trimmed piece, from which a round's size is taken.
   */
  public Length mid() {
    return at(trimmed.dividedBy(2));
  }

  /** Returns the diameter at the trimmed tip end. */
  public Length tip() {
    return at(trimmed);
  }

  /** Returns how much falls off the tip end. */
  public Length fallsOff() {
    return log.length().minus(cutOffButt).minus(trimmed);
  }
}
