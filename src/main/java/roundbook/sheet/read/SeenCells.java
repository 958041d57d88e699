package roundbook.sheet.read;

import roundbook.table.Cell;

/**
 * Cells that were made before, found by what the file stores of them.
 *
 * <p>A long tally writes the same few hundred measures over and over. A cell that is the same need
 * be made, and can be read, once. It holds so many cells and no more: a new one takes the place of
 * one that was seen before.
 */
final class SeenCells {
  private static final int PLACES = 1 << 12;

  private final Stored[] stored = new Stored[PLACES];
  private final Cell[] cells = new Cell[PLACES];

  /**
   * What a file stores of a cell.
   *
   * @param column its column
   * @param type its type; null for a number
   * @param look how its numbers look
   * @param value its value
   */
  record Stored(int column, String type, NumberLook look, String value) {
    boolean is(Stored other) {
      return other != null
          && column == other.column
          && look == other.look
          && value.equals(other.value)
          && (type == null ? other.type == null : type.equals(other.type));
    }

    private int place() {
      int hash = 31 * value.hashCode() + column;
      return (hash ^ hash >>> 12) & PLACES - 1;
    }
  }

  /** Returns the cell that was made of the same; null when there was none. */
  Cell find(Stored wanted) {
    int place = wanted.place();
    return wanted.is(stored[place]) ? cells[place] : null;
  }

  /** Remembers a cell. */
  Cell keep(Stored made, Cell cell) {
    int place = made.place();
    stored[place] = made;
    cells[place] = cell;
    return cell;
  }
}
