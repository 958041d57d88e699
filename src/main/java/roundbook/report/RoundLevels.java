package roundbook.report;

import java.util.List;
import java.util.Optional;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.report.LiveMap.RoundColumn;
import roundbook.units.Length;

/** The boxes for the corner readings after a round, and the lower marks of this round's corners. */
final class RoundLevels {
  private static final int LEFT = 25;
  private static final String HOLE = "\u0001";
  private final Live live;
  private final int round;
  private final SheetBuilder sheet;
  private final List<String> corners;

  RoundLevels(Live live, int round, SheetBuilder sheet) {
    this.live = live;
    this.round = round;
    this.sheet = sheet;
    this.corners = live.map().building().corners();
  }

  /** Puts the boxes right of the table whose heading stands in a row. */
  void put(int top) {
    Area head = new Area(top, LEFT, top, RoundSheets.COLUMNS);
    sheet.merge(head, height());
    for (int index = 0; index < corners.size(); index++) {
      String corner = corners.get(index);
      Area name = corner(top + 1, index);
      Optional<Length> known = live.plan().job().built().reading(round, corner);
      sheet.merge(name, Cell.text(corner).role(Role.COLUMN_HEAD));
      sheet.merge(corner(top + 2, index), live.typed(known, LiveNames.reading(round, corner)));
      lower(corner(top + 3, index), corner);
    }
    last(top + 4);
    rule(top + 2);
  }

  /** Returns the cells of a corner in a row. */
  private Area corner(int row, int index) {
    int wide = RoundSheets.COLUMNS - LEFT + 1;
    int from = LEFT + index * wide / corners.size();
    int to = LEFT + (index + 1) * wide / corners.size() - 1;
    return new Area(row, from, row, to);
  }

  /** Returns what is read and the height planned. */
  private Cell height() {
    String level = live.map().round(round, RoundColumn.LEVEL_HEIGHT);
    Length now = live.plan().stack().levelHeight(round);
    String[] around = live.text("round.level", live.names(false), HOLE).split(HOLE, -1);
    String tape = live.math().tape(level);
    String shown = live.math().tapeNow(now);
    if (!live.unit().metric()) {
      String symbol = " " + live.unit().symbol();
      tape += "&\" = \"&" + live.math().mark(level) + "&" + LiveMath.literal(symbol);
      shown += " = " + live.math().markNow(now) + symbol;
    }
    String formula = LiveMath.literal(around[0]) + "&" + tape + "&" + LiveMath.literal(around[1]);
    return Cell.formula(formula, around[0] + shown + around[1]).role(Role.PLAIN_BOLD);
  }

  /** Puts the lower mark that the first-laid log gets at a corner, by the readings before. */
  private void lower(Area area, String corner) {
    Length chart = live.course(round).notch().lower();
    Length now = chart.plus(live.plan().stack().corners().change(round, corner));
    String formula =
        round == 1
            ? live.map().round(1, RoundColumn.LOWER)
            : LevelsSheet.next(live, round - 1, corner);
    Cell cell = live.mark(formula, now, Role.RESULT);
    sheet.merge(area, cell);
    String changed = area.absolute() + "<>" + live.map().round(round, RoundColumn.LOWER);
    sheet.rule(new Rule.LooksLike(area, changed, Role.CHANGED));
  }

  /** Puts what the lower marks are for, and the box that says the round is cut. */
  private void last(int row) {
    int tick = RoundSheets.COLUMNS - 1;
    sheet.merge(
        new Area(row, LEFT, row, tick - 1),
        Cell.text(live.text("round.lower_now", live.names(true))).role(Role.LABEL_SMALL));
    sheet.merge(new Area(row, tick, row, RoundSheets.COLUMNS), tick().named(LiveNames.cut(round)));
    Rule.Advice advice =
        Rule.Advice.refusing(live.text("advice.cut.title"), live.text("advice.cut"))
            .prompt(live.text("advice.cut"));
    sheet.rule(new Rule.OneOf(Area.cell(row, tick), List.of("x"), advice));
  }

  /** Returns the box that says the round is cut. */
  private Cell tick() {
    boolean cut = live.plan().job().built().isCut(round);
    return cut ? Cell.text("x").role(Role.TYPED_IN_TEXT) : Cell.blank(Role.TYPED_IN_TEXT);
  }

  /** Lets only heights be typed as readings. */
  private void rule(int row) {
    String text = live.text("advice.reading", live.unit().symbol());
    Length most = live.rules().metric() ? Length.ofMillimetres(15_000) : Length.ofInches(600);
    sheet.rule(
        new Rule.Between(
            new Area(row, LEFT, row, RoundSheets.COLUMNS),
            0,
            live.number(most),
            Rule.Advice.refusing(live.text("advice.reading.title"), text).prompt(text)));
  }
}
