package roundbook.plan;

import java.util.List;
import roundbook.job.AsBuilt;
import roundbook.notch.NeckFit;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * A filled place with every distance, weight and doubt that its page shows.
 *
 * @param placed what fills it
 * @param buttAt the corner at which its butt lies, such as {@code NW}
 * @param nearShoulder distance of the near shoulder from the trimmed butt end
 * @param farShoulder distance of the far shoulder from the trimmed butt end
 * @param centre height of its centre line above the underside of the first bed
 * @param weight what it weighs and where it balances
 * @param buttFit what its butt end loses
 * @param tipFit what its tip end loses
 * @param notes what is special about it
 * @param halves the two short logs that lie there instead, left then right; none: it is one log
 */
public record PiecePlan(
    FilledPlace placed,
    String buttAt,
    Length nearShoulder,
    Length farShoulder,
    Length centre,
    Weight weight,
    NeckFit buttFit,
    NeckFit tipFit,
    List<Note> notes,
    List<Half> halves) {
  /** Copies the lists. */
  public PiecePlan {
    halves = List.copyOf(halves);
    notes = List.copyOf(notes);
  }

  /**
   * One of two short logs beside an opening.
   *
   * @param placed the log in its place
   * @param opening the opening's name
   * @param corner the corner at its other end
   * @param shoulder distance of its only shoulder from its squared butt
   * @param weight what it weighs and where it balances
   * @param fit what its end at the corner loses
   */
  public record Half(
      PlacedLog placed,
      String opening,
      String corner,
      Length shoulder,
      Weight weight,
      NeckFit fit) {
    /** Returns whether it lies left of the opening, seen from outside. */
    public boolean left() {
      return placed.isLeft();
    }

    /** Returns whether its butt lies at the corner, not at the opening. */
    public boolean buttOut() {
      return placed.buttOut();
    }

    /** Returns how it is known in what is built and measured. */
    public AsBuilt.Place place() {
      return new AsBuilt.Place(placed.round(), placed.wall().name()).side(left());
    }
  }

  /** Returns the weight in pounds of all that lies there. */
  public double pounds() {
    return halves.isEmpty()
        ? weight.pounds()
        : halves.stream().mapToDouble(half -> half.weight().pounds()).sum();
  }

  /** Returns the logs that lie there: itself, or both short ones. */
  public List<PlacedLog> logs() {
    return placed.logs();
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
    /** Its butt end is graded look or stop. */
    BUTT_THIN,
    /** Its tip end is graded look or stop. */
    TIP_THIN
  }

  /**
   * What a trimmed, sawn piece weighs, green, before notches and bed are cut: an estimate.
   *
   * @param pounds its weight in pounds
   * @param most the most that it may weigh, in pounds; gear is chosen by it
   * @param standsIn whether that rests on what stands in for a source
   * @param balance distance of its balance point from the trimmed butt end
   */
  public record Weight(double pounds, double most, boolean standsIn, Length balance) {
    /** A weight that is known. */
    public Weight(double pounds, Length balance) {
      this(pounds, pounds, false, balance);
    }

    /** Returns the weight in kilograms (one pound is 0.45359237 kg by definition). */
    public double kilograms() {
      return pounds * 0.45359237;
    }
  }
}
