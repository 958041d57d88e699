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
 * @param notes what is special about it
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
    List<Note> notes) {
  /** Copies the list. */
  public PiecePlan {
    notes = List.copyOf(notes);
  }

  /** What is special about a piece. */
  public enum Note {
    /** Its bed is sawn flat at the lower mark, all along; it has no lower notch. */
    BED_FLAT,
    /** Without a lower notch nothing holds it against sliding in along its axis: anchor or peg. */
    ANCHOR_SLIDING,
    /** It stands on a half-log starter with full notches. */
    ON_STARTER,
    /** The foundation under it is higher by the foundation step. */
    ON_STEP,
    /** On a level foundation its crown wants filling underneath. */
    FILL_UNDER,
    /** Without an upper cut nothing holds it against its wall being pushed out: anchor or peg. */
    ANCHOR_PUSHED,
    /** It lies over an opening: keep it whole and straight, with no joint or pin over the frame. */
    HEADER,
    /** An opening takes wood of it: pin it only clear of the cut. */
    CUT_AT_OPENING,
    /** Its middle diameter is estimated: measure before cutting. */
    MID_ESTIMATED,
    /** An end diameter is estimated. */
    END_ESTIMATED,
    /** Its butt end does not hold all marks. */
    BUTT_THIN,
    /** Its tip end does not hold all marks. */
    TIP_THIN,
    /** Only the tail past the corner has wane; it carries nothing. */
    TAIL_WANEY
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
