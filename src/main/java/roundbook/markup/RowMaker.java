package roundbook.markup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import roundbook.table.Cell;
import roundbook.table.Row;

/** Puts the cells of a row together; a cell merged downwards holds for every row it covers. */
final class RowMaker {
  static final int MOST_COLUMNS = 16_384;

  private final Map<Integer, Span> spans = new TreeMap<>();
  private final List<Cell> cells = new ArrayList<>();
  private int column;
  private final StringBuilder note = new StringBuilder();
  private boolean struck;

  /** A cell that reaches down. */
  private record Span(Cell cell, int left) {}

  /** Begins a row. */
  void begin() {
    cells.clear();
    column = 1;
    struck = false;
    note.setLength(0);
  }

  /** Adds what was written beside a cell. */
  void note(String text) {
    note.append(note.length() == 0 || text.isEmpty() ? "" : " ").append(text);
  }

  /** Returns whether a cell reaches down to the next row. */
  boolean reachesDown() {
    return !spans.isEmpty();
  }

  /** Returns the next column, counted from 1. */
  int column() {
    return column;
  }

  /** Goes on at another column. */
  void goTo(int next) {
    column = Math.max(1, Math.min(next, MOST_COLUMNS));
  }

  /** Passes over columns that a cell merged downwards covers. */
  void skipCovered() {
    while (spans.containsKey(column)) {
      column++;
    }
  }

  /**
   * Adds a cell in the next column.
   *
   * @param cell the cell, at that column
   * @param rows how many rows it reaches down to, 1 for its own
   */
  void add(Cell cell, int rows, boolean strike) {
    if (!cell.isBlank() && column <= MOST_COLUMNS) {
      cells.add(cell);
      struck |= strike;
    }
    if (rows > 1 && !cell.isBlank()) {
      spans.put(column, new Span(cell, rows));
    }
    column++;
  }

  /** Ends the row; it is blank where it has no cell of its own, as in the other kinds of files. */
  Row end(int number, boolean hidden) {
    boolean own = !cells.isEmpty();
    spans.forEach(
        (at, span) -> {
          if (own && cells.stream().noneMatch(cell -> cell.column() == at)) {
            cells.add(span.cell());
          }
        });
    spans.replaceAll((at, span) -> new Span(span.cell(), span.left() - 1));
    spans.values().removeIf(span -> span.left() < 1);
    cells.sort(Comparator.comparingInt(Cell::column));
    return new Row(number, cells, hidden, struck, note.toString());
  }
}
