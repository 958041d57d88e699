package roundbook.report;

import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.plan.Plan;

/**
 * Where each number of the working sheet stands, for the formulas of all other sheets.
 *
 * @param sheet the working sheet's name
 * @param plan the plan
 */
record LiveMap(String sheet, Plan plan) {
  private static final int FIRST_RULE_ROW = 4;
  private static final int GAP_ROWS = 3;

  /** The rules that formulas use, one a row. */
  enum RuleLine {
    GAP,
    SIZE_STEP,
    PRINT_STEP,
    SLOPE_RUN,
    OVERHANG,
    SQUARING,
    GAP_LEAST,
    GAP_MOST,
    TOLERANCE,
    MOST_CHANGE,
    SHOULDER_LEAST,
    NECK_LEAST
  }

  /** The columns of the table of walls. */
  enum WallColumn {
    NAME,
    THICKNESS,
    DROP,
    TRIMMED
  }

  /** The columns of the table of rounds. */
  enum RoundColumn {
    ROUND,
    MEAN,
    SPREAD,
    SIZE,
    LOWER,
    NECK,
    UPPER,
    RISE,
    FIRST_HEIGHT,
    SECOND_HEIGHT,
    LEVEL_HEIGHT,
    SMALLEST_END,
    FIRST_GAP,
    SECOND_GAP
  }

  /** The columns of the table of placed logs. */
  enum PieceColumn {
    ROUND,
    WALL,
    PLANNED_TAG,
    SOURCE,
    TAG,
    TO_NEAR,
    TO_FAR,
    HALF,
    PLANNED_BUTT,
    PLANNED_NEAR,
    PLANNED_MID,
    PLANNED_FAR,
    PLANNED_TIP,
    OWN_BUTT,
    OWN_NEAR,
    OWN_MID,
    OWN_FAR,
    OWN_TIP,
    BUTT,
    NEAR,
    MID,
    FAR,
    TIP,
    LOWER,
    UPPER,
    HEIGHT,
    LEFT_GAP,
    MIDDLE_GAP,
    RIGHT_GAP,
    LESS_BETWEEN,
    MORE_BETWEEN,
    LEAST_GAP,
    MOST_GAP,
    FLAG,
    BUTT_FAULTS,
    TIP_FAULTS,
    WEAK,
    VERDICT,
    SAID,
    OFF_BUTT,
    FALLS_OFF
  }

  /** Returns the ring of walls. */
  Building building() {
    return plan.job().building();
  }

  /** Returns the walls in clockwise order. */
  List<Wall> walls() {
    return building().walls();
  }

  int ruleRow(RuleLine line) {
    return FIRST_RULE_ROW + line.ordinal();
  }

  int wallHeadRow() {
    return FIRST_RULE_ROW + RuleLine.values().length + GAP_ROWS - 1;
  }

  int roundHeadRow() {
    return wallHeadRow() + walls().size() + GAP_ROWS;
  }

  int pieceHeadRow() {
    return roundHeadRow() + plan.rounds() + GAP_ROWS;
  }

  int logHeadRow() {
    return pieceHeadRow() + plan.pieces().size() + GAP_ROWS;
  }

  String rule(RuleLine line) {
    return Area.cell(ruleRow(line), 2).on(sheet);
  }

  String wall(Wall wall, WallColumn column) {
    int row = wallHeadRow() + 1 + walls().indexOf(wall);
    return Area.cell(row, column.ordinal() + 1).on(sheet);
  }

  String round(int round, RoundColumn column) {
    return Area.cell(roundHeadRow() + round, column.ordinal() + 1).on(sheet);
  }

  /** Returns a column of the table of rounds, all rounds. */
  String rounds(RoundColumn column) {
    return Area.cell(roundHeadRow() + 1, column.ordinal() + 1)
        .sized(Math.max(1, plan.rounds()), 1)
        .on(sheet);
  }

  int pieceRow(int round, Wall wall) {
    return pieceHeadRow() + 1 + (round - 1) * walls().size() + walls().indexOf(wall);
  }

  String piece(int round, Wall wall, PieceColumn column) {
    return Area.cell(pieceRow(round, wall), column.ordinal() + 1).on(sheet);
  }

  /** Returns a column of the placed logs of one round. */
  String pieces(int round, PieceColumn column) {
    return Area.cell(pieceRow(round, walls().get(0)), column.ordinal() + 1)
        .sized(walls().size(), 1)
        .on(sheet);
  }

  /** Returns a column of all placed logs, by round, then wall. */
  String pieces(PieceColumn column) {
    return Area.cell(pieceHeadRow() + 1, column.ordinal() + 1)
        .sized(Math.max(1, plan.pieces().size()), 1)
        .on(sheet);
  }

  /** Returns the tags of all logs of the tally. */
  String logs(int column) {
    int count = Math.max(1, plan.job().logs().size());
    return Area.cell(logHeadRow() + 1, column).sized(count, 1).on(sheet);
  }

  /** Returns the mean of a column over the walls of one laying order in a round. */
  String mean(int round, boolean first, PieceColumn column) {
    return walls().stream()
        .filter(wall -> wall.laidFirst() == first)
        .map(wall -> piece(round, wall, column))
        .collect(Collectors.joining(",", "AVERAGE(", ")"));
  }
}
