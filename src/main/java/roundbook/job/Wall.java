package roundbook.job;

import roundbook.units.Length;

/**
 * One wall of the building, a log long between two corners.
 *
 * @param name its short name, such as {@code N}
 * @param outside outside length between the outer faces of the two crossing walls; of a wing's side
 *     from its outer corner to the far face of the wall that it dies in
 * @param laidFirst whether its logs are laid first in every round
 * @param thickness sawn or hewn thickness of its logs
 * @param remarks free text, or empty
 * @param stand where it stands
 */
public record Wall(
    String name, Length outside, boolean laidFirst, Length thickness, String remarks, Stand stand) {
  /** A wall in the ring of the only pen. */
  public Wall(String name, Length outside, boolean laidFirst, Length thickness, String remarks) {
    this(name, outside, laidFirst, thickness, remarks, Stand.RING);
  }

  /** Compares as any record does; most walls compared are one and the same, which is seen first. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Wall wall
            && name.equals(wall.name)
            && outside.equals(wall.outside)
            && laidFirst == wall.laidFirst
            && thickness.equals(wall.thickness)
            && remarks.equals(wall.remarks)
            && stand.equals(wall.stand);
  }

  /** Returns the same wall in another stand. */
  public Wall at(Stand other) {
    return new Wall(name, outside, laidFirst, thickness, remarks, other);
  }

  /** Returns a wall that is longer by so much. */
  public Wall longer(Length by) {
    return new Wall(name, outside.plus(by), laidFirst, thickness, remarks, stand);
  }

  /** Returns whether it is a partition between two walls that go through. */
  public boolean isPartition() {
    return stand.isPartition();
  }

  /** Returns whether it tells on which wall of the house its pen stands, as of a wing is told. */
  public boolean isOnWall() {
    return stand.between().size() == 1;
  }

  /** Returns its name without the number of its pen, such as {@code N} of {@code N2}. */
  String side() {
    return name.replaceAll("\\d+$", "");
  }

  /** Returns the number at the end of its name; empty where it has none. */
  String number() {
    return name.substring(side().length());
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
