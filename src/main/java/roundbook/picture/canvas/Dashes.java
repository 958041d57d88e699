package roundbook.picture.canvas;

import java.util.ArrayList;
import java.util.List;
import roundbook.picture.raster.Spot;

/** A dashed line on its way: strokes and blanks in turn, running on round corners. */
final class Dashes {
  private final double[] pattern;
  private int index;
  private double left;

  /** Starts a line of strokes and blanks of these lengths; none is an unbroken line. */
  Dashes(double... pattern) {
    this.pattern = pattern.clone();
    this.left = pattern.length == 0 ? 0 : pattern[0];
  }

  /**
   * One stroke.
   *
   * @param from where it begins
   * @param to where it ends
   */
  record Dash(Spot from, Spot to) {}

  /** Returns the strokes on the way from one point to the next. */
  List<Dash> along(Spot from, Spot to) {
    if (pattern.length == 0) {
      return List.of(new Dash(from, to));
    }
    double length = StrictMath.sqrt(square(to.x() - from.x()) + square(to.y() - from.y()));
    List<Dash> dashes = new ArrayList<>();
    double at = 0;
    while (at < length) {
      double step = Math.min(left, length - at);
      if (index % 2 == 0) {
        dashes.add(
            new Dash(between(from, to, at / length), between(from, to, (at + step) / length)));
      }
      at += step;
      spend(step);
    }
    return dashes;
  }

  /** Uses up a part of the stroke or blank under way and goes on to the next when it is done. */
  private void spend(double step) {
    left -= step;
    if (left <= 1e-9) {
      index = (index + 1) % pattern.length;
      left = pattern[index];
    }
  }

  private static Spot between(Spot from, Spot to, double part) {
    double x = from.x() + part * (to.x() - from.x());
    return new Spot(x, from.y() + part * (to.y() - from.y()));
  }

  private static double square(double value) {
    return value * value;
  }
}
