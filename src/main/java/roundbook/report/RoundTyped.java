package roundbook.report;

import java.util.List;
import java.util.Locale;
import roundbook.job.AsBuilt;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.plan.PiecePlan;
import roundbook.report.LiveMap.PieceColumn;
import roundbook.units.Length;

/** What is typed in after measuring a round's logs, with the corner readings. */
final class RoundTyped {
  private static final double ROW_HEIGHT = 15.5;
  private static final double HEAD_HEIGHT = 30;
  private final Live live;
  private final int round;
  private final SheetBuilder sheet;

  RoundTyped(Live live, int round, SheetBuilder sheet) {
    this.live = live;
    this.round = round;
    this.sheet = sheet;
  }

  /** The columns of the table with their width on the page's grid. */
  private enum Column {
    /** The wall. */
    WALL(2),
    /** The middle diameter planned. */
    PLANNED(3),
    /** The middle diameter as hewn. */
    MEASURED(4),
    /** The butt diameter as hewn. */
    MEASURED_BUTT(3),
    /** The tip diameter as hewn. */
    MEASURED_TIP(3),
    /** The log used instead. */
    USED(3),
    /** The lower mark as cut. */
    LOWER_CUT(3),
    /** The upper mark as cut. */
    UPPER_CUT(3);

    private final int span;

    Column(int span) {
      this.span = span;
    }
  }

  /** Puts the table under the current row, with the corner readings on its right. */
  void put() {
    sheet.nextRow().height(HEAD_HEIGHT);
    int top = sheet.row();
    for (Column column : Column.values()) {
      String key = "round.type." + column.name().toLowerCase(Locale.ROOT);
      sheet.addAcross(column.span, Cell.text(live.text(key)).role(Role.COLUMN_HEAD));
    }
    for (Wall wall : live.walls()) {
      row(live.piece(round, wall));
    }
    int last = sheet.row();
    RoundLevels levels = new RoundLevels(live, round, sheet);
    levels.put(top);
    sheet.row(last);
    rules(top + 1, last);
    levels.putRule();
  }

  /** Writes one log's row. */
  private void row(PiecePlan piece) {
    sheet.nextRow().height(ROW_HEIGHT);
    for (Column column : Column.values()) {
      sheet.addAcross(column.span, cell(piece, column));
    }
  }

  /** Returns the cell of a column. */
  private Cell cell(PiecePlan piece, Column column) {
    Wall wall = piece.placed().wall();
    return switch (column) {
      case WALL -> Cell.text(wall.name()).role(Role.BODY_CENTRE);
      case PLANNED ->
          live.printed(
              live.map().piece(round, wall, PieceColumn.OWN_MID),
              live.expected(piece.placed()).mid(),
              Role.BODY_CENTRE);
      case MEASURED -> live.typed(known(wall).mid(), LiveNames.measured(round, wall));
      case MEASURED_BUTT -> live.typed(known(wall).butt(), LiveNames.measuredButt(round, wall));
      case MEASURED_TIP -> live.typed(known(wall).tip(), LiveNames.measuredTip(round, wall));
      case USED -> Cell.blank(Role.TYPED_IN_TEXT).named(LiveNames.used(round, wall));
      case LOWER_CUT -> live.typed(known(wall).lowerCut(), LiveNames.lowerCut(round, wall));
      default -> live.typed(known(wall).upperCut(), LiveNames.upperCut(round, wall));
    };
  }

  /** Returns what was typed of a log before this revision. */
  private AsBuilt.Measures known(Wall wall) {
    return live.plan().job().built().measures(round, wall.name());
  }

  /** Checks what is typed, column by column. */
  private void rules(int top, int last) {
    int column = 1;
    for (Column each : Column.values()) {
      Area area = new Area(top, column, last, column);
      switch (each) {
        case MEASURED, MEASURED_BUTT, MEASURED_TIP ->
            sheet.rule(between(area, "diameter", diameters()));
        case LOWER_CUT, UPPER_CUT -> sheet.rule(between(area, "mark", diameters()));
        case USED -> sheet.rule(logs(area));
        default -> {}
      }
      column += each.span;
    }
  }

  /** Returns the least and largest diameter that is believed. */
  private List<Length> diameters() {
    Length most = live.rules().metric() ? Length.ofMillimetres(1200) : Length.ofInches(48);
    return List.of(Length.ZERO, most);
  }

  /** Returns a check of a number between two limits, with advice. */
  private Rule between(Area area, String what, List<Length> limits) {
    String title = live.text("advice." + what + ".title");
    String prompt = live.text("advice." + what, live.unit().symbol());
    return new Rule.Between(
        area,
        live.number(limits.get(0)),
        live.number(limits.get(1)),
        Rule.Advice.refusing(title, prompt).prompt(prompt));
  }

  /** Returns a list of the logs to choose from. */
  private Rule logs(Area area) {
    Rule.Advice advice =
        Rule.Advice.asking(live.text("advice.used.title"), live.text("advice.used"))
            .prompt(live.text("advice.used"));
    return new Rule.OneOfCells(area, live.map().logs(LiveLogs.TAG), advice);
  }
}
