package roundbook.report.live;

import java.util.List;
import java.util.stream.Stream;
import roundbook.report.live.LiveMap.PieceColumn;

/** The three rows of five diameters that a log has: butt, near shoulder, middle, far one, tip. */
enum DiameterRow {
  /** The planned log's, as tallied. */
  PLANNED(
      PieceColumn.PLANNED_BUTT,
      PieceColumn.PLANNED_NEAR,
      PieceColumn.PLANNED_MID,
      PieceColumn.PLANNED_FAR,
      PieceColumn.PLANNED_TIP),
  /** Those of the log that is used, as tallied. */
  OWN(
      PieceColumn.OWN_BUTT,
      PieceColumn.OWN_NEAR,
      PieceColumn.OWN_MID,
      PieceColumn.OWN_FAR,
      PieceColumn.OWN_TIP),
  /** As hewn. */
  HEWN(PieceColumn.BUTT, PieceColumn.NEAR, PieceColumn.MID, PieceColumn.FAR, PieceColumn.TIP);

  private final List<PieceColumn> columns;

  DiameterRow(PieceColumn... columns) {
    this.columns = List.of(columns);
  }

  /** Returns the row that a column of a diameter is of. */
  static DiameterRow of(PieceColumn column) {
    return Stream.of(values()).filter(row -> row.columns.contains(column)).findFirst().get();
  }

  /** Returns the column of a station, counted from 0 at the butt to 4 at the tip. */
  PieceColumn column(int station) {
    return columns.get(station);
  }

  /** Returns the station of a column. */
  int station(PieceColumn column) {
    return columns.indexOf(column);
  }
}
