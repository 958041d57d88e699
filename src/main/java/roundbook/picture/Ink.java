package roundbook.picture;

/** What a surface is filled with; patterns stand for colours on a black and white page. */
enum Ink {
  /** All black. */
  BLACK,
  /** All white: what lay there before is wiped out. */
  WHITE,
  /** Rising strokes: wood that is cut away. */
  HATCH,
  /** Strokes both ways: the end of a crossing log. */
  CROSS,
  /** Sparse dots: a surface to be told from the paper. */
  DOTS;

  private static final int PITCH = 12;
  private static final int STROKE = 2;

  /** Returns whether the pixel of this column and row is black. */
  boolean black(int column, int row) {
    return switch (this) {
      case BLACK -> true;
      case WHITE -> false;
      case HATCH -> rising(column, row);
      case CROSS -> rising(column, row) || rising(column, -row);
      case DOTS -> dot(column, row);
    };
  }

  private static boolean rising(int column, int row) {
    return Math.floorMod(column + row, PITCH) < STROKE;
  }

  private static boolean dot(int column, int row) {
    int shift = Math.floorMod(row, PITCH) < PITCH / 2 ? 0 : PITCH / 2;
    return Math.floorMod(row, PITCH / 2) < STROKE && Math.floorMod(column + shift, PITCH) < STROKE;
  }
}
