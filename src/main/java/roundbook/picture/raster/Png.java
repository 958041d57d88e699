package roundbook.picture.raster;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * The bytes of a PNG file of one bit a pixel, as the PNG specification (ISO/IEC 15948) lays out.
 *
 * <p>Written by hand because the pixels are at hand in the very form that the file wants, because
 * no text chunk with a date can slip in, and because the window system need not be loaded.
 */
public final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final double INCHES_PER_METRE = 1 / 0.0254;

  /** A tenth larger than the best that can be had, in a tenth of its time. */
  private static final int LEVEL = 5;

  private Png() {}

  /** Returns the file of a raster that is to be shown at so many pixels an inch. */
  public static byte[] of(Raster raster, int pixelsPerInch) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(SIGNATURE);
    file.writeBytes(chunk("IHDR", header(raster)));
    file.writeBytes(chunk("pHYs", density(pixelsPerInch)));
    file.writeBytes(chunk("IDAT", deflated(rows(raster))));
    file.writeBytes(chunk("IEND", new byte[0]));
    return file.toByteArray();
  }

  /** One bit a pixel, grey, no interlace. */
  private static byte[] header(Raster raster) {
    ByteBuffer header = ByteBuffer.allocate(13).putInt(raster.width()).putInt(raster.height());
    return header.put((byte) 1).array();
  }

  /** Pixels a metre, both ways. */
  private static byte[] density(int pixelsPerInch) {
    int perMetre = (int) Math.round(pixelsPerInch * INCHES_PER_METRE);
    return ByteBuffer.allocate(9).putInt(perMetre).putInt(perMetre).put((byte) 1).array();
  }

  /** Rows without a filter, each after a zero byte; grey has a one for white. */
  private static byte[] rows(Raster raster) {
    int stride = raster.stride();
    byte[] rows = new byte[(1 + stride) * raster.height()];
    for (int row = 0; row < raster.height(); row++) {
      raster.whites(row, rows, row * (1 + stride) + 1);
    }
    return rows;
  }

  private static byte[] deflated(byte[] bytes) {
    Deflater deflater = new Deflater(LEVEL);
    try {
      deflater.setInput(bytes);
      deflater.finish();
      return drained(deflater);
    } finally {
      deflater.end();
    }
  }

  private static byte[] drained(Deflater deflater) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] buffer = new byte[8192];
    while (!deflater.finished()) {
      out.write(buffer, 0, deflater.deflate(buffer));
    }
    return out.toByteArray();
  }

  /** Length, name, data and the check over name and data. */
  private static byte[] chunk(String type, byte[] data) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(data);
    ByteBuffer chunk = ByteBuffer.allocate(data.length + 12).putInt(data.length);
    return chunk.put(name).put(data).putInt((int) check.getValue()).array();
  }
}
