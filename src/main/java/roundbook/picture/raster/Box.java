package roundbook.picture.raster;

import java.util.List;

/**
 * An upright rectangle of a drawing, in points from its top left corner.
 *
 * @param left the left edge
 * @param top the top edge, above the bottom and so the smaller number
 * @param right the right edge
 * @param bottom the bottom edge
 */
public record Box(double left, double top, double right, double bottom) {
  /** Returns the box around these points. */
  public static Box around(List<Spot> spots) {
    if (spots.isEmpty()) {
      return new Box(0, 0, 0, 0);
    }
    double left = spots.get(0).x();
    double right = left;
    double top = spots.get(0).y();
    double bottom = top;
    for (int i = 1; i < spots.size(); i++) {
      Spot spot = spots.get(i);
      left = Math.min(left, spot.x());
      right = Math.max(right, spot.x());
      top = Math.min(top, spot.y());
      bottom = Math.max(bottom, spot.y());
    }
    return new Box(left, top, right, bottom);
  }

  /** Returns the box grown by so much on every side. */
  public Box grown(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }

  /** Returns whether two boxes share more than an edge. */
  public boolean overlaps(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** Returns whether this box lies wholly inside another. */
  public boolean inside(Box other) {
    return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
  }

  /** Returns the width. */
  public double width() {
    return right - left;
  }

  /** Returns the height. */
  public double height() {
    return bottom - top;
  }

  /** Returns the middle. */
  public Spot middle() {
    return new Spot((left + right) / 2, (top + bottom) / 2);
  }

  /** Returns the four corners, clockwise from the top left. */
  public List<Spot> corners() {
    return List.of(
        new Spot(left, top), new Spot(right, top), new Spot(right, bottom), new Spot(left, bottom));
  }
}
