package roundbook.report.wall;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import roundbook.job.GapSpot;
import roundbook.job.GapSpot.Station;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.PageSetup.Paper;
import roundbook.page.Positions;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.plan.PiecePlan;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.frame.TextWidth;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveGaps;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.mark.BoxRules;
import roundbook.stack.Joint;
import roundbook.units.Length;

/** One sheet a wall: its drawing, its logs from the top down with their gaps, a chart of them. */
public final class WallSheets {
  static final Positions<WallColumn> COLUMNS = Positions.of(WallColumn.class);
  private static final double[] WIDTHS = {7, 10, 8, 9, 11, 8.5, 8.5, 8.5, 6.5, 7, 7, 7};
  private static final double ROW_HEIGHT = 17;
  private static final double TITLE = 44;
  private static final double HEAD = 58;
  private static final double NOTES = 58;
  private static final double ROOM_LETTER = 700;
  private static final double ROOM_A4 = 748;
  private static final double TAG_ROOM = 46;
  private final LiveContext live;
  private final Wall wall;
  private final SheetBuilder sheet;

  private WallSheets(LiveContext live, Wall wall) {
    this.live = live;
    this.wall = wall;
    PageSetup page = live.context().page(PageKind.SITE);
    String tab = Tab.ofWall(live.context().words(), wall);
    this.sheet = new SheetBuilder(tab, page).id(Tab.wallId(wall)).widths(WIDTHS);
  }

  /** The columns of the table. */
  enum WallColumn {
    /** The round. */
    ROUND,
    /** The log. */
    LOG,
    /** The corner at which the butt lies. */
    BUTT_AT,
    /** The middle diameter. */
    MID,
    /** The height of the centre line. */
    CENTRE,
    /** The gap below at the left. */
    LEFT,
    /** The gap below in the middle. */
    MIDDLE,
    /** The gap below at the right. */
    RIGHT,
    /** The symbols of gaps outside the limits. */
    FLAG,
    /** The gap below at the left, as it was measured. */
    MEASURED_LEFT,
    /** The gap below in the middle, as it was measured. */
    MEASURED_MIDDLE,
    /** The gap below at the right, as it was measured. */
    MEASURED_RIGHT
  }

  /** Returns the sheets of all walls in clockwise order. */
  public static List<Sheet> sheets(CrewContext context) {
    LiveContext live = LiveContext.of(context);
    return live.walls().stream().map(wall -> new WallSheets(live, wall).sheet()).toList();
  }

  /** Writes the sheet from the top down. */
  private Sheet sheet() {
    sheet.printTitles(1, 1).row(1).height(TITLE);
    sheet.addAcross(4, Cell.text(live.text("wall.title", wall.name())).role(Role.TITLE));
    sheet.addAcross(5, Cell.text(side()).role(Role.TITLE_NOTE));
    sheet.addAcross(3, Cell.text(live.context().revision()).role(Role.REVISION));
    int top = WallPictures.put(live, wall, sheet.nextRow(), room(), roomWithChart());
    heads();
    int first = sheet.row() + 1;
    for (int round = live.plan().rounds(); round >= 1; round--) {
      row(live.piece(round, wall));
    }
    int last = sheet.row();
    int box = COLUMNS.number(WallColumn.MEASURED_LEFT);
    sheet.rule(BoxRules.of(live, TypedBox.GAP, new Area(first, box, last, box + 2)));
    WallNotes.put(live, wall, sheet);
    int printed = WallChart.put(live, sheet, new Area(first, 1, last, WIDTHS.length), left(top));
    return sheet.printArea(new Area(1, 1, printed, WIDTHS.length)).build();
  }

  /** Returns the wall's length and thickness. */
  private String side() {
    String length = live.formats().feetInches(live.map().building().told(wall));
    String thickness = live.formats().mark(wall.thickness()) + " " + live.unit().symbol();
    return live.text("wall.side", length, thickness);
  }

  /** Writes the headings. */
  private void heads() {
    sheet.nextRow().height(HEAD);
    for (WallColumn column : WallColumn.values()) {
      String key = "wall.head." + column.name().toLowerCase(Locale.ROOT);
      String corner =
          column == WallColumn.LEFT || column == WallColumn.MEASURED_LEFT
              ? live.map().building().endCorner(wall)
              : live.map().building().startCorner(wall);
      sheet.add(Cell.text(live.text(key, corner)).role(Role.COLUMN_HEAD));
    }
  }

  /** Returns how high the drawing may be for the table and the notes to stay on its page. */
  private double room() {
    double rows =
        IntStream.rangeClosed(1, live.plan().rounds())
            .mapToDouble(round -> height(live.piece(round, wall)))
            .sum();
    return page() - TITLE - HEAD - NOTES - rows;
  }

  /** Returns how high the drawing may be for the chart to stay on its page too. */
  private double roomWithChart() {
    return room() + NOTES - WallNotes.height(live, wall) - WallChart.LEAST_ROOM;
  }

  /** Returns how much room is left on the page whose first row is given, in points. */
  private double left(int top) {
    Length used = sheet.sizeOf(new Area(top, 1, sheet.row(), 1)).height();
    return page() - used.inches() * 72 - (top > 1 ? TITLE : 0);
  }

  /** Returns how high a page is between its margins, in points. */
  private double page() {
    return live.context().paper() == Paper.A4 ? ROOM_A4 : ROOM_LETTER;
  }

  /** Returns the height of a log's row, which a very long tag makes higher. */
  private static double height(PiecePlan piece) {
    String tag = piece.placed().tags();
    return StrictMath.max(ROW_HEIGHT, TextWidth.height(tag, TAG_ROOM));
  }

  /** Writes one log's row. */
  private void row(PiecePlan piece) {
    sheet.nextRow().height(height(piece));
    for (WallColumn column : WallColumn.values()) {
      sheet.add(cell(piece, column));
    }
    flags(piece.placed().round());
  }

  /** Returns where a value of the wall's log of a round stands. */
  private String at(int round, PieceColumn column) {
    return live.map().piece(round, wall, column);
  }

  /** Returns the cell of a column. */
  private Cell cell(PiecePlan piece, WallColumn column) {
    int round = piece.placed().round();
    return switch (column) {
      case ROUND ->
          Cell.number(round)
              .role(Role.BODY_CENTRE)
              .linkTo(Tab.ofRound(live.context().words(), round));
      case LOG ->
          Cell.formula(at(round, PieceColumn.TAG), piece.placed().tags())
              .role(Role.BODY_BOLD)
              .align(Cell.Align.CENTRE);
      case BUTT_AT -> Cell.text("● " + piece.buttAt()).role(Role.BODY_CENTRE);
      case MID -> live.printed(at(round, PieceColumn.MID), piece.placed().mid(), Role.BODY_CENTRE);
      case CENTRE -> live.tape(at(round, PieceColumn.HEIGHT), piece.centre(), Role.BODY_CENTRE);
      default ->
          LiveGaps.under(live, piece.placed())
              .map(joint -> gap(round, joint, column))
              .orElseGet(() -> Cell.text("–").role(Role.BODY_CENTRE));
    };
  }

  /** Returns a gap under a log, or its flag. */
  private Cell gap(int round, Joint joint, WallColumn column) {
    if (column == WallColumn.FLAG) {
      String now = joint.flag(live.rules()).symbol();
      return Cell.formula(at(round, PieceColumn.FLAG), now).role(Role.BODY_CENTRE);
    }
    return switch (column) {
      case MEASURED_LEFT -> measured(round, Station.LEFT);
      case MEASURED_MIDDLE -> measured(round, Station.MIDDLE);
      case MEASURED_RIGHT -> measured(round, Station.RIGHT);
      case LEFT -> gap(round, PieceColumn.LEFT_GAP, joint.left());
      case MIDDLE -> gap(round, PieceColumn.MIDDLE_GAP, joint.middle());
      default -> gap(round, PieceColumn.RIGHT_GAP, joint.right());
    };
  }

  /** Returns the box for a gap under a log as it was measured, once it lies. */
  private Cell measured(int round, Station at) {
    GapSpot spot = new GapSpot(round - 1, wall.name(), at);
    Optional<Length> known = Optional.ofNullable(live.plan().job().built().gaps().get(spot));
    return live.typed(known, TypedBox.GAP.named(spot.below(), spot.named()));
  }

  private Cell gap(int round, PieceColumn column, Length now) {
    return live.printed(at(round, column), now, Role.BODY_CENTRE);
  }

  /** Gaps outside the limits turn black; the symbol beside them says which way. */
  private void flags(int round) {
    if (round == 1) {
      return;
    }
    int row = sheet.row();
    int left = COLUMNS.number(WallColumn.LEFT);
    Area gaps = new Area(row, left, row, COLUMNS.number(WallColumn.RIGHT));
    String cell = Area.cell(row, left).toString();
    String small = cell + "<" + live.map().rule(RuleLine.GAP_LEAST);
    String large = cell + ">" + live.map().rule(RuleLine.GAP_MOST);
    sheet.rule(new Rule.LooksLike(gaps, "OR(" + small + "," + large + ")", Role.FLAG));
    Area flag = Area.cell(row, COLUMNS.number(WallColumn.FLAG));
    sheet.rule(new Rule.LooksLike(flag, flag.absolute() + "<>\"\"", Role.FLAG));
  }
}
