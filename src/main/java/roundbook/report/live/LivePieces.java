package roundbook.report.live;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.Measures;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.plan.PiecePlan;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.report.live.LiveMap.RuleLine;
import roundbook.report.live.LiveMap.WallColumn;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/** Diameters, cuts and heights of every placed log as formulas of what was typed in. */
final class LivePieces {
  /** What is a log's own, be it alone in its place or one of two. */
  private static final Set<PieceColumn> OWN = EnumSet.range(PieceColumn.ROUND, PieceColumn.TIP);

  /** What its two ends lose. */
  private static final Set<PieceColumn> ENDS =
      EnumSet.range(PieceColumn.BUTT_NECK, PieceColumn.SAID);

  private final LiveContext live;
  private final LiveMap map;
  private final LiveLogs logs;
  private final LiveGaps gaps;
  private final LiveEnds ends;
  private final LivePairs pairs;

  LivePieces(LiveContext live) {
    this.live = live;
    this.map = live.map();
    this.logs = new LiveLogs(live);
    this.gaps = new LiveGaps(live);
    this.ends = new LiveEnds(live);
    this.pairs = new LivePairs(live);
  }

  /** Puts the table on the working sheet. */
  void put(SheetBuilder sheet) {
    sheet.row(map.pieceHeadRow());
    for (PieceColumn column : PieceColumn.values()) {
      sheet.add(LiveHeads.of(live, "piece", column));
    }
    for (PiecePlan piece : live.plan().pieces()) {
      sheet.nextRow();
      for (PieceColumn column : PieceColumn.values()) {
        Row row = new Row(piece, LiveSpot.whole(piece));
        Cell cell = piece.halves().isEmpty() ? row.cell(column) : row.ofPair(column);
        sheet.add(cell.role(Role.HELPER));
      }
    }
    for (PiecePlan piece : live.plan().pieces()) {
      for (PiecePlan.Half half : piece.halves()) {
        sheet.nextRow();
        for (PieceColumn column : PieceColumn.values()) {
          sheet.add(new Row(piece, LiveSpot.of(half)).ofHalf(column).role(Role.HELPER));
        }
      }
    }
  }

  /** One placed log's cells, or those of a short log beside an opening. */
  private final class Row {
    private final PiecePlan plan;
    private final LiveSpot spot;
    private final PlacedLog placed;
    private final Piece piece;
    private final Piece expected;
    private final Wall wall;
    private final int round;

    Row(PiecePlan plan, LiveSpot spot) {
      this.plan = plan;
      this.spot = spot;
      this.placed = spot.placed();
      this.piece = placed.piece();
      this.expected = live.expected(placed);
      this.wall = placed.wall();
      this.round = placed.round();
    }

    /** Returns the cell of a column. */
    Cell cell(PieceColumn column) {
      if (ENDS.contains(column)) {
        return ends.cell(plan, column);
      }
      return switch (column) {
        case ROUND -> Cell.number(round);
        case WALL -> Cell.text(wall.name());
        case PLANNED_TAG -> Cell.text(piece.log().tag());
        case SOURCE -> Cell.formula(logs.source(spot), 0);
        case TAG -> tag();
        case TO_NEAR -> length(spot.near());
        case TO_FAR -> length(piece.trimmed().minus(spot.far()));
        case HALF -> length(piece.trimmed().dividedBy(2));
        case PLANNED_BUTT, PLANNED_NEAR, PLANNED_MID, PLANNED_FAR, PLANNED_TIP ->
            length(station(expected, column));
        case OWN_BUTT, OWN_NEAR, OWN_MID, OWN_FAR, OWN_TIP -> own(column);
        case BUTT, NEAR, MID, FAR, TIP -> formula(hewn(column), station(piece, column));
        case LOWER ->
            formula(
                asCut(TypedBox.LOWER_CUT.named(round, wall.name()), RoundColumn.LOWER),
                typed().lowerCut().orElse(live.course(round).notch().lower()));
        case UPPER ->
            formula(
                asCut(TypedBox.UPPER_CUT.named(round, wall.name()), RoundColumn.UPPER),
                typed().upperCut().orElse(live.course(round).notch().upper()));
        case HEIGHT -> formula(height(), plan.centre());
        case OFF_BUTT -> formula(offButt(), piece.cutOffButt());
        case FALLS_OFF -> formula(fallsOff(), piece.fallsOff());
        case LEFT_LIFT, RIGHT_LIFT -> lift(column);
        default -> gaps.cell(plan.placed(), column);
      };
    }

    /** Returns the cell of a column for a short log: what it is, its diameters and cuts. */
    Cell ofHalf(PieceColumn column) {
      boolean own = OWN.contains(column);
      boolean cut = column == PieceColumn.OFF_BUTT || column == PieceColumn.FALLS_OFF;
      return own || cut ? cell(column) : Cell.text("");
    }

    /** Returns the cell of a column for the place of two short logs. */
    Cell ofPair(PieceColumn column) {
      boolean own = OWN.contains(column);
      if (ENDS.contains(column)) {
        return cell(column);
      }
      return switch (column) {
        case ROUND, WALL -> cell(column);
        case LOWER, UPPER, HEIGHT, LEFT_LIFT, RIGHT_LIFT -> cell(column);
        case OFF_BUTT, FALLS_OFF -> Cell.text("");
        default -> own ? pairs.cell(plan, column) : gaps.cell(plan.placed(), column);
      };
    }

    /** Returns what was typed of this log before this revision. */
    private Measures typed() {
      return live.plan().job().built().measures(round, wall.name());
    }

    /**
     * Returns how much the centre line is above the plan at a corner: as {@link
     * roundbook.stack.Corners} has it: half of what a reading tells is in the log that was read;
     * where only the second-laid one was, a quarter of it in the first-laid log and three quarters
     * in the second-laid one.
     */
    private Cell lift(PieceColumn column) {
      boolean left = column == PieceColumn.LEFT_LIFT;
      String corner = left ? map.building().endCorner(wall) : map.building().startCorner(wall);
      String start =
          LiveCorners.under(live, round, corner)
              + "+"
              + map.corner(round, corner, CornerColumn.CHANGE);
      String first = map.corner(round, corner, CornerColumn.FIRST_HIGH);
      String onTop = first + "+" + map.corner(round, corner, CornerColumn.SECOND_CHANGE);
      String high = map.corner(round, corner, CornerColumn.HIGH);
      String read = "ISNUMBER(" + TypedBox.FIRST_READING.named(round, corner) + ")";
      String formula =
          wall.laidFirst()
              ? start + "+IF(" + read + "," + half(first, start) + "," + half(high, start) + "/2)"
              : onTop + "+" + half(high, onTop) + "*IF(" + read + ",1,1.5)";
      return formula(formula, live.plan().stack().corners().lift(round, wall.laidFirst(), corner));
    }

    private static String half(String more, String less) {
      return "(" + more + "-(" + less + "))/2";
    }

    /** Returns where a value of this log stands. */
    private String at(PieceColumn column) {
      return map.at(spot.place(), column);
    }

    /** Returns a fixed length. */
    private Cell length(Length length) {
      return Cell.length(length, live.unit());
    }

    /** Returns a cell of a formula and a length as planned. */
    private Cell formula(String expression, Length now) {
      return Cell.formula(expression, live.number(now));
    }

    /** Returns the tag of the log that is used. */
    private Cell tag() {
      String used = spot.named(TypedBox.USED);
      String planned = at(PieceColumn.PLANNED_TAG);
      return Cell.formula(
          "IF(" + used + "=\"\"," + planned + ",TRIM(" + used + "&\"\"))", piece.log().tag());
    }

    /** Returns a diameter of the five as planned. */
    private Length station(Piece of, PieceColumn column) {
      return switch (DiameterRow.of(column).station(column)) {
        case 0 -> of.butt();
        case 1 -> of.at(spot.near());
        case 2 -> of.mid();
        case 3 -> of.at(spot.far());
        default -> of.tip();
      };
    }

    /** Returns a diameter of the log that is used, as tallied. */
    private Cell own(PieceColumn column) {
      int number = DiameterRow.OWN.station(column);
      PieceColumn planned = DiameterRow.PLANNED.column(number);
      String source = at(PieceColumn.SOURCE);
      String formula =
          "IF(" + source + ">0," + logs.lookUp(spot, number, source) + "," + at(planned) + ")";
      return formula(formula, station(expected, column));
    }

    /** Returns a diameter as hewn, in the way of {@link roundbook.stack.Hewn}. */
    private String hewn(PieceColumn column) {
      String shift = "+" + at(PieceColumn.MID) + "-" + at(PieceColumn.OWN_MID);
      String butt = spot.named(TypedBox.MEASURED_BUTT);
      String tip = spot.named(TypedBox.MEASURED_TIP);
      return switch (column) {
        case MID -> typed(spot.named(TypedBox.MEASURED), at(PieceColumn.OWN_MID));
        case BUTT -> typed(butt, at(PieceColumn.OWN_BUTT) + shift);
        case TIP -> typed(tip, at(PieceColumn.OWN_TIP) + shift);
        case NEAR -> straight(butt, PieceColumn.TO_NEAR, at(PieceColumn.OWN_NEAR) + shift);
        default -> straight(tip, PieceColumn.TO_FAR, at(PieceColumn.OWN_FAR) + shift);
      };
    }

    /** Returns the diameter at a shoulder: on the line to a measured end, else shifted. */
    private String straight(String end, PieceColumn distance, String otherwise) {
      String share = at(distance) + "/" + at(PieceColumn.HALF);
      String line = end + "+(" + at(PieceColumn.MID) + "-" + end + ")*" + share;
      return "IF(ISNUMBER(" + end + ")," + line + "," + otherwise + ")";
    }

    /** Returns what was typed, or another value where there is no number. */
    private String typed(String name, String otherwise) {
      return "IF(ISNUMBER(" + name + ")," + name + "," + otherwise + ")";
    }

    /** Returns a mark as it was cut, or the round's mark. */
    private String asCut(String name, RoundColumn mark) {
      return typed(name, map.round(round, mark));
    }

    /**
     * Returns the height of the centre line.
     *
     * <p>The log lies on the necks of the crossing logs below it: the mean of their centre lines
     * and upper marks, and its own lower mark; in the first round on its bed. Over a round that was
     * read the plan goes on from where the walls stand.
     */
    private String height() {
      String lower = at(PieceColumn.LOWER);
      int below = wall.laidFirst() ? round - 1 : round;
      if (below == 0) {
        boolean starter = live.rules().text(Setting.FIRST_BED).equals("starter");
        return starter ? map.round(1, RoundColumn.UPPER) + "+" + lower : lower + "+0";
      }
      StringBuilder sum = new StringBuilder("(");
      List<Wall> crossing = map.building().crossing(wall);
      for (Wall each : crossing) {
        sum.append(sum.length() > 1 ? "+" : "")
            .append(map.piece(below, each, PieceColumn.HEIGHT))
            .append('+')
            .append(map.piece(below, each, PieceColumn.UPPER));
      }
      boolean steps = wall.laidFirst() && !live.rules().holdsHeight();
      return sum
          + ")/"
          + crossing.size()
          + "+"
          + lower
          + (steps ? "+" + map.round(below, RoundColumn.COMMON) : "");
    }

    /** Returns what is cut off the butt first. */
    private String offButt() {
      String planned = live.number(piece.cutOffButt()) + "";
      return "IF("
          + at(PieceColumn.SOURCE)
          + ">0,"
          + map.rule(RuleLine.SQUARING)
          + ","
          + planned
          + ")";
    }

    /** Returns what falls off the tip. */
    private String fallsOff() {
      String source = at(PieceColumn.SOURCE);
      boolean whole = spot.place().side() == PlacePart.WHOLE;
      String trimmed =
          whole ? map.wall(wall, WallColumn.TRIMMED) : live.number(piece.trimmed()) + "";
      String rest = trimmed + "-" + map.rule(RuleLine.SQUARING);
      return "IF("
          + source
          + ">0,"
          + logs.length(source)
          + "-"
          + rest
          + ","
          + live.number(piece.fallsOff())
          + ")";
    }
  }
}
