package roundbook.stack;

import java.util.List;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.units.Length;

/**
 * A piece of a log where it lies: from corner to corner, or from a corner to an opening.
 *
 * @param piece the piece
 * @param wall its wall
 * @param round its round, counted from 1
 * @param buttAtStart whether its butt is the end nearer to the wall's start corner: right, seen
 *     from outside
 * @param fromLeft where its left end lies, from the left trimmed end of the wall, seen from outside
 */
public record PlacedLog(Piece piece, Wall wall, int round, boolean buttAtStart, Length fromLeft) {
  /** Returns whether it reaches to the corner at the left. */
  public boolean isLeft() {
    return fromLeft.isZero();
  }

  /** Returns, of a short log, whether its butt lies at the corner and not at the opening. */
  public boolean buttOut() {
    return buttAtStart != isLeft();
  }

  /**
   * Returns the log with another piece of the same length, as when its diameters are known anew.
   */
  public PlacedLog with(Piece other) {
    return new PlacedLog(other, wall, round, buttAtStart, fromLeft);
  }

  /** Returns where its right end lies, from the left trimmed end of the wall. */
  public Length to() {
    return fromLeft.plus(piece.trimmed());
  }

  /** Returns its diameter at a distance from the left trimmed end of the wall. */
  public Length at(Length distance) {
    return piece.at(buttAtStart ? to().minus(distance) : distance.minus(fromLeft));
  }

  /** Returns where its taper changes, from the left trimmed end of the wall. */
  List<Length> kinks() {
    return piece.log().profile().stations().stream()
        .map(station -> station.fromButt().minus(piece.cutOffButt()))
        .filter(along -> along.isMoreThan(Length.ZERO) && along.isLessThan(piece.trimmed()))
        .map(along -> buttAtStart ? to().minus(along) : fromLeft.plus(along))
        .toList();
  }
}
