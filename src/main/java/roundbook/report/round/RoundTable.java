package roundbook.report.round;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.plan.PiecePlan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.TextWidth;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMath;
import roundbook.report.live.LiveSpot;
import roundbook.report.mark.BoxRules;
import roundbook.report.mark.ShortRows;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** The table of a round's logs: which, which way round, where to mark, where to cut. */
final class RoundTable {
  private static final double ROW_HEIGHT = 20;
  private static final double HEAD_HEIGHT = 28;
  private static final int TICKS = 3;
  private static final double COLUMN_POINTS = 20;
  private static final double MARGIN = 5;
  private static final double LARGE_POINTS = 16;
  private final LiveContext live;
  private final int round;
  private final SheetBuilder sheet;

  RoundTable(LiveContext live, int round, SheetBuilder sheet) {
    this.live = live;
    this.round = round;
    this.sheet = sheet;
  }

  /** The columns of the table with their width on the page's grid and the cell of a row. */
  private enum Column {
    /** The wall. */
    WALL(2, Row::wall),
    /** The tag. */
    LOG(3, Row::tag),
    /** How long the log is as it lies in the yard. */
    RAW(3, Row::raw),
    /** The corner at which the butt lies. */
    BUTT_AT(3, Row::buttAt),
    /** What is squared off the butt first. */
    OFF_BUTT(3, Row::offButt),
    /** The near shoulder. */
    NEAR(3, Row::near),
    /** The far shoulder. */
    FAR(4, Row::far),
    /** The trimmed length. */
    CUT(4, Row::cut),
    /** What is left over at the tip. */
    FALLS_OFF(3, Row::fallsOff),
    /** The most that it may weigh, hewn. */
    WEIGHT(3, Row::weight),
    /** The balance point. */
    BALANCE(2, Row::balance),
    /** A box to tick when it is marked. */
    MARKED(1, Row::tick),
    /** A box to tick when it is cut. */
    SAWN(1, Row::sawn),
    /** A box to tick when it is set. */
    SET(1, Row::tick);

    private final int span;
    private final Function<Row, Cell> cell;

    Column(int span, Function<Row, Cell> cell) {
      this.span = span;
      this.cell = cell;
    }

    /** Returns whether it is one of the boxes to tick, which share a heading. */
    private boolean isTick() {
      return this == MARKED || this == SAWN || this == SET;
    }
  }

  /** Puts the table under the current row. */
  void put() {
    sheet.nextRow().height(HEAD_HEIGHT);
    for (Column column : Column.values()) {
      if (!column.isTick()) {
        sheet.addAcross(column.span, head(column.name().toLowerCase(Locale.ROOT)));
      }
    }
    sheet.addAcross(TICKS, head("ticks"));
    int top = sheet.row() + 1;
    for (Wall wall : live.walls()) {
      PiecePlan piece = live.piece(round, wall);
      for (LiveSpot spot : LiveSpot.of(piece)) {
        Row row = new Row(piece, spot, half(piece, spot));
        sheet.nextRow().height(row.height());
        for (Column column : Column.values()) {
          sheet.addAcross(column.span, column.cell.apply(row));
        }
      }
    }
    int sawn = RoundSheets.COLUMNS - 1;
    sheet.rule(BoxRules.of(live, TypedBox.LOG_CUT, new Area(top, sawn, sheet.row(), sawn)));
  }

  private Optional<ShortRows> half(PiecePlan piece, LiveSpot spot) {
    return ShortRows.of(live.context(), piece).stream()
        .filter(row -> row.half().place().equals(spot.place()))
        .findFirst();
  }

  /** Returns the height of a text in a column. */
  private static double height(String text, Column column) {
    return TextWidth.height(text, column.span * COLUMN_POINTS - MARGIN);
  }

  /**
   * Returns a cell as large as its text has room for: a number cut off would be a log cut wrong.
   */
  private static Cell fitted(Cell cell, Column column) {
    String text = TextWidth.shown(cell);
    double room = column.span * COLUMN_POINTS - MARGIN;
    if (TextWidth.points(text, LARGE_POINTS) > room) {
      return cell.role(Role.BODY_CENTRE);
    }
    boolean bold = column == Column.WALL || column == Column.LOG || column == Column.BUTT_AT;
    return cell.role(bold ? Role.LARGE : Role.LARGE_NUMBER);
  }

  /** Returns a heading by its column. */
  private Cell head(String column) {
    return Cell.text(live.text("round.head." + column)).role(Role.COLUMN_HEAD);
  }

  /**
   * One log's row.
   *
   * @param piece its place
   * @param spot the log
   * @param half how it lies beside an opening, if it does
   */
  private final class Row {
    private final PiecePlan piece;
    private final LiveSpot spot;
    private final Optional<ShortRows> half;

    Row(PiecePlan piece, LiveSpot spot, Optional<ShortRows> half) {
      this.piece = piece;
      this.spot = spot;
      this.half = half;
    }

    /** Returns the height of the row, which a very long tag or a raw length makes higher. */
    double height() {
      double tag = RoundTable.height(spot.piece().log().tag(), Column.LOG);
      double raw = RoundTable.height(TextWidth.shown(raw()), Column.RAW);
      return StrictMath.max(ROW_HEIGHT, StrictMath.max(tag, raw));
    }

    private Cell wall() {
      String wall = half.map(ShortRows::place).orElse(spot.wall().name());
      return fitted(Cell.text(wall), Column.WALL);
    }

    private Cell tag() {
      String tag = spot.piece().log().tag();
      return fitted(Cell.formula(at(PieceColumn.TAG), tag), Column.LOG);
    }

    private Cell buttAt() {
      String corner = half.map(ShortRows::buttAt).orElse(piece.buttAt());
      return fitted(Cell.text("● " + corner), Column.BUTT_AT);
    }

    private Cell offButt() {
      return fitted(tape(at(PieceColumn.OFF_BUTT), spot.piece().cutOffButt()), Column.OFF_BUTT);
    }

    private Cell fallsOff() {
      return fitted(tape(at(PieceColumn.FALLS_OFF), spot.piece().fallsOff()), Column.FALLS_OFF);
    }

    private Cell tick() {
      return Cell.blank(Role.TICK);
    }

    /** Returns the box that says a log is cut; that of two short logs stands with the left one. */
    private Cell sawn() {
      if (spot.place().side() == PlacePart.RIGHT) {
        return Cell.text("▲").role(Role.BODY_CENTRE);
      }
      AsBuilt built = live.plan().job().built();
      boolean alone = built.isCut(spot.place().whole()) && !built.isCut(round);
      Cell box = alone ? Cell.text("x") : Cell.blank(Role.TYPED_IN_TEXT);
      return box.role(Role.TYPED_IN_TEXT).named(TypedBox.LOG_CUT.named(round, spot.wall().name()));
    }

    /** Returns the log's length: the sum of the printed lengths that come off and that stay. */
    private Cell raw() {
      Length step = live.rules().printStep();
      Piece piece = spot.piece();
      String trimmed = String.valueOf(live.number(piece.trimmed()));
      String off = live.toStep(at(PieceColumn.OFF_BUTT));
      String falls = live.toStep(at(PieceColumn.FALLS_OFF));
      Length ends = piece.cutOffButt().roundedTo(step).plus(piece.fallsOff().roundedTo(step));
      String sum = off + "+" + live.toStep(trimmed) + "+" + falls;
      return live.tape(sum, piece.trimmed().roundedTo(step).plus(ends), Role.BODY_CENTRE);
    }

    private Cell cut() {
      String text = tape(spot.piece().trimmed());
      double room = Column.CUT.span * COLUMN_POINTS - MARGIN;
      boolean large = TextWidth.points(text, LARGE_POINTS) <= room;
      return large
          ? Cell.text(text).role(Role.LARGE_CUT)
          : Cell.text(text).role(Role.BODY_BOLD).align(Cell.Align.CENTRE);
    }

    /** A short log has one shoulder only. */
    private Cell near() {
      return fitted(Cell.text(spot.near().isZero() ? "–" : shortTape(spot.near())), Column.NEAR);
    }

    private Cell far() {
      boolean none = spot.far().equals(spot.piece().trimmed());
      return fitted(Cell.text(none ? "–" : tape(spot.far())), Column.FAR);
    }

    /** Returns where a value of the log stands. */
    private String at(PieceColumn column) {
      return live.map().at(spot.place(), column);
    }

    private PiecePlan.Weight weighs() {
      return half.map(row -> row.half().weight()).orElse(piece.weight());
    }

    /** Returns the most that the hewn log may weigh, which gear is chosen by. */
    private Cell weight() {
      Cell most = new Cells(live.context()).mayWeigh(weighs());
      double now = ((Cell.Number) most.value()).number();
      return Cell.formula(planned(String.valueOf(StrictMath.round(now))), now)
          .role(Role.BODY_CENTRE)
          .format(most.format());
    }

    /** Returns the balance point to the inch or centimetre, for it is an estimate. */
    private Cell balance() {
      Length balance = weighs().balance().roundedTo(live.unit().coarseStep());
      String now = live.unit().metric() ? live.formats().mark(balance) : tape(balance);
      return Cell.formula(planned(LiveMath.literal(now)), now).role(Role.BODY_CENTRE);
    }

    /** Returns a planned value, or the word for a plan that must be made again. */
    private String planned(String value) {
      String again = LiveMath.literal(live.text("round.replan"));
      return "IF(" + at(PieceColumn.SOURCE) + "=0," + value + "," + again + ")";
    }
  }

  /** Returns a fixed tape distance. */
  private String tape(Length length) {
    return live.math().tapeNow(length);
  }

  /** Returns a distance of less than a foot without its feet. */
  private String shortTape(Length length) {
    boolean inches = !live.unit().metric() && length.isLessThan(Length.of(1, LengthUnit.FOOT));
    return inches ? live.math().markNow(length) + "\"" : tape(length);
  }

  /** Returns a live distance, without its feet while it is less than one. */
  private Cell tape(String formula, Length now) {
    if (live.unit().metric()) {
      return live.tape(formula, now, Role.BODY_CENTRE);
    }
    String rounded = live.toStep(formula);
    String text =
        "IF("
            + rounded
            + "<12,"
            + live.math().mark(formula)
            + "&\"\"\"\","
            + live.math().tape(formula)
            + ")";
    Length printed = now.roundedTo(live.rules().printStep());
    return Cell.formula(text, shortTape(printed));
  }
}
