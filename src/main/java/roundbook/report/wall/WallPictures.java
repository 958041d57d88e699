package roundbook.report.wall;

import java.util.List;
import java.util.Optional;
import roundbook.job.Opening;
import roundbook.job.Wall;
import roundbook.page.SheetBuilder;
import roundbook.picture.canvas.Picture;
import roundbook.report.frame.Drawn;
import roundbook.report.live.LiveContext;
import roundbook.units.Length;

/** The drawing of a wall on its sheet. */
final class WallPictures {
  private static final double WIDTH = 6.9;
  private static final double POINTS = 72;

  /** Inches left free under the drawing. */
  private static final double UNDER = 0.1;

  private WallPictures() {}

  /**
   * Puts the drawing in the current row of the sheet; the table that has no room goes to the next
   * page, for a smaller drawing could not be read.
   *
   * @param room how high it may be for the table to stay on its page, in points
   * @param roomWithChart how high it may be for the chart to stay there too; it is made lower for
   *     that where its rounds can still be told apart
   * @return the first row of the page that the table is on
   */
  static int put(
      LiveContext live, Wall wall, SheetBuilder sheet, double room, double roomWithChart) {
    Drawn drawn = new Drawn(live.context(), sheet);
    List<Picture> pictures =
        drawn.made(
            () ->
                List.of(
                    drawn
                        .drawings()
                        .elevation(
                            wall,
                            live.plan().job().openings(),
                            opening -> settling(live, opening),
                            roomWithChart - UNDER * POINTS)));
    double high = 0;
    for (Picture picture : pictures) {
      high = drawn.lay(picture, 0, 0, WIDTH);
    }
    drawn.room(high + UNDER);
    if (high * POINTS <= room) {
      return 1;
    }
    sheet.breakAfter(sheet.row());
    return sheet.row() + 1;
  }

  /** Returns the room left over an opening's frame. */
  private static Optional<Length> settling(LiveContext live, Opening opening) {
    return live.plan().takeoff().openings().stream()
        .filter(cut -> cut.opening().equals(opening))
        .map(cut -> cut.frame().most())
        .findFirst();
  }
}
