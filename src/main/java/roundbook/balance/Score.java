package roundbook.balance;

/**
 * How good a choice is: its parts add up to the one number that the search makes small.
 *
 * @param evenness squared errors of the gaps at all stations, in unit²
 * @param leastGap weighted squared shortfalls from the least gap, in unit²
 * @param spread weighted squared excess spreads of the rounds, in unit²
 * @param inversion weighted squared steps up from a round to a larger one above, in unit²
 * @param waste the cost of the cuts, in unit²
 * @param faults what the gaps and rounds look like to the crew
 */
public record Score(
    double evenness,
    double leastGap,
    double spread,
    double inversion,
    double waste,
    Faults faults) {

  /**
   * What can be seen and counted on the walls.
   *
   * @param rms root of the mean squared gap error, in units
   * @param worst largest gap error without its sign, in units
   * @param tight joints with a gap under the least one at some station
   * @param inversions rounds larger than the one below
   * @param refused logs in a round too large for their tips, few where that costs much
   * @param offcut length cut off beyond the allowance, in fine units
   */
  public record Faults(
      double rms, double worst, int tight, int inversions, int refused, long offcut) {}

  /** Returns F, the sum of the parts, in unit². */
  public double total() {
    return evenness + leastGap + spread + inversion + waste;
  }
}
