package roundbook.job;

import roundbook.units.Length;

/**
 * One wall of the building, a log long between two corners.
 *
 * @param name its short name, such as {@code N}
 * @param outside outside length between the outer faces of the two crossing walls
 * @param laidFirst whether its logs are laid first in every round
 * @param thickness sawn or hewn thickness of its logs
 * @param remarks free text, or empty
 */
public record Wall(
    String name, Length outside, boolean laidFirst, Length thickness, String remarks) {
  /** Compares as any record does; most walls compared are one and the same, which is seen first. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Wall wall
            && name.equals(wall.name)
            && outside.equals(wall.outside)
            && laidFirst == wall.laidFirst
            && thickness.equals(wall.thickness)
            && remarks.equals(wall.remarks);
  }

  /** Returns whether a log serves another wall just as this one. */
  public boolean isLike(Wall other) {
    return outside.equals(other.outside) && thickness.equals(other.thickness);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }
}
