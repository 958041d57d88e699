package roundbook.takeoff;

import roundbook.units.Length;

/**
 * The buck of an opening and the room over it.
 *
 * <p>The wall comes down past a frame that does not: over it stays {@code f (z_head − z_stand)},
 * with z_stand the height of what it stands on, a log cut under it or the foundation. Bucks here
 * are a head piece and, over a log, a sill piece, both across the opening, with legs between them;
 * a key on each leg slides in a slot of the log ends (common practice).
 *
 * @param clearance room for the mean of radial and tangential shrinkage
 * @param most room for tangential shrinkage, the most to expect; this is what is left
 * @param leg length of the two legs
 * @param across length of the head piece, and of the sill piece where there is one
 * @param sillPiece whether the frame has a sill piece
 * @param pinLeft no pin between this distance from the left corner and {@link #pinRight}
 * @param pinRight the end of that stretch
 */
public record Frame(
    Length clearance,
    Length most,
    Length leg,
    Length across,
    boolean sillPiece,
    Length pinLeft,
    Length pinRight) {
  /** Returns the length of buck board: two legs, a head piece and the sill piece. */
  public Length board() {
    return leg.times(2).plus(across.times(sillPiece ? 2 : 1));
  }

  /** Returns the length of key stock: one on each leg. */
  public Length keys() {
    return leg.times(2);
  }
}
