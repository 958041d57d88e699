package roundbook.picture.canvas;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import roundbook.picture.raster.Box;

/** A finished picture read back pixel by pixel, places given in inches. */
public final class Pixels {
  private final BufferedImage image;

  public Pixels(Picture picture) {
    try {
      image = ImageIO.read(new ByteArrayInputStream(picture.png()));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  int width() {
    return image.getWidth();
  }

  int height() {
    return image.getHeight();
  }

  public boolean black(int column, int row) {
    return image.getRGB(column, row) == 0xff000000;
  }

  /** Returns which part of a box of pixels is black. */
  public double part(Box box) {
    int count = 0;
    int black = 0;
    for (int row = (int) box.top(); row < box.bottom(); row++) {
      for (int column = (int) box.left(); column < box.right(); column++) {
        count++;
        black += black(column, row) ? 1 : 0;
      }
    }
    return black / (double) count;
  }

  /** Returns the same pixels of a box that is measured in points. */
  public static Box pixels(double left, double top, double right, double bottom) {
    double scale = 200 / 72.0;
    return new Box(left * scale, top * scale, right * scale, bottom * scale);
  }
}
