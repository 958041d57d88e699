package roundbook.takeoff;

import java.util.List;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * Two short logs that can stand for a long one beside an opening, so that the long one is free.
 *
 * <p>The marks stay those of the round; both short logs keep every gap within its limits and hold
 * the bearing at their corner.
 *
 * @param opening the opening that would cut the long log in two
 * @param freed the long log
 * @param left the short log at the left, seen from outside
 * @param right the short log at the right
 */
public record ShortStock(OpeningCut opening, PlacedLog freed, Part left, Part right) {
  /** Returns the two short logs. */
  public List<Log> logs() {
    return List.of(left.log(), right.log());
  }

  /** Returns whether a log is one of the two. */
  public boolean uses(Log log) {
    return logs().contains(log);
  }

  /** Returns the two in their places, the left one first. */
  public List<PlacedLog> placed(Length allowance) {
    return List.of(placed(left, true, allowance), placed(right, false, allowance));
  }

  private PlacedLog placed(Part part, boolean atLeft, Length allowance) {
    Piece piece = new Piece(part.log(), allowance, part.length());
    return new PlacedLog(piece, freed.wall(), freed.round(), part.buttOut() != atLeft);
  }

  /**
   * A short log in its place.
   *
   * @param log the log
   * @param length length to cut it to
   * @param buttOut whether its butt lies at the corner, not at the opening
   */
  public record Part(Log log, Length length, boolean buttOut) {
    /** Returns how far the shoulder lies from the squared butt, the neck being at the corner. */
    public Length shoulder(Length neck) {
      return buttOut ? neck : length.minus(neck);
    }
  }
}
