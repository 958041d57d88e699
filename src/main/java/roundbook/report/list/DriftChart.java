package roundbook.report.list;

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
import roundbook.report.live.LiveMap;
import roundbook.units.Length;

/**
 * A chart of how far each corner is above or below the plan, round by round.
 *
 * <p>Where a corner was read it is as read; after the last reading it is as expected with the lower
 * marks that put it right. Its numbers stand right of what is printed.
 */
final class DriftChart {
  private static final Look[] LINES = {
    Look.LINE, Look.LINE_DASHED, Look.LINE_DOTTED, Look.LINE_CHAIN
  };
  private static final double HEIGHT = 230;

  private final LiveContext live;
  private final SheetBuilder sheet;
  private final int column;
  private final List<String> corners;

  /**
   * Begins the chart.
   *
   * @param column the first column right of what is printed
   */
  DriftChart(LiveContext live, SheetBuilder sheet, int column) {
    this.live = live;
    this.sheet = sheet;
    this.column = column + 1;
    this.corners = live.map().building().corners();
  }

  /** Puts the numbers beside the rounds whose first one stands in a row, and returns their area. */
  void put(int top) {
    sheet.put(top - 1, column, head(live.text("levels.drift.round")));
    for (int index = 0; index < corners.size(); index++) {
      sheet.put(top - 1, column + 1 + index, head(corners.get(index)));
    }
    sheet.put(top - 1, column + 1 + corners.size(), head(live.text("levels.drift.high")));
    sheet.put(top - 1, column + 2 + corners.size(), head(live.text("levels.drift.low")));
    for (int round = 1; round <= live.plan().rounds(); round++) {
      row(top + round - 1, round);
    }
    int row = sheet.nextRow().height(HEIGHT).row();
    Area rounds = new Area(top, column, top + live.plan().rounds() - 1, column);
    sheet.figure(
        new Figure.Chart(
            live.text("levels.drift", live.unit().symbol()),
            Figure.Axes.upright(live.text("levels.drift.round"), live.unit().symbol()),
            series(rounds),
            new Figure.Over(new Area(row, 1, row, column - 2)),
            live.text("levels.drift.alt")));
  }

  private static Cell head(String text) {
    return Cell.text(text).role(Role.COLUMN_HEAD);
  }

  private void row(int at, int round) {
    sheet.put(at, column, Cell.number(round).role(Role.HELPER));
    for (int index = 0; index < corners.size(); index++) {
      String corner = corners.get(index);
      double now = live.number(live.plan().stack().corners().high(round, corner));
      Cell cell =
          Cell.formula(live.map().corner(round, corner, LiveMap.CornerColumn.HIGH), now)
              .role(Role.HELPER);
      sheet.put(at, column + 1 + index, cell);
    }
    Length most = live.rules().length(Setting.LEVEL_TOLERANCE);
    String tolerance = live.map().rule(LiveMap.RuleLine.TOLERANCE);
    Cell high = Cell.formula(tolerance, live.number(most)).role(Role.HELPER);
    sheet.put(at, column + 1 + corners.size(), high);
    Cell low = Cell.formula("-" + tolerance, -live.number(most)).role(Role.HELPER);
    sheet.put(at, column + 2 + corners.size(), low);
  }

  private List<Figure.Series> series(Area rounds) {
    List<Figure.Series> series = new ArrayList<>();
    for (int index = 0; index < corners.size(); index++) {
      Look look = LINES[index % LINES.length];
      series.add(line(corners.get(index), rounds, 1 + index, look));
    }
    int high = 1 + corners.size();
    series.add(line(live.text("levels.drift.high"), rounds, high, Look.LINE_LIMIT));
    series.add(line(live.text("levels.drift.low"), rounds, high + 1, Look.LINE_LIMIT));
    return series;
  }

  private Figure.Series line(String name, Area rounds, int right, Look look) {
    return new Figure.Series(name, sheet.name(), rounds, rounds.moved(0, right), look);
  }
}
