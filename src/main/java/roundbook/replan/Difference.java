package roundbook.replan;

/**
 * One thing that is printed otherwise in another plan.
 *
 * @param kind what it is
 * @param round the round it belongs to; 0 for none
 * @param place the wall or corner, or what is counted, or empty; of a quantity its item and values
 * @param was as it was, or empty where it is new
 * @param now as it is now, or empty where it is gone
 */
public record Difference(DifferenceKind kind, int round, String place, String was, String now) {
  /** What can be different. */
  public enum DifferenceKind {
    /** A round is there or is not. */
    ROUND,
    /** The size of a round with its marks. */
    MARKS,
    /** The log in a place. */
    LOG,
    /** How a log is cut. */
    CUT,
    /** The lower mark of a corner that is put right. */
    CORNER,
    /** The height at which corners are read. */
    HEIGHT,
    /** The gap under a log at both ends and the middle. */
    GAP,
    /** The log over an opening. */
    HEADER,
    /** What the yard is to send. */
    ORDER,
    /** A quantity to buy or left over. */
    QUANTITY
  }
}
