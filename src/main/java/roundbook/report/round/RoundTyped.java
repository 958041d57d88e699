package roundbook.report.round;

import java.util.List;
import java.util.Locale;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.SheetBuilder;
import roundbook.report.live.Live;
import roundbook.report.live.LiveLogs;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveNames;
import roundbook.report.live.LiveSpot;
import roundbook.report.mark.ShortRows;
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
      LiveSpot.of(live.piece(round, wall)).forEach(this::row);
    }
    int last = sheet.row();
    RoundLevels levels = new RoundLevels(live, round, sheet);
    levels.put(top);
    sheet.row(last);
    rules(top + 1, last);
    levels.putRule();
  }

  /** Writes one log's row. */
  private void row(LiveSpot spot) {
    sheet.nextRow().height(ROW_HEIGHT);
    for (Column column : Column.values()) {
      sheet.addAcross(column.span, cell(spot, column));
    }
  }

  /** Returns the cell of a column; the marks of two short logs stand with the left one. */
  private Cell cell(LiveSpot spot, Column column) {
    AsBuilt.Measures known = live.plan().job().built().measures(spot.place());
    AsBuilt.Measures marks = live.plan().job().built().measures(spot.place().whole());
    boolean right = spot.place().side() == PlacePart.RIGHT;
    return switch (column) {
      case WALL -> Cell.text(ShortRows.place(spot)).role(Role.BODY_CENTRE);
      case PLANNED ->
          live.printed(
              live.map().at(spot.place(), PieceColumn.OWN_MID),
              live.expected(spot.placed()).mid(),
              Role.BODY_CENTRE);
      case MEASURED -> live.typed(known.mid(), spot.measured());
      case MEASURED_BUTT -> live.typed(known.butt(), spot.measuredButt());
      case MEASURED_TIP -> live.typed(known.tip(), spot.measuredTip());
      case USED -> Cell.blank(Role.TYPED_IN_TEXT).named(spot.used());
      case LOWER_CUT ->
          right ? as() : live.typed(marks.lowerCut(), LiveNames.lowerCut(round, spot.wall()));
      default ->
          right ? as() : live.typed(marks.upperCut(), LiveNames.upperCut(round, spot.wall()));
    };
  }

  private static Cell as() {
    return Cell.text("◄").role(Role.BODY_CENTRE);
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
