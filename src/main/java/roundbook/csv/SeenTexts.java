package roundbook.csv;

import roundbook.table.Cell;

/**
 * Makes cells of text, and gives the same one again where the same text stands again in its column.
 *
 * <p>A long tally writes the same few hundred measures over and over. A cell that is the same need
 * be made, and can be read, once. It holds so many cells and no more: a new one takes the place of
 * one that was seen before.
 */
final class SeenTexts {
  private static final int PLACES = 1 << 12;
  private static final int LONGEST = 24;

  private final Cell[] cells = new Cell[PLACES];

  /** Returns the cell of a part of a line. */
  Cell cell(int column, String line, int from, int to) {
    if (to - from > LONGEST) {
      return made(column, line.substring(from, to));
    }
    int hash = column;
    for (int i = from; i < to; i++) {
      hash = 31 * hash + line.charAt(i);
    }
    int place = (hash ^ hash >>> 12) & PLACES - 1;
    Cell seen = cells[place];
    if (seen == null || seen.column() != column || !isSame(seen.text(), line, from, to)) {
      seen = made(column, line.substring(from, to));
      cells[place] = seen;
    }
    return seen;
  }

  private static boolean isSame(String text, String line, int from, int to) {
    return text.length() == to - from && line.startsWith(text, from);
  }

  /** Takes off {@code ="007"}, with which exports keep a spreadsheet from changing a tag. */
  private static Cell made(int column, String text) {
    boolean wrapped = text.length() > 3 && text.startsWith("=\"") && text.endsWith("\"");
    return Cell.text(column, wrapped ? text.substring(2, text.length() - 1) : text);
  }
}
