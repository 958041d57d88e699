package roundbook.report.wall;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.Setting;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Figure.Look;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.wall.WallSheets.WallColumn;

/** A chart of a wall's gaps by joint, with the least and the largest that the job allows. */
final class WallChart {
  private static final int LEFT_GAP = WallSheets.COLUMNS.number(WallColumn.LEFT);
  private static final int LEAST = WallColumn.values().length + 2;
  private static final double LEAST_HEIGHT = 150;
  private static final double MOST_HEIGHT = 330;
  private static final double MARGIN = 6;

  /** The least room that it takes on a page, in points. */
  static final double LEAST_ROOM = LEAST_HEIGHT + MARGIN;

  private WallChart() {}

  /**
   * Puts the chart under the current row. It repeats the table, so it has no page of its own: where
   * there is no room on the table's page it is for the screen only.
   *
   * @param table the rows of the wall's logs, from the top down
   * @param left how much room is left on their page, in points
   * @return the last row that is printed
   */
  static int put(LiveContext live, SheetBuilder sheet, Area table, double left) {
    if (table.bottom() == table.top()) {
      return sheet.row();
    }
    Area joints = new Area(table.top(), 1, table.bottom() - 1, 1);
    for (int row = joints.top(); row <= joints.bottom(); row++) {
      sheet.put(row, LEAST, limit(live, RuleLine.GAP_LEAST, Setting.GAP_LEAST));
      sheet.put(row, LEAST + 1, limit(live, RuleLine.GAP_MOST, Setting.GAP_MOST));
    }
    int above = sheet.row();
    boolean printed = left >= LEAST_ROOM;
    sheet.nextRow().height(MARGIN);
    sheet.nextRow().height(printed ? StrictMath.min(left - MARGIN, MOST_HEIGHT) : MOST_HEIGHT);
    List<Figure.Series> series = new ArrayList<>();
    series.add(series(live, sheet, joints, LEFT_GAP, Look.BAR_DARK));
    series.add(series(live, sheet, joints, LEFT_GAP + 1, Look.BAR_PALE));
    series.add(series(live, sheet, joints, LEFT_GAP + 2, Look.BAR_HATCHED));
    series.add(series(live, sheet, joints, LEAST, Look.LINE_DASHED));
    series.add(series(live, sheet, joints, LEAST + 1, Look.LINE_DOTTED));
    Area over = new Area(sheet.row(), 1, sheet.row(), table.right());
    String title = live.text("wall.chart", live.unit().symbol());
    sheet.figure(
        new Figure.Chart(
            title,
            Figure.Axes.upright(live.text("wall.chart.joints"), live.unit().symbol()),
            series,
            new Figure.Over(over),
            live.text("wall.chart.alt")));
    return printed ? sheet.row() : above;
  }

  /** Returns a limit's cell, one for each joint. */
  private static Cell limit(LiveContext live, RuleLine line, Setting setting) {
    double now = live.number(live.rules().length(setting));
    return Cell.formula(live.map().rule(line), now).role(Role.HELPER);
  }

  /** Returns the bars or line of one column. */
  private static Figure.Series series(
      LiveContext live, SheetBuilder sheet, Area joints, int column, Look look) {
    String[] names = {"left", "middle", "right", "least", "most"};
    int number = column < LEAST ? column - LEFT_GAP : column - LEAST + 3;
    return new Figure.Series(
        live.text("wall.chart." + names[number]),
        sheet.name(),
        joints,
        joints.moved(0, column - 1),
        look);
  }
}
