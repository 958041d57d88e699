package roundbook.picture.raster;

/** The surface of a straight stroke with round ends, row by row of pixels; lengths in pixels. */
final class Stroke {
  private final double x;
  private final double y;
  private final double run;
  private final double rise;
  private final double square;
  private final double reach;

  /** The outermost places that the stroke can cover in the row sought last. */
  double left;

  double right;

  /** Makes the stroke that reaches so far to each side of the line between two points. */
  Stroke(Spot from, Spot to, double reach) {
    x = from.x();
    y = from.y();
    run = to.x() - x;
    rise = to.y() - y;
    square = run * run + rise * rise;
    this.reach = reach;
  }

  /** Finds bounds of what the stroke covers within half a pixel of a height. */
  void seek(double height) {
    boolean level = Math.abs(rise) < 1;
    double one = level ? 0 : clamp((height - reach - y) / rise);
    double other = level ? 1 : clamp((height + reach - y) / rise);
    left = x + Math.min(one * run, other * run) - reach;
    right = x + Math.max(one * run, other * run) + reach;
  }

  /** Returns whether a place lies on the stroke. */
  boolean covers(double across, double down) {
    double along = (across - x) * run + (down - y) * rise;
    double part = square == 0 ? 0 : clamp(along / square);
    double off = across - x - part * run;
    double under = down - y - part * rise;
    return off * off + under * under <= reach * reach;
  }

  private static double clamp(double part) {
    return part < 0 ? 0 : part > 1 ? 1 : part;
  }
}
