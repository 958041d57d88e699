package roundbook.picture.raster;

import java.util.Arrays;
import java.util.List;

/**
 * A page of pixels, each black or white, on which surfaces and strokes are laid.
 *
 * <p>A pixel belongs to a shape when its middle does. Only sums, products and quotients decide
 * that, so that every machine sets the same pixels; that is why no drawing library is used here.
 * Shapes may reach over the edges. Lengths are in pixels.
 */
public final class Raster {
  private final int width;
  private final int height;
  private final int stride;
  private final byte[] bits;

  /** Makes a white page of so many pixels. */
  public Raster(int width, int height) {
    this.width = width;
    this.height = height;
    this.stride = (width + 7) / 8;
    this.bits = new byte[stride * height];
  }

  /** Returns how many pixels a row has. */
  public int width() {
    return width;
  }

  /** Returns how many rows there are. */
  public int height() {
    return height;
  }

  /** Returns the bytes of a row, eight pixels each. */
  int stride() {
    return stride;
  }

  /** Returns whether a pixel is black. */
  public boolean black(int column, int row) {
    return (bits[row * stride + column / 8] >> (7 - column % 8) & 1) == 1;
  }

  /** Copies a row's pixels, eight a byte, the leftmost in the highest bit, a one for white. */
  void whites(int row, byte[] to, int at) {
    int from = row * stride;
    for (int i = 0; i < stride; i++) {
      to[at + i] = (byte) ~bits[from + i];
    }
  }

  /** Fills a closed outline; where it crosses itself, what is round an even number stays free. */
  public void fill(List<Spot> outline, Ink ink) {
    Box box = Box.around(outline);
    double[] crossings = new double[outline.size()];
    int end = last(box.bottom(), height);
    for (int row = first(box.top()); row < end; row++) {
      int count = crossings(outline, row + 0.5, crossings);
      for (int i = 0; i + 1 < count; i += 2) {
        span(row, first(crossings[i]), last(crossings[i + 1], width), ink);
      }
    }
  }

  /**
   * Draws a straight stroke with round ends, so far to each side of the line between two points.
   *
   * <p>What it covers of a row is in one piece, so it is looked for from both sides.
   */
  public void stroke(Spot from, Spot to, double reach, Ink ink) {
    Stroke stroke = new Stroke(from, to, reach);
    int end = last(Math.max(from.y(), to.y()) + reach, height);
    for (int row = first(Math.min(from.y(), to.y()) - reach); row < end; row++) {
      double y = row + 0.5;
      stroke.seek(y);
      int left = first(stroke.left);
      int right = last(stroke.right, width);
      while (left < right && !stroke.covers(left + 0.5, y)) {
        left++;
      }
      while (left < right && !stroke.covers(right - 0.5, y)) {
        right--;
      }
      span(row, left, right, ink);
    }
  }

  /** Finds where an outline crosses the middle of a row, from left to right; returns how often. */
  private static int crossings(List<Spot> outline, double y, double[] found) {
    int count = 0;
    Spot before = outline.get(outline.size() - 1);
    for (int i = 0; i < outline.size(); i++) {
      Spot spot = outline.get(i);
      if (spot.y() > y != before.y() > y) {
        double part = (y - before.y()) / (spot.y() - before.y());
        found[count++] = before.x() + part * (spot.x() - before.x());
      }
      before = spot;
    }
    Arrays.sort(found, 0, count);
    return count;
  }

  /** Lays pixels of a row, the last one not, a byte at a time. */
  private void span(int row, int from, int to, Ink ink) {
    if (from >= to) {
      return;
    }
    int first = from / 8;
    int last = (to - 1) / 8;
    for (int eight = first; eight <= last; eight++) {
      int mask = eight == first ? 0xff >> from % 8 : 0xff;
      mask &= eight == last ? 0xff << 7 - (to - 1) % 8 : 0xff;
      int index = row * stride + eight;
      bits[index] = (byte) (bits[index] & ~mask | ink.eight(eight, row) & mask);
    }
  }

  /** Returns the first pixel whose middle is not before an edge. */
  private static int first(double edge) {
    return (int) Math.max(0, Math.ceil(edge - 0.5));
  }

  /** Returns the pixel after the last whose middle is before an edge. */
  private static int last(double edge, int limit) {
    return (int) Math.min(limit, Math.ceil(edge - 0.5));
  }
}
