package roundbook.picture.canvas;

import java.util.Arrays;
import java.util.Objects;
import roundbook.picture.raster.Png;
import roundbook.picture.raster.Raster;

/**
 * A finished drawing as a PNG file, with its true size.
 *
 * @param png the file's bytes, one bit a pixel, not to be changed afterwards
 * @param widthPx width in pixels
 * @param heightPx height in pixels
 * @param widthInches width on paper at 100 percent
 * @param heightInches height on paper at 100 percent
 * @param smallestPoints the size of its smallest letters in points at 100 percent
 * @param altText the words for those who cannot see it
 */
public record Picture(
    byte[] png,
    int widthPx,
    int heightPx,
    double widthInches,
    double heightInches,
    double smallestPoints,
    String altText) {
  /** Copies the bytes. */
  public Picture {
    png = png.clone();
    Objects.requireNonNull(altText);
  }

  /** Returns the drawing on a canvas. */
  public static Picture of(Canvas canvas, String altText) {
    Raster raster = canvas.raster();
    double scale = Canvas.PIXELS_PER_INCH;
    return new Picture(
        Png.of(raster, Canvas.PIXELS_PER_INCH),
        raster.width(),
        raster.height(),
        raster.width() / scale,
        raster.height() / scale,
        canvas.smallestLetters(),
        altText);
  }

  /** Returns a copy of the bytes. */
  @Override
  public byte[] png() {
    return png.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Picture picture
        && Arrays.equals(png, picture.png)
        && altText.equals(picture.altText);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Arrays.hashCode(png), altText);
  }
}
