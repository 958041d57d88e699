package roundbook.report;

import java.util.List;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.report.LiveMap.RoundColumn;
import roundbook.stack.Corners;

/**
 * How high every corner stands against the plan after each round, as formulas of the readings.
 *
 * <p>A corner without a reading keeps what it was out and gains what its lower mark was changed by,
 * in the way of {@link Corners}.
 */
final class LiveCorners {
  private final Live live;
  private final LiveMap map;
  private final List<String> corners;
  private final Corners now;

  LiveCorners(Live live) {
    this.live = live;
    this.map = live.map();
    this.corners = map.building().corners();
    this.now = live.plan().stack().corners();
  }

  /** Puts the table on the working sheet: heights, then changes of the lower marks. */
  void put(SheetBuilder sheet) {
    sheet.row(map.cornerHeadRow()).add(head("working.corner.round"));
    corners.forEach(corner -> sheet.add(head("working.corner.high", corner)));
    corners.forEach(corner -> sheet.add(head("working.corner.change", corner)));
    for (int round = 1; round <= live.plan().rounds(); round++) {
      sheet.nextRow().add(Cell.number(round).role(Role.HELPER));
      for (String corner : corners) {
        sheet.add(high(round, corner));
      }
      for (String corner : corners) {
        sheet.add(change(round, corner));
      }
    }
  }

  private Cell head(String key, Object... values) {
    return Cell.text(live.text(key, values)).role(Role.COLUMN_HEAD);
  }

  private Cell high(int round, String corner) {
    String reading = LiveNames.reading(round, corner);
    String below = round == 1 ? "0" : map.high(round - 1, corner);
    String planned = map.round(round, RoundColumn.LEVEL_HEIGHT);
    String formula =
        "IF(ISNUMBER("
            + reading
            + "),"
            + reading
            + "-"
            + planned
            + ","
            + below
            + "+"
            + map.change(round, corner)
            + ")";
    return Cell.formula(formula, live.number(now.high(round, corner))).role(Role.HELPER);
  }

  private Cell change(int round, String corner) {
    if (round == 1) {
      return Cell.number(0).role(Role.HELPER);
    }
    Wall wall = firstLaid(corner);
    String formula =
        "IF(ISNUMBER("
            + LiveNames.lowerCut(round, wall)
            + "),0,"
            + LevelsSheet.next(live, round - 1, corner)
            + "-"
            + map.round(round, RoundColumn.LOWER)
            + ")";
    return Cell.formula(formula, live.number(now.change(round, corner))).role(Role.HELPER);
  }

  private Wall firstLaid(String corner) {
    return map.walls().stream()
        .filter(Wall::laidFirst)
        .filter(
            wall ->
                map.building().startCorner(wall).equals(corner)
                    || map.building().endCorner(wall).equals(corner))
        .findFirst()
        .orElseThrow();
  }
}
