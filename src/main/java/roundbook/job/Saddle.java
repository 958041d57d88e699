package roundbook.job;

import roundbook.units.Length;

/**
 * Where a partition crosses a wall away from its corners, so that the wall's logs go through.
 *
 * @param through the wall that goes through
 * @param partition the partition whose logs end there, their tails past the outer face
 * @param from how far its left edge is from the left outside corner of the wall that goes through,
 *     seen from outside
 */
public record Saddle(Wall through, Wall partition, Length from) {
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
