package roundbook.report.list;

import java.util.List;
import java.util.function.Function;
import roundbook.page.Role;
import roundbook.picture.Drawings;
import roundbook.picture.canvas.DrawingFault;
import roundbook.picture.canvas.Picture;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Drawn;
import roundbook.report.frame.ListSheet;

/**
 * Lays full-size drawings on pages of their own, one a page, never scaled.
 *
 * <p>Viewers differ by some hundredths in the width of columns. Narrow columns beside the table let
 * each of them end the page just past the drawing.
 */
final class FullSizePages {
  private static final double POINTS_AN_INCH = 72;

  private static final int NARROW_COLUMNS = 20;
  private static final double NARROW = 0.6;

  private FullSizePages() {}

  /**
   * Puts each drawing on a new page; where none can be made the sheet says so and goes on.
   *
   * @return whether there are drawings
   */
  static boolean put(
      CrewContext context, ListSheet list, Function<Drawings, List<Picture>> making) {
    if (!context.issue().pictures()) {
      return false;
    }
    Drawn drawn = new Drawn(context, list.sheet());
    try {
      List<Picture> pictures = making.apply(drawn.drawings());
      list.margin(NARROW_COLUMNS, NARROW);
      pictures.forEach(picture -> page(drawn, list, picture));
      return !pictures.isEmpty();
    } catch (DrawingFault fault) {
      list.text(Role.NOTE, context.text("picture.missing", fault.getMessage()));
      return false;
    }
  }

  /** A row of a sheet holds at most 409 points, so that a page's drawing lies over two. */
  private static void page(Drawn drawn, ListSheet list, Picture picture) {
    double half = picture.heightInches() * POINTS_AN_INCH / 2;
    if (list.next() > 1) {
      list.breakPage();
    }
    list.free(half);
    drawn.lay(picture, 0, 0, picture.widthInches());
    list.free(half);
  }
}
