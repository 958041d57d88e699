package roundbook.report.live;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.CellNames;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.stack.Corners;

/**
 * How high every corner stands against the plan in each round, as formulas of the readings.
 *
 * <p>A corner without a reading keeps what it was out and gains what its lower marks were changed
 * by, in the way of {@link Corners}.
 */
final class LiveCorners {
  private final LiveContext live;
  private final LiveMap map;
  private final List<String> corners;
  private final Corners now;

  LiveCorners(LiveContext live) {
    this.live = live;
    this.map = live.map();
    this.corners = map.building().corners();
    this.now = live.plan().stack().corners();
  }

  /** Puts the table on the working sheet, a column for each value of each corner. */
  void put(SheetBuilder sheet) {
    sheet.row(map.cornerHeadRow()).add(head("working.corner.round"));
    for (CornerColumn column : CornerColumn.values()) {
      String key = "working.corner." + column.name().toLowerCase(Locale.ROOT);
      corners.forEach(corner -> sheet.add(head(key, corner)));
    }
    for (int round = 1; round <= live.plan().rounds(); round++) {
      sheet.nextRow().add(Cell.number(round).role(Role.HELPER));
      for (CornerColumn column : CornerColumn.values()) {
        for (String corner : corners) {
          sheet.add(cell(round, corner, column).role(Role.HELPER));
        }
      }
    }
  }

  private Cell head(String key, Object... values) {
    return Cell.text(live.text(key, values)).role(Role.COLUMN_HEAD);
  }

  private Cell cell(int round, String corner, CornerColumn column) {
    Corners.At at = now.at(round, corner);
    return switch (column) {
      case HIGH -> Cell.formula(high(round, corner), live.number(at.high()));
      case CHANGE -> change(round, corner);
      case FIRST_HIGH -> Cell.formula(firstHigh(round, corner), live.number(at.firstHigh()));
      case SECOND_CHANGE ->
          Cell.formula(secondChange(round, corner), live.number(at.secondChange()));
      case PARE ->
          Cell.formula(pare(round, corner), live.number(new Readings(live, round).pare(corner)))
              .named(CellNames.pare(round, corner));
      case NEXT -> next(round, corner);
    };
  }

  /**
   * Returns how high a corner is after a round: as read, else as the first-laid log lets expect.
   */
  private String high(int round, String corner) {
    String expected =
        map.corner(round, corner, CornerColumn.FIRST_HIGH)
            + "+"
            + map.corner(round, corner, CornerColumn.SECOND_CHANGE);
    return read(
        TypedBox.READING.named(round, corner),
        map.round(round, RoundColumn.LEVEL_HEIGHT),
        expected);
  }

  /** Returns how high a corner is on the first-laid log: as read, else as the round below lets. */
  private String firstHigh(int round, String corner) {
    String below = round == 1 ? "0" : map.corner(round - 1, corner, CornerColumn.HIGH);
    String expected = below + "+" + map.corner(round, corner, CornerColumn.CHANGE);
    return read(
        TypedBox.FIRST_READING.named(round, corner),
        map.round(round, RoundColumn.FIRST_LEVEL),
        expected);
  }

  private static String read(String reading, String planned, String expected) {
    return "IF(ISNUMBER(" + reading + ")," + reading + "-" + planned + "," + expected + ")";
  }

  private Cell change(int round, String corner) {
    if (round == 1) {
      return Cell.number(0);
    }
    String formula =
        "IF(ISNUMBER("
            + TypedBox.LOWER_CUT.named(round, wallAt(corner, true).name())
            + "),0,"
            + map.corner(round - 1, corner, CornerColumn.NEXT)
            + "-"
            + map.round(round, RoundColumn.LOWER)
            + ")";
    return Cell.formula(formula, live.number(now.change(round, true, corner)));
  }

  /**
   * Returns what the second-laid log's lower mark is changed by: what the first-laid one reads low,
   * limited both ways with what the round has changed there already; 0 without a reading.
   */
  private String secondChange(int round, String corner) {
    String chart = map.round(round, RoundColumn.LOWER);
    String most = map.rule(RuleLine.MOST_CHANGE);
    String before = map.corner(round, corner, CornerColumn.CHANGE);
    String low = "-" + map.corner(round, corner, CornerColumn.FIRST_HIGH);
    String limited =
        "MAX(-" + most + "-" + before + ",MIN(" + most + "-" + before + "," + low + "))";
    return "IF(AND(ISNUMBER("
        + TypedBox.FIRST_READING.named(round, corner)
        + "),NOT(ISNUMBER("
        + TypedBox.LOWER_CUT.named(round, wallAt(corner, false).name())
        + ")),"
        + unsettled(round, CornerColumn.FIRST_HIGH)
        + "),"
        + live.toStep(chart + "+" + limited)
        + "-"
        + chart
        + ",0)";
  }

  /**
   * Returns a corner's next lower mark: {@code r(L' + e)}, e being what the corner is low.
   *
   * <p>The change is limited both ways; where every corner is within half the tolerance it is L'.
   */
  private Cell next(int round, String corner) {
    if (round == live.plan().rounds()) {
      return Cell.text("–");
    }
    String chart = map.round(round + 1, RoundColumn.LOWER);
    String high = map.corner(round, corner, CornerColumn.HIGH);
    String most = map.rule(RuleLine.MOST_CHANGE);
    String change = "MAX(-" + most + ",MIN(" + most + ",-" + high + "))";
    String formula =
        "IF("
            + unsettled(round, CornerColumn.HIGH)
            + ","
            + live.toStep(chart + "+" + change)
            + ","
            + chart
            + ")";
    return Cell.formula(formula, live.number(new Readings(live, round).next(corner)));
  }

  /** Returns whether a corner is further out than half the tolerance. */
  private String unsettled(int round, CornerColumn column) {
    String highs = map.corners(round, column);
    String most = "MAX(" + highs + ")";
    String least = "MIN(" + highs + ")";
    String out = String.join(",", most + "-" + least, most, "-" + least);
    return "ROUND(MAX(" + out + ")-" + map.rule(RuleLine.TOLERANCE) + "/2,6)>0";
  }

  /**
   * Returns how much a top is to be pared down, as {@link roundbook.stack.Levelling#pare} has it; 0
   * until all corners are read.
   */
  private String pare(int round, String corner) {
    String all =
        corners.stream()
            .map(each -> TypedBox.READING.named(round, each))
            .collect(Collectors.joining(","));
    String over = "(" + TypedBox.READING.named(round, corner) + "-MIN(" + all + "))";
    String tolerance = map.rule(RuleLine.TOLERANCE);
    return "IF(COUNT("
        + all
        + ")<"
        + corners.size()
        + ",0,IF(OR("
        + over
        + "=0,ROUND("
        + over
        + "-"
        + tolerance
        + ",6)<0),0,MIN("
        + map.rule(RuleLine.MOST_CHANGE)
        + ","
        + live.toStep(over + "-" + tolerance + "/2")
        + ")))";
  }

  private Wall wallAt(String corner, boolean first) {
    return map.walls().stream()
        .filter(wall -> wall.laidFirst() == first)
        .filter(
            wall ->
                map.building().startCorner(wall).equals(corner)
                    || map.building().endCorner(wall).equals(corner))
        .findFirst()
        .orElseThrow();
  }
}
