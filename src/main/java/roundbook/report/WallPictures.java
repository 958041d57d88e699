package roundbook.report;

import roundbook.job.Wall;
import roundbook.page.SheetBuilder;

/** The drawing of a wall on its sheet. */
final class WallPictures {
  private static final double HEIGHT = 300;

  private WallPictures() {}

  /** Puts the drawing in the current row of the sheet. */
  static void put(Live live, Wall wall, SheetBuilder sheet) {
    sheet.height(HEIGHT);
  }
}
