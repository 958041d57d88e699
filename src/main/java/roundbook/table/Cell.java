package roundbook.table;

import java.math.BigDecimal;

/**
 * One cell as it stands in a file.
 *
 * @param column the column counted from 1
 * @param kind what it holds
 * @param text what a person sees in it, without blanks at either end
 * @param number its number; null unless the kind is a number or a date
 * @param unit a unit that only its number format shows, such as {@code in}, or empty
 */
public record Cell(int column, CellKind kind, String text, BigDecimal number, String unit) {
  /** What a cell holds. */
  public enum CellKind {
    /** Nothing, or blanks only. */
    BLANK,
    /** Text. */
    TEXT,
    /** A number. */
    NUMBER,
    /** A number that is shown as a date or time. */
    DATE,
    /** True or false. */
    BOOLEAN,
    /** An error value, or a formula that ends in one. */
    ERROR,
    /** A formula whose value was never stored. */
    UNCOMPUTED
  }

  private static final Cell NOWHERE = new Cell(0, CellKind.BLANK, "", null, "");

  /** Returns a cell of text; blanks make an empty cell. */
  public static Cell text(int column, String text) {
    String stripped = strip(text);
    return new Cell(
        column, stripped.isEmpty() ? CellKind.BLANK : CellKind.TEXT, stripped, null, "");
  }

  /** Returns an empty cell. */
  public static Cell blank(int column) {
    return column == 0 ? NOWHERE : new Cell(column, CellKind.BLANK, "", null, "");
  }

  /** Returns whether nothing stands in it. */
  public boolean isBlank() {
    return kind == CellKind.BLANK;
  }

  /** Takes blanks of every kind off both ends, the narrow, hard and joining ones too. */
  public static String strip(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isSpace(text.charAt(from))) {
      from++;
    }
    while (to > from && isSpace(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  private static boolean isSpace(char letter) {
    return Character.isWhitespace(letter)
        || Character.isSpaceChar(letter)
        || letter == '\u200B'
        || letter == '\u2060'
        || letter == '\uFEFF';
  }
}
