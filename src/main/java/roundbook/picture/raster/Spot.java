package roundbook.picture.raster;

/**
 * A point of a drawing, in points of 1/72 inch from its top left corner.
 *
 * @param x to the right
 * @param y downwards
 */
public record Spot(double x, double y) {
  /** Returns the point moved right and down. */
  public Spot plus(double right, double down) {
    return new Spot(x + right, y + down);
  }
}
