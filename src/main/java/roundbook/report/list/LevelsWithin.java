package roundbook.report.list;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.live.Readings;
import roundbook.report.mark.ShoulderFall;
import roundbook.stack.Course;
import roundbook.units.Length;

/** What was read within each round, the second-laid logs' lower marks, and what is to be pared. */
final class LevelsWithin {
  private static final double ROW = 17;
  private static final double HEAD = 32;
  private final LiveContext live;
  private final SheetBuilder sheet;
  private final List<String> corners;

  LevelsWithin(LiveContext live, SheetBuilder sheet) {
    this.live = live;
    this.sheet = sheet;
    this.corners = live.map().building().corners();
  }

  /** Puts the table under the current row, in the columns of the table after the rounds. */
  void put() {
    sheet.nextRow().height(HEAD);
    sheet.addAcross(3, head("levels.within.planned", live.names(true)));
    sheet.addAcross(corners.size() + 1, head("levels.within.read", live.names(true)));
    sheet.addAcross(corners.size() + 1, shaded("levels.within.lower", live.names(false)));
    sheet.addAcross(1, head("levels.within.pare", live.names(false)));
    sheet.nextRow().height(ROW);
    sheet.add(head("levels.head.round")).add(head("levels.head.tape"));
    sheet.add(Cell.text(live.unit().symbol()).role(Role.COLUMN_HEAD));
    corners.forEach(corner -> sheet.add(Cell.text(corner).role(Role.COLUMN_HEAD)));
    sheet.add(head("levels.head.spread")).add(shaded("levels.within.chart"));
    corners.forEach(corner -> sheet.add(Cell.text(corner).role(Role.COLUMN_HEAD_SHADED)));
    sheet.add(head("levels.within.after"));
    live.plan().choice().courses().forEach(this::row);
  }

  private Cell head(String key, Object... values) {
    return Cell.text(live.text(key, values)).role(Role.COLUMN_HEAD);
  }

  private Cell shaded(String key, Object... values) {
    return head(key, values).role(Role.COLUMN_HEAD_SHADED);
  }

  private void row(Course course) {
    int round = course.round();
    String planned = live.map().round(round, RoundColumn.FIRST_LEVEL);
    Length now = live.plan().stack().firstLevelHeight(round);
    sheet.nextRow().height(ROW);
    sheet.add(Cell.number(round).role(Role.BODY_CENTRE));
    sheet.add(live.tape(planned, now, Role.BODY_CENTRE));
    sheet.add(live.printed(planned, now, Role.BODY_CENTRE));
    for (String corner : corners) {
      String name = TypedBox.FIRST_READING.named(round, corner);
      Optional<Length> read = live.plan().job().built().firstReading(round, corner);
      sheet.add(Readings.cell(live, "IF(ISNUMBER(" + name + ")," + name + ",\"\")", read));
    }
    sheet.add(Readings.cell(live, spread(round), spreadNow(round)));
    String chart = live.map().round(round, RoundColumn.LOWER);
    sheet.add(live.mark(chart, course.notch().lower(), Role.BODY_CENTRE));
    corners.forEach(corner -> lower(course, corner));
    sheet.add(Cell.formula(pare(round), pareNow(round)).role(Role.BODY));
  }

  private String spread(int round) {
    String read =
        corners.stream()
            .map(corner -> TypedBox.FIRST_READING.named(round, corner))
            .collect(Collectors.joining(","));
    return "IF(COUNT(" + read + ")=0,\"\",MAX(" + read + ")-MIN(" + read + "))";
  }

  private Optional<Length> spreadNow(int round) {
    List<Length> read =
        corners.stream()
            .flatMap(corner -> live.plan().job().built().firstReading(round, corner).stream())
            .toList();
    Optional<Length> least = read.stream().reduce(Length::least);
    return read.stream().reduce(Length::most).map(most -> most.minus(least.orElseThrow()));
  }

  private void lower(Course course, String corner) {
    String change = live.map().corner(course.round(), corner, CornerColumn.SECOND_CHANGE);
    String chart = live.map().round(course.round(), RoundColumn.LOWER);
    Length changed = live.plan().stack().corners().change(course.round(), false, corner);
    ShoulderFall fall = new ShoulderFall(live, false, corner);
    Length now = course.notch().lower().plus(changed).plus(fall.more());
    sheet.add(live.mark(chart + "+" + change + fall.plus(), now, Role.RESULT));
    Area own = Area.cell(sheet.row(), 3 + corners.size() + 3 + corners.indexOf(corner));
    sheet.rule(new Rule.LooksLike(own, change + "<>0", Role.CHANGED));
  }

  /** Returns which tops are to be pared down by how much; empty for none. */
  private String pare(int round) {
    return corners.stream()
        .map(
            corner -> {
              String amount = live.map().corner(round, corner, CornerColumn.PARE);
              String text = LiveMath.literal(corner + " ") + "&" + live.math().mark(amount);
              return "IF(" + amount + ">0," + text + "&\" \",\"\")";
            })
        .collect(Collectors.joining("&"));
  }

  private String pareNow(int round) {
    Readings readings = new Readings(live, round);
    return corners.stream()
        .filter(corner -> !readings.pare(corner).isZero())
        .map(corner -> corner + " " + live.math().markNow(readings.pare(corner)) + " ")
        .collect(Collectors.joining());
  }
}
