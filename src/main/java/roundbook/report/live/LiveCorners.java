package roundbook.report.live;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import roundbook.job.Building;
import roundbook.page.Cell;
import roundbook.page.CellNames;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.stack.Corners;
import roundbook.stack.Levelling;
import roundbook.units.Length;

/**
 * How high every corner stands against the plan in each round, as formulas of the readings.
 *
 * <p>A corner without a reading keeps what it was out and gains what its lower marks were changed
 * by, in the way of {@link Corners}; what is done about it is that of {@link
 * roundbook.stack.Levelling}.
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
          Cell.formula(pare(round, corner), live.number(at.pare()))
              .named(CellNames.pare(round, corner));
      case LEFT ->
          Cell.formula(
              map.corner(round, corner, CornerColumn.HIGH)
                  + "-"
                  + map.corner(round, corner, CornerColumn.PARE),
              live.number(at.high().minus(at.pare())));
      case EVEN -> Cell.formula(even(round, corner), live.number(at.even()));
      case NEXT -> next(round, corner);
    };
  }

  /** Returns the cell of what a round's corners have in common, or of what is held of it. */
  Cell cell(int round, RoundColumn column) {
    Building building = map.building();
    if (column == RoundColumn.COMMON) {
      String high = common(round, CornerColumn.HIGH);
      return Cell.formula(high, live.number(now.common(round, building))).role(Role.HELPER);
    }
    boolean holds = live.rules().holdsHeight() && round < live.plan().rounds();
    Length held = now.held(round, building, live.rules());
    return (holds ? Cell.formula(held(round), live.number(held)) : Cell.number(0))
        .role(Role.HELPER);
  }

  /** Returns the middle one of the two middle heights and the plan. */
  private String common(int round, CornerColumn column) {
    String highs = map.corners(round, column);
    int count = corners.size();
    String low = "SMALL(" + highs + "," + (count + 1) / 2 + ")";
    return "MEDIAN(0," + low + ",SMALL(" + highs + "," + (count / 2 + 1) + "))";
  }

  /** Returns an even share of what all have in common for each round left, limited. */
  private String held(int round) {
    String even = map.corners(round, CornerColumn.EVEN);
    String most = map.rule(RuleLine.MOST_CHANGE);
    String gap = map.rule(RuleLine.GAP);
    String wider = "(" + map.rule(RuleLine.GAP_MOST) + "-" + gap + ")/2";
    String narrower = "(" + gap + "-" + map.rule(RuleLine.GAP_LEAST) + ")/2";
    String share =
        "-" + map.round(round, RoundColumn.COMMON) + "/" + (live.plan().rounds() - round);
    String up = "MIN(" + most + "-MAX(0," + even + ")," + wider + "," + share + ")";
    return "MAX(-MIN(" + most + "+MIN(0," + even + ")," + narrower + ")," + up + ")";
  }

  /** Returns how high a corner is before a round, against the plan as it goes on from below. */
  static String under(LiveContext live, int round, String corner) {
    if (round == 1) {
      return "0";
    }
    String left = live.map().corner(round - 1, corner, CornerColumn.LEFT);
    return live.rules().holdsHeight()
        ? left
        : left + "-" + live.map().round(round - 1, RoundColumn.COMMON);
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
    String expected =
        under(live, round, corner) + "+" + map.corner(round, corner, CornerColumn.CHANGE);
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
            + TypedBox.LOWER_CUT.named(round, map.building().wallAt(corner, true).name())
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
    String low =
        common(round, CornerColumn.FIRST_HIGH)
            + "-"
            + map.corner(round, corner, CornerColumn.FIRST_HIGH);
    String limited =
        "MAX(-" + most + "-" + before + ",MIN(" + most + "-" + before + "," + low + "))";
    return "IF(AND(ISNUMBER("
        + TypedBox.FIRST_READING.named(round, corner)
        + "),NOT(ISNUMBER("
        + TypedBox.LOWER_CUT.named(round, map.building().wallAt(corner, false).name())
        + ")),"
        + unsettled(round, CornerColumn.FIRST_HIGH)
        + "),"
        + live.toStep(chart + "+" + limited)
        + "-"
        + chart
        + ",0)";
  }

  /** Returns a corner's next lower mark: the chart's and what it is changed by. */
  private Cell next(int round, String corner) {
    if (round == live.plan().rounds()) {
      return Cell.text("–");
    }
    String formula =
        live.toStep(
            String.join(
                "+",
                map.round(round + 1, RoundColumn.LOWER),
                map.corner(round, corner, CornerColumn.EVEN),
                map.round(round, RoundColumn.HELD)));
    return Cell.formula(formula, live.number(new Readings(live, round).next(corner)));
  }

  /**
   * Returns what a corner's next lower mark is changed by: what it is low once its top is pared,
   * limited both ways; 0 where all corners are within half the tolerance of each other then.
   */
  private String even(int round, String corner) {
    String most = map.rule(RuleLine.MOST_CHANGE);
    String low =
        common(round, CornerColumn.LEFT) + "-" + map.corner(round, corner, CornerColumn.LEFT);
    String change = "MAX(-" + most + ",MIN(" + most + "," + low + "))";
    return "IF(" + unsettled(round, CornerColumn.LEFT) + "," + live.toStep(change) + ",0)";
  }

  /** Returns whether the next lower marks change, in the way of {@link Levelling#settled}. */
  private String unsettled(int round, CornerColumn column) {
    String highs = map.corners(round, column);
    String most = "MAX(" + highs + ")";
    String least = "MIN(" + highs + ")";
    String common = common(round, column);
    String out = "MAX(" + most + "-" + common + "," + common + "-" + least + ")";
    double small = live.number(Levelling.leastChange(live.rules()));
    String spread = most + "-" + least + "-" + map.rule(RuleLine.TOLERANCE) + "/2";
    return "AND(ROUND(" + out + "-" + small + ",6)>=0,ROUND(" + spread + ",6)>0)";
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
    String common = map.round(round, RoundColumn.COMMON);
    String over = "(" + map.corner(round, corner, CornerColumn.HIGH) + "-" + common + ")";
    String tolerance = map.rule(RuleLine.TOLERANCE);
    String most = map.rule(RuleLine.MOST_CHANGE);
    String second = "LARGE(" + map.corners(round, CornerColumn.HIGH) + ",2)-" + common;
    String alone =
        String.join(
            ",",
            "ROUND(" + over + ",6)>0",
            "ROUND(" + over + "-" + tolerance + ",6)>=0",
            "ROUND(" + second + "-" + tolerance + "/2,6)<=0");
    return "IF(COUNT("
        + all
        + ")<"
        + corners.size()
        + ",0,IF(OR(AND("
        + alone
        + "),ROUND("
        + over
        + "-"
        + most
        + ",6)>0),MIN("
        + most
        + ","
        + live.toStep(over + "-" + tolerance + "/2")
        + "),0))";
  }
}
