package roundbook.report.live;

import java.util.List;
import java.util.stream.IntStream;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.page.TypedBox;
import roundbook.units.Length;

/**
 * What each log of the tally would be in a place of each kind, for the log used instead.
 *
 * <p>A kind of place is a trimmed length with the distances of its shoulders. The log is taken as
 * squared by the allowance at its butt, all its excess off the tip. Where it is too short the cells
 * stay empty.
 */
public final class LiveLogs {
  /** The column of the tags. */
  public static final int TAG = 1;

  private static final int LENGTH = 2;
  private static final int FIRST = 3;
  private static final int STATIONS = 5;
  private static final int MIDDLE = 2;

  private final LiveContext live;
  private final List<ShoulderDistances> kinds;

  LiveLogs(LiveContext live) {
    this.live = live;
    this.kinds =
        live.plan().pieces().stream()
            .flatMap(piece -> LiveSpot.of(piece).stream())
            .map(ShoulderDistances::of)
            .distinct()
            .toList();
  }

  /** A kind of place by its distances from the trimmed butt end. */
  private record ShoulderDistances(Length near, Length far, Length trimmed) {
    /** Returns the kind of a log's place. */
    static ShoulderDistances of(LiveSpot spot) {
      return new ShoulderDistances(spot.near(), spot.far(), spot.piece().trimmed());
    }

    /** Returns a piece's diameters at butt, shoulders, middle and tip, butt first. */
    List<Length> diameters(Piece piece) {
      return List.of(piece.butt(), piece.at(near), piece.mid(), piece.at(far), piece.tip());
    }
  }

  /** Puts the table on the working sheet. */
  void put(SheetBuilder sheet) {
    sheet.row(live.map().logHeadRow());
    sheet.add(head("working.log.tag")).add(head("working.log.length"));
    for (ShoulderDistances kind : kinds) {
      String trimmed = live.formats().feetInches(kind.trimmed());
      IntStream.range(0, STATIONS)
          .forEach(number -> sheet.add(head("working.log.station." + number, trimmed)));
    }
    for (Log log : live.plan().job().logs()) {
      row(sheet.nextRow(), log);
    }
  }

  /** Writes one log with its diameters in each kind of place. */
  private void row(SheetBuilder sheet, Log log) {
    sheet.add(Cell.text(log.tag())).add(helper(log.length()));
    for (ShoulderDistances kind : kinds) {
      Length allowance = live.context().rules().length(Setting.SQUARING_ALLOWANCE);
      if (log.length().isLessThan(kind.trimmed().plus(allowance.times(2)))) {
        sheet.skip(STATIONS);
      } else {
        kind.diameters(new Piece(log, allowance, kind.trimmed()))
            .forEach(diameter -> sheet.add(helper(diameter)));
      }
    }
  }

  /** Returns a heading by its key. */
  private Cell head(String key, Object... values) {
    return Cell.text(live.text(key, values)).role(Role.COLUMN_HEAD);
  }

  /** Returns a fixed length. */
  private Cell helper(Length length) {
    return Cell.length(length, live.unit()).role(Role.HELPER);
  }

  /**
   * Returns the formula of where a place's diameters come from: 0 the plan, above 0 the row of the
   * log used instead, −1 no such log, −2 too short for the place.
   */
  String source(LiveSpot spot) {
    String used = spot.named(TypedBox.USED);
    String match = "MATCH(TRIM(" + used + "&\"\")," + live.map().logs(TAG) + ",0)";
    String middle = live.map().logs(column(spot, MIDDLE));
    return "IF("
        + used
        + "=\"\",0,IF(ISNUMBER("
        + match
        + "),IF(INDEX("
        + middle
        + ","
        + match
        + ")>0,"
        + match
        + ",-2),-1))";
  }

  /** Returns the formula of a diameter of the log in a row of the table. */
  String lookUp(LiveSpot spot, int station, String row) {
    return "INDEX(" + live.map().logs(column(spot, station)) + "," + row + ")";
  }

  /** Returns the formula of the length of the log in a row of the table. */
  String length(String row) {
    return "INDEX(" + live.map().logs(LENGTH) + "," + row + ")";
  }

  /** Returns the column of a station in the kind of a log's place. */
  private int column(LiveSpot spot, int station) {
    return FIRST + kinds.indexOf(ShoulderDistances.of(spot)) * STATIONS + station;
  }
}
