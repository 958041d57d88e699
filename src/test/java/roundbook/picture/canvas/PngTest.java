package roundbook.picture.canvas;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Raster;
import roundbook.picture.raster.Spot;

/** Reads the files back with the JDK's own reader and by the chunks of the PNG specification. */
class PngTest {
  @Test
  void anotherReaderSeesTheSamePixels() throws IOException {
    Canvas canvas = canvas();
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture(canvas).png()));
    Raster raster = canvas.raster();
    assertEquals(raster.width(), image.getWidth());
    assertEquals(raster.height(), image.getHeight());
    assertEquals(1, image.getColorModel().getPixelSize());
    for (int row = 0; row < raster.height(); row++) {
      for (int column = 0; column < raster.width(); column++) {
        int wanted = raster.black(column, row) ? 0xff000000 : 0xffffffff;
        assertEquals(wanted, image.getRGB(column, row), column + ", " + row);
      }
    }
  }

  @Test
  void onlyTheFourChunksThatAPictureNeeds() {
    assertEquals(List.of("IHDR", "pHYs", "IDAT", "IEND"), chunks(picture(canvas()).png()));
  }

  @Test
  void twoHundredPixelsAnInch() {
    byte[] png = picture(canvas()).png();
    String text = new String(png, StandardCharsets.ISO_8859_1);
    ByteBuffer density = ByteBuffer.wrap(png, text.indexOf("pHYs") + 4, 9);
    assertEquals(Math.round(200 / 0.0254), density.getInt());
    assertEquals(Math.round(200 / 0.0254), density.getInt());
    assertEquals(1, density.get());
  }

  @Test
  void theSizeOnPaperIsThatOfItsPixels() {
    Picture picture = picture(canvas());
    assertEquals(picture.widthPx() / 200.0, picture.widthInches());
    assertEquals(picture.heightPx() / 200.0, picture.heightInches());
    assertEquals(1.25, picture.widthInches());
  }

  @Test
  void theBytesCannotBeChangedFromOutside() {
    Picture picture = picture(canvas());
    picture.png()[0] = 0;
    assertArrayEquals(picture(canvas()).png(), picture.png());
    assertEquals(picture(canvas()), picture);
    assertEquals(picture(canvas()).hashCode(), picture.hashCode());
  }

  private static Canvas canvas() {
    Canvas canvas = new Canvas(90, 61);
    canvas.fill(new Box(5, 5, 30, 30), Ink.HATCH);
    canvas.line(Line.CENTRE, new Spot(0, 0), new Spot(90, 61));
    canvas.write(Label.of("7N", 20, new Spot(45, 40)).centred());
    return canvas;
  }

  private static Picture picture(Canvas canvas) {
    return Picture.of(canvas, "words");
  }

  private static List<String> chunks(byte[] png) {
    List<String> chunks = new ArrayList<>();
    ByteBuffer file = ByteBuffer.wrap(png).position(8);
    while (file.remaining() > 0) {
      byte[] name = new byte[4];
      int length = file.getInt();
      file.get(name);
      file.position(file.position() + length + 4);
      chunks.add(new String(name, StandardCharsets.US_ASCII));
    }
    assertTrue(chunks.size() > 1);
    return chunks;
  }
}
