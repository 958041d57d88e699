package roundbook.picture;

import java.util.Arrays;
import java.util.List;

/**
 * A page of pixels, each black or white, on which surfaces and strokes are laid.
 *
 * <p>A pixel belongs to a shape when its middle does. Only sums, products and quotients decide
 * that, so that every machine sets the same pixels; that is why no drawing library is used here.
 * Shapes may reach over the edges. Lengths are in pixels.
 */
final class Raster {
  private final int width;
  private final int height;
  private final byte[] bits;

  /** Makes a white page of so many pixels. */
  Raster(int width, int height) {
    this.width = width;
    this.height = height;
    this.bits = new byte[stride() * height];
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Returns whether a pixel is black. */
  boolean black(int column, int row) {
    return (bits[row * stride() + column / 8] >> (7 - column % 8) & 1) == 1;
  }

  /** Returns a row's pixels, eight a byte, the leftmost in the highest bit, a one for black. */
  byte[] row(int row) {
    return Arrays.copyOfRange(bits, row * stride(), (row + 1) * stride());
  }

  /** Fills a closed outline; where it crosses itself, what is round an even number stays free. */
  void fill(List<Spot> outline, Ink ink) {
    Box box = Box.around(outline);
    for (int row = first(box.top()); row < last(box.bottom(), height); row++) {
      double[] crossings = crossings(outline, row + 0.5);
      for (int i = 0; i + 1 < crossings.length; i += 2) {
        span(row, first(crossings[i]), last(crossings[i + 1], width), ink);
      }
    }
  }

  /**
   * Draws a straight stroke with round ends, so far to each side of the line between two points.
   */
  void stroke(Spot from, Spot to, double reach, Ink ink) {
    Box box = Box.between(from, to).grown(reach);
    for (int row = first(box.top()); row < last(box.bottom(), height); row++) {
      Box near = near(from, to, row + 0.5, reach);
      for (int column = first(near.left()); column < last(near.right(), width); column++) {
        if (squareDistance(new Spot(column + 0.5, row + 0.5), from, to) <= reach * reach) {
          set(column, row, ink.black(column, row));
        }
      }
    }
  }

  /** Returns where an outline crosses the middle of a row, from left to right. */
  private static double[] crossings(List<Spot> outline, double y) {
    double[] found = new double[outline.size()];
    int count = 0;
    Spot before = outline.get(outline.size() - 1);
    for (Spot spot : outline) {
      if (spot.y() > y != before.y() > y) {
        double part = (y - before.y()) / (spot.y() - before.y());
        found[count++] = before.x() + part * (spot.x() - before.x());
      }
      before = spot;
    }
    double[] crossings = Arrays.copyOf(found, count);
    Arrays.sort(crossings);
    return crossings;
  }

  /** Returns a box that holds all of the stroke that lies in one row of pixels. */
  private static Box near(Spot from, Spot to, double y, double reach) {
    double rise = to.y() - from.y();
    if (Math.abs(rise) < 1) {
      return Box.between(from, to).grown(reach);
    }
    double low = clamp((y - reach - from.y()) / rise);
    double high = clamp((y + reach - from.y()) / rise);
    double run = to.x() - from.x();
    Spot one = new Spot(from.x() + low * run, y);
    return Box.between(one, new Spot(from.x() + high * run, y)).grown(reach);
  }

  /** Returns the square of the distance of a point from a line between two others. */
  private static double squareDistance(Spot spot, Spot from, Spot to) {
    double run = to.x() - from.x();
    double rise = to.y() - from.y();
    double along = (spot.x() - from.x()) * run + (spot.y() - from.y()) * rise;
    double square = run * run + rise * rise;
    double part = square == 0 ? 0 : clamp(along / square);
    double right = spot.x() - from.x() - part * run;
    double down = spot.y() - from.y() - part * rise;
    return right * right + down * down;
  }

  private static double clamp(double part) {
    return Math.max(0, Math.min(1, part));
  }

  private void span(int row, int from, int to, Ink ink) {
    for (int column = from; column < to; column++) {
      set(column, row, ink.black(column, row));
    }
  }

  private void set(int column, int row, boolean black) {
    int index = row * stride() + column / 8;
    int bit = 1 << (7 - column % 8);
    bits[index] = (byte) (black ? bits[index] | bit : bits[index] & ~bit);
  }

  /** Returns the first pixel whose middle is not before an edge. */
  private static int first(double edge) {
    return (int) Math.max(0, Math.ceil(edge - 0.5));
  }

  /** Returns the pixel after the last whose middle is before an edge. */
  private static int last(double edge, int limit) {
    return (int) Math.min(limit, Math.ceil(edge - 0.5));
  }

  private int stride() {
    return (width + 7) / 8;
  }
}
