package roundbook.report.live;

import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.PlacePart;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Positions;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;

/**
 * Where each number of the working sheet stands, for the formulas of all other sheets.
 *
 * @param sheet the working sheet's name
 * @param plan the plan
 */
public record LiveMap(String sheet, Plan plan) {
  private static final int FIRST_RULE_ROW = 4;
  private static final int GAP_ROWS = 3;
  private static final Positions<RuleLine> RULES = Positions.of(RuleLine.class);
  private static final Positions<WallColumn> WALLS = Positions.of(WallColumn.class);
  private static final Positions<RoundColumn> ROUNDS = Positions.of(RoundColumn.class);
  private static final Positions<CornerColumn> CORNERS = Positions.of(CornerColumn.class);
  private static final Positions<PieceColumn> PIECES = Positions.of(PieceColumn.class);

  /** The rules that formulas use, one a row. */
  public enum RuleLine {
    /** g, the gap wanted. */
    GAP,
    /** The step of sizes. */
    SIZE_STEP,
    /** The step of marks. */
    PRINT_STEP,
    /** The run of the template's slope. */
    SLOPE_RUN,
    /** o, past the corner. */
    OVERHANG,
    /** What is squared off each end. */
    SQUARING,
    /** The least gap. */
    GAP_LEAST,
    /** The largest gap. */
    GAP_MOST,
    /** How much corners may be out of level. */
    TOLERANCE,
    /** The most that a lower mark changes in a round. */
    MOST_CHANGE,
    /** m, the face wanted above the upper mark. */
    SHOULDER_LEAST,
    /** The share of a bearing that may be gone before an end is looked at. */
    BEARING_LOOK,
    /** The share that may be gone before a log may not lie there. */
    BEARING_STOP,
    /** The least height of a neck. */
    NECK_LEAST
  }

  /** The columns of the table of walls. */
  public enum WallColumn {
    /** Its name. */
    NAME,
    /** T, its logs' thickness. */
    THICKNESS,
    /** r(s T), the drop of its necks. */
    DROP,
    /** The trimmed length of its logs. */
    TRIMMED
  }

  /** The columns of the table of rounds. */
  public enum RoundColumn {
    /** Its number. */
    ROUND,
    /** The mean of the middle diameters. */
    MEAN,
    /** The largest less the smallest middle diameter. */
    SPREAD,
    /** D, the size taken. */
    SIZE,
    /** The gap that its marks are made for. */
    MARK_GAP,
    /** L', the lower mark. */
    LOWER,
    /** U' + L', the height of the neck. */
    NECK,
    /** U', the upper mark. */
    UPPER,
    /** How much the round adds to the wall. */
    RISE,
    /** The height of the first-laid centre lines. */
    FIRST_HEIGHT,
    /** The height of the second-laid centre lines. */
    SECOND_HEIGHT,
    /** The height of the first-laid necks' tops, at which corners may be read. */
    FIRST_LEVEL,
    /** The height of the second-laid necks' tops, at which corners are read. */
    LEVEL_HEIGHT,
    /** The least shoulder with the face wanted above the upper mark. */
    SMALLEST_END,
    /** The gap to the round below on the first-laid walls, from the sizes. */
    FIRST_GAP,
    /** The same on the second-laid walls. */
    SECOND_GAP,
    /** How much the walls as a whole stand above the plan after it. */
    COMMON,
    /** What all next lower marks are changed by to come back to the height planned. */
    HELD
  }

  /** What is told of each corner in each round, a column a corner. */
  public enum CornerColumn {
    /** How much it is above the plan after the round. */
    HIGH,
    /** What the lower mark of the first-laid log differs from the chart's. */
    CHANGE,
    /** How much the top of the first-laid log is above the plan. */
    FIRST_HIGH,
    /** What the lower mark of the second-laid log differs from the chart's. */
    SECOND_CHANGE,
    /** How much its top is to be pared down after the round. */
    PARE,
    /** How much it is above the plan once that is pared. */
    LEFT,
    /** What the next lower mark is changed by to bring it level with the others. */
    EVEN,
    /** The lower mark of the next round's first-laid log. */
    NEXT
  }

  /** The columns of the table of placed logs. */
  public enum PieceColumn {
    /** Its round. */
    ROUND,
    /** Its wall. */
    WALL,
    /** The tag of the log planned. */
    PLANNED_TAG,
    /** 0 for the log planned, else the row of the log used instead, or below 0 if there is none. */
    SOURCE,
    /** The tag of the log used. */
    TAG,
    /** From the butt to the near shoulder. */
    TO_NEAR,
    /** From the tip to the far shoulder. */
    TO_FAR,
    /** Half the trimmed length. */
    HALF,
    /** The planned log's diameter at the butt. */
    PLANNED_BUTT,
    /** The planned log's diameter at the near shoulder. */
    PLANNED_NEAR,
    /** The planned log's middle diameter. */
    PLANNED_MID,
    /** The planned log's diameter at the far shoulder. */
    PLANNED_FAR,
    /** The planned log's diameter at the tip. */
    PLANNED_TIP,
    /** The used log's diameter at the butt, as tallied. */
    OWN_BUTT,
    /** The used log's diameter at the near shoulder, as tallied. */
    OWN_NEAR,
    /** The used log's middle diameter, as tallied. */
    OWN_MID,
    /** The used log's diameter at the far shoulder, as tallied. */
    OWN_FAR,
    /** The used log's diameter at the tip, as tallied. */
    OWN_TIP,
    /** The diameter at the butt, as hewn. */
    BUTT,
    /** The diameter at the near shoulder, as hewn. */
    NEAR,
    /** The middle diameter, as hewn. */
    MID,
    /** The diameter at the far shoulder, as hewn. */
    FAR,
    /** The diameter at the tip, as hewn. */
    TIP,
    /** The lower mark, as cut. */
    LOWER,
    /** The upper mark, as cut. */
    UPPER,
    /** The height of its centre line. */
    HEIGHT,
    /** The gap under it at the left inside face, seen from outside. */
    LEFT_GAP,
    /** The gap under it in the middle. */
    MIDDLE_GAP,
    /** The gap under it at the right inside face. */
    RIGHT_GAP,
    /** How much less the gap is somewhere between, by the tally. */
    LESS_BETWEEN,
    /** How much more the gap is somewhere between, by the tally. */
    MORE_BETWEEN,
    /** The least gap under it. */
    LEAST_GAP,
    /** The largest gap under it. */
    MOST_GAP,
    /** The symbols of gaps outside the limits. */
    FLAG,
    /** The least diameter along the bearing of the butt end. */
    BUTT_NECK,
    /** How far below the centre line that bearing is whole. */
    BUTT_WHOLE,
    /** The share of it that is left. */
    BUTT_BEARS,
    /** The face above the upper mark at the near shoulder. */
    BUTT_OVER,
    /** What is told of the butt end, if it is flagged. */
    BUTT_SAID,
    /** The least diameter along the bearing of the tip end. */
    TIP_NECK,
    /** How far below the centre line that bearing is whole. */
    TIP_WHOLE,
    /** The share of it that is left. */
    TIP_BEARS,
    /** The face above the upper mark at the far shoulder. */
    TIP_OVER,
    /** What is told of the tip end, if it is flagged. */
    TIP_SAID,
    /** How many of its ends have wane past the corner. */
    WANE,
    /** 1 where an end is flagged. */
    WEAK,
    /** What is told of both ends, if any is flagged. */
    VERDICT,
    /** The sentence that the round's page says of it. */
    SAID,
    /** What is cut off the butt first. */
    OFF_BUTT,
    /** What falls off the tip. */
    FALLS_OFF,
    /** How much its centre line is above the plan at its left corner, seen from outside. */
    LEFT_LIFT,
    /** The same at its right corner. */
    RIGHT_LIFT
  }

  /** Returns the ring of walls. */
  public Building building() {
    return plan.job().building();
  }

  /** Returns the walls in clockwise order. */
  List<Wall> walls() {
    return building().walls();
  }

  /** Returns the row of a rule. */
  int ruleRow(RuleLine line) {
    return FIRST_RULE_ROW + RULES.number(line) - 1;
  }

  /** Returns the row of the headings of the table of walls. */
  int wallHeadRow() {
    return FIRST_RULE_ROW + RuleLine.values().length + GAP_ROWS - 1;
  }

  /** Returns the row of the headings of the table of rounds. */
  int roundHeadRow() {
    return wallHeadRow() + walls().size() + GAP_ROWS;
  }

  /** Returns the row of the headings of the table of corners. */
  int cornerHeadRow() {
    return roundHeadRow() + plan.rounds() + GAP_ROWS;
  }

  /** Returns the row of the headings of the table of placed logs. */
  public int pieceHeadRow() {
    return cornerHeadRow() + plan.rounds() + GAP_ROWS;
  }

  /** Returns where a value of a corner in a round stands. */
  public String corner(int round, String corner, CornerColumn column) {
    int from = 2 + before(column);
    return Area.cell(cornerHeadRow() + round, from + building().corners().indexOf(corner))
        .on(sheet);
  }

  /** Returns how many columns of the table of corners stand before those of a value. */
  private int before(CornerColumn column) {
    return (CORNERS.number(column) - 1) * building().corners().size();
  }

  /** Returns where a value of all corners in a round stands. */
  public String corners(int round, CornerColumn column) {
    int corners = building().corners().size();
    return Area.cell(cornerHeadRow() + round, 2 + before(column)).sized(1, corners).on(sheet);
  }

  /** Returns the row of the headings of the table of all logs. */
  public int logHeadRow() {
    return pieceHeadRow() + plan.pieces().size() + halves().size() + GAP_ROWS;
  }

  /** Returns where a rule stands. */
  public String rule(RuleLine line) {
    return Area.cell(ruleRow(line), 2).on(sheet);
  }

  /** Returns where a value of a wall stands. */
  public String wall(Wall wall, WallColumn column) {
    int row = wallHeadRow() + 1 + walls().indexOf(wall);
    return Area.cell(row, WALLS.number(column)).on(sheet);
  }

  /** Returns where a value of a round stands. */
  public String round(int round, RoundColumn column) {
    return Area.cell(roundHeadRow() + round, ROUNDS.number(column)).on(sheet);
  }

  /** Returns a column of the table of rounds, all rounds. */
  public String rounds(RoundColumn column) {
    return Area.cell(roundHeadRow() + 1, ROUNDS.number(column))
        .sized(Math.max(1, plan.rounds()), 1)
        .on(sheet);
  }

  /** Returns the row of the log of a round on a wall. */
  int pieceRow(int round, Wall wall) {
    return pieceHeadRow() + 1 + (round - 1) * walls().size() + walls().indexOf(wall);
  }

  /** Returns the short logs beside openings, whose rows follow those of the places. */
  List<PiecePlan.Half> halves() {
    return plan.pieces().stream().flatMap(piece -> piece.halves().stream()).toList();
  }

  /** Returns where a value of a log stands, by its place or its side of an opening. */
  public String at(AsBuilt.Place place, PieceColumn column) {
    if (place.side() == PlacePart.WHOLE) {
      return piece(place.round(), building().wall(place.wall()).orElseThrow(), column);
    }
    List<AsBuilt.Place> places = halves().stream().map(PiecePlan.Half::place).toList();
    int row = pieceHeadRow() + 1 + plan.pieces().size() + places.indexOf(place);
    return Area.cell(row, PIECES.number(column)).on(sheet);
  }

  /** Returns where a value of the log of a round on a wall stands. */
  public String piece(int round, Wall wall, PieceColumn column) {
    return Area.cell(pieceRow(round, wall), PIECES.number(column)).on(sheet);
  }

  /** Returns a column of the placed logs of one round. */
  public String pieces(int round, PieceColumn column) {
    return Area.cell(pieceRow(round, walls().get(0)), PIECES.number(column))
        .sized(walls().size(), 1)
        .on(sheet);
  }

  /** Returns a column of the placed logs of all rounds over one. */
  public String piecesOver(int round, PieceColumn column) {
    return Area.cell(pieceRow(round + 1, walls().get(0)), PIECES.number(column))
        .sized((plan.rounds() - round) * walls().size(), 1)
        .on(sheet);
  }

  /** Returns a column of all placed logs, by round, then wall. */
  public String pieces(PieceColumn column) {
    return Area.cell(pieceHeadRow() + 1, PIECES.number(column))
        .sized(Math.max(1, plan.pieces().size()), 1)
        .on(sheet);
  }

  /** Returns the tags of all logs of the tally. */
  public String logs(int column) {
    int count = Math.max(1, plan.job().logs().size());
    return Area.cell(logHeadRow() + 1, column).sized(count, 1).on(sheet);
  }

  /** Returns the mean of a column over the walls of one laying order in a round. */
  public String mean(int round, boolean first, PieceColumn column) {
    return walls().stream()
        .filter(wall -> wall.laidFirst() == first)
        .map(wall -> piece(round, wall, column))
        .collect(Collectors.joining(",", "AVERAGE(", ")"));
  }
}
