package roundbook.picture.canvas;

import java.util.List;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;

/** Arrows, for dimensions and for directions. */
public final class Arrows {
  private static final double HEAD = 5.5;
  private static final double SHORTEST_FOR_TWO = 13;

  private Arrows() {}

  /**
   * Draws a dimension line with a head at each end; a short one has its heads outside, pointing in.
   */
  public static void dimension(Canvas canvas, Spot from, Spot to) {
    canvas.line(Line.THIN, from, to);
    double length = distance(from, to);
    if (length >= SHORTEST_FOR_TWO) {
      head(canvas, to, from, HEAD);
      head(canvas, from, to, HEAD);
    } else {
      canvas.line(Line.NORMAL, beside(from, to, -2.5), beside(from, to, 2.5));
      canvas.line(Line.NORMAL, beside(to, from, -2.5), beside(to, from, 2.5));
    }
  }

  /** Draws an arrow with a head of some size at its end. */
  public static void pointer(Canvas canvas, Spot from, Spot to, double head) {
    double length = distance(from, to);
    double part = Math.max(0, (length - head) / length);
    Spot neck =
        new Spot(from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y()));
    canvas.line(Line.HEAVY, from, neck);
    head(canvas, from, to, head);
  }

  /** Fills a slim triangle whose point lies on the end of the line. */
  private static void head(Canvas canvas, Spot from, Spot to, double size) {
    double length = distance(from, to);
    double right = (to.x() - from.x()) / length * size;
    double down = (to.y() - from.y()) / length * size;
    Spot base = to.plus(-right, -down);
    Spot one = base.plus(-down * 0.38, right * 0.38);
    Spot other = base.plus(down * 0.38, -right * 0.38);
    canvas.fill(List.of(to, one, other), Ink.BLACK);
  }

  /** Returns a point square beside one end of a line. */
  private static Spot beside(Spot at, Spot other, double by) {
    double length = distance(at, other);
    return at.plus(-(other.y() - at.y()) / length * by, (other.x() - at.x()) / length * by);
  }

  /** Returns the length of a line, never nought, so that it can be divided by. */
  private static double distance(Spot from, Spot to) {
    double right = to.x() - from.x();
    double down = to.y() - from.y();
    return Math.max(1e-6, StrictMath.sqrt(right * right + down * down));
  }
}
