package roundbook.job;

import roundbook.units.Length;

/**
 * Where a wall ends at another away from that one's corners, so that the other's logs go through: a
 * partition, a side of a wing, or the wall that a wing shares where another goes on along the wing.
 * Where two partitions cross, each has such a place for the other.
 *
 * @param through the wall that goes through
 * @param partition the wall whose logs end there
 * @param from how far its left edge is from the left outside corner of the wall that goes through,
 *     seen from outside
 * @param inward whether the wall comes from outside, so that its tails show past the inner face
 */
public record Saddle(Wall through, Wall partition, Length from, boolean inward) {
  /**
   * Returns whether two partitions cross, so that both go through and their saddles are level above
   * and below.
   */
  public boolean isLevel() {
    return through.isPartition();
  }

  /** Returns how far its right edge is from that corner: {@code p + T_P}. */
  public Length to() {
    return from.plus(partition.thickness());
  }

  /**
   * Returns how far its edge nearer to the butt is from the trimmed butt end: {@code o + p}, or
   * {@code Λ − (o + p + T_P)} where the butt lies right.
   */
  public Length fromButt(boolean buttAtStart, Length overhang) {
    return overhang.plus(buttAtStart ? through.outside().minus(to()) : from);
  }
}
