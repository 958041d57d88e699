package roundbook.app;

import java.util.ArrayList;
import java.util.List;

/**
 * A tally made up with what is true of it, in rows of texts.
 *
 * @param kind what is particular about it
 * @param rows its rows, from the first
 * @param truth its logs
 */
record MadeTally(String kind, List<List<String>> rows, List<True> truth) {
  /**
   * A log as it lies in the yard, in millimetres.
   *
   * @param row the row that tells of it, counted from 1
   * @param tag what is painted on it
   * @param length its length
   * @param butt its diameter at the butt
   * @param mid its diameter halfway
   * @param tip its diameter at the tip
   * @param use how it may be taken
   */
  record True(int row, String tag, double length, double butt, double mid, double tip, Use use) {
    True as(Use other) {
      return new True(row, tag, length, butt, mid, tip, other);
    }
  }

  /** What a careful clerk does with a log. */
  enum Use {
    /** Reads it. */
    READ,
    /** Asks about it, or reads it and says so. */
    ASK,
    /** Leaves it out. */
    SKIP
  }

  static MadeTally of(String kind) {
    return new MadeTally(kind, new ArrayList<>(), new ArrayList<>());
  }

  /** Adds a row and returns its number. */
  int add(List<String> row) {
    rows.add(List.copyOf(row));
    return rows.size();
  }

  /** Returns the rows as text with a character between cells, quoted by the rules where needed. */
  String text(char separator) {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      List<String> cells = new ArrayList<>();
      for (String cell : row) {
        boolean quoted = cell.indexOf(separator) >= 0 || cell.startsWith("\"");
        cells.add(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
      }
      text.append(String.join(String.valueOf(separator), cells)).append('\n');
    }
    return text.toString();
  }
}
