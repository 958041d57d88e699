package roundbook.takeoff;

import roundbook.stack.PlacedLog;
import roundbook.units.Length;
import roundbook.wood.Species;

/**
 * The wood of one placed log, cubic inches, and what it weighs, pounds.
 *
 * <p>Caution: weights follow from published means. Logs of one kind differ; the spread runs from
 * wood all of heart to wood all of sap, and gear is chosen by its upper end.
 *
 * @param log the log
 * @param species what its name was taken for
 * @param round volume of the trimmed piece while round
 * @param sawn volume once sawn or hewn, before any notch
 * @param finished volume once notched, bedded and cut for openings
 * @param weights what the sawn piece weighs
 * @param balance its balance point from the trimmed butt, before notches
 */
public record PieceWood(
    PlacedLog log,
    Species.Match species,
    double round,
    double sawn,
    double finished,
    Weights weights,
    Length balance) {
  /**
   * Weights in pounds.
   *
   * @param green of the sawn piece, green, by the mean of its species
   * @param least if it were all heartwood
   * @param most if it were all sapwood; for choosing gear
   * @param service of the finished piece at the moisture in service
   */
  public record Weights(double green, double least, double most, double service) {}

  /** Returns whether its weights, or how far they spread, rest on what stands in for a source. */
  public boolean standsIn() {
    return species.standIn() || species.species().spreadStandsIn();
  }

  /** Returns the volume of the slabs. */
  public double slabs() {
    return round - sawn;
  }

  /** Returns the most that the trimmed piece may weigh while it is still round, in pounds. */
  public double roundPoundsAtMost() {
    return weights.most() * round / sawn;
  }

  /** Returns what notches, bed and openings take off the sawn piece. */
  public double cutAway() {
    return sawn - finished;
  }
}
