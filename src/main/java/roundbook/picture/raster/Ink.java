package roundbook.picture.raster;

/** What a surface is filled with; patterns stand for colours on a black and white page. */
public enum Ink {
  /** All black. */
  BLACK((column, row) -> true),
  /** All white: what lay there before is wiped out. */
  WHITE((column, row) -> false),
  /** Rising strokes: wood that is cut away. */
  HATCH((column, row) -> rising(column, row)),
  /** Strokes both ways: the end of a crossing log. */
  CROSS((column, row) -> rising(column, row) || rising(column, -row)),
  /** Sparse dots: a surface to be told from the paper. */
  DOTS((column, row) -> dot(column, row));

  private static final int PITCH = 12;
  private static final int STROKE = 2;

  /** Pixels of one pitch down and two pitches across, eight a byte: there the pattern repeats. */
  private final byte[][] pattern = new byte[PITCH][2 * PITCH / 8];

  Ink(Pixel pixel) {
    for (int row = 0; row < PITCH; row++) {
      for (int column = 0; column < 2 * PITCH; column++) {
        pattern[row][column / 8] |= (byte) (pixel.black(column, row) ? 0x80 >> column % 8 : 0);
      }
    }
  }

  /** Says which pixels are black. */
  private interface Pixel {
    boolean black(int column, int row);
  }

  /** Returns the pixels of eight columns in a row, the leftmost in the highest bit, ones black. */
  byte eight(int eightOfColumns, int row) {
    return pattern[row % PITCH][eightOfColumns % (2 * PITCH / 8)];
  }

  private static boolean rising(int column, int row) {
    return Math.floorMod(column + row, PITCH) < STROKE;
  }

  private static boolean dot(int column, int row) {
    int shift = Math.floorMod(row, PITCH) < PITCH / 2 ? 0 : PITCH / 2;
    return Math.floorMod(row, PITCH / 2) < STROKE && Math.floorMod(column + shift, PITCH) < STROKE;
  }
}
