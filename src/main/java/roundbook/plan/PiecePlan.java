package roundbook.plan;

import java.util.List;
import roundbook.notch.NeckFit;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * A placed log with every distance, weight and doubt that its page shows.
 *
 * @param placed the log in its place
 * @param buttAt the corner at which its butt lies, such as {@code NW}
 * @param nearShoulder distance of the near shoulder from the trimmed butt end
 * @param farShoulder distance of the far shoulder from the trimmed butt end
 * @param centre height of its centre line above the underside of the first bed
 * @param weight what it weighs and where it balances
 * @param buttFit whether the butt end holds its marks
 * @param tipFit whether the tip end holds its marks
 * @param notes what is special about it, in words
 */
public record PiecePlan(
    PlacedLog placed,
    String buttAt,
    Length nearShoulder,
    Length farShoulder,
    Length centre,
    Weight weight,
    NeckFit buttFit,
    NeckFit tipFit,
    List<String> notes) {
  /** Copies the list. */
  public PiecePlan {
    notes = List.copyOf(notes);
  }

  /**
   * What a trimmed, sawn piece weighs, green, before notches and bed are cut: an estimate.
   *
   * @param pounds its weight in pounds
   * @param balance distance of its balance point from the trimmed butt end
   */
  public record Weight(double pounds, Length balance) {
    /** Returns the weight in kilograms (one pound is 0.45359237 kg by definition). */
    public double kilograms() {
      return pounds * 0.45359237;
    }
  }
}
