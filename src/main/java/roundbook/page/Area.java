package roundbook.page;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.problem.CellRef;

/**
 * A rectangle of cells, or one cell, by its A1 address.
 *
 * @param top the first row, counted from 1
 * @param left the first column, counted from 1 (A)
 * @param bottom the last row
 * @param right the last column
 */
public record Area(int top, int left, int bottom, int right) {
  /** The last row that a workbook of this kind can have. */
  public static final int LAST_ROW = 1_048_576;

  /** The last column that a workbook of this kind can have (XFD). */
  public static final int LAST_COLUMN = 16_384;

  private static final Pattern A1 = Pattern.compile("\\$?([A-Z]{1,3})\\$?([1-9][0-9]{0,6})");

  /**
   * Checks that the rectangle lies within a sheet.
   *
   * @throws IllegalArgumentException if it does not, or is turned inside out
   */
  public Area {
    if (top < 1 || left < 1 || bottom < top || right < left) {
      throw new IllegalArgumentException("no area: " + top + " " + left + " " + bottom);
    }
    if (bottom > LAST_ROW || right > LAST_COLUMN) {
      throw new IllegalArgumentException("beyond the sheet: row " + bottom + ", " + right);
    }
  }

  /**
   * Reads an address such as {@code B3} or {@code B3:D5}; dollar signs are passed over.
   *
   * @throws IllegalArgumentException if the text is no address
   */
  public static Area of(String address) {
    int colon = address.indexOf(':');
    Area first = one(colon < 0 ? address : address.substring(0, colon));
    return colon < 0 ? first : first.to(one(address.substring(colon + 1)));
  }

  /** Returns the area of one cell, row and column counted from 1. */
  public static Area cell(int row, int column) {
    return new Area(row, column, row, column);
  }

  private static Area one(String address) {
    Matcher matcher = A1.matcher(address);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("no cell address: " + address);
    }
    int column = matcher.group(1).chars().reduce(0, (sum, letter) -> sum * 26 + letter - 'A' + 1);
    return cell(Integer.parseInt(matcher.group(2)), column);
  }

  /** Returns the smallest area that holds this and another. */
  public Area to(Area other) {
    return new Area(
        Math.min(top, other.top),
        Math.min(left, other.left),
        Math.max(bottom, other.bottom),
        Math.max(right, other.right));
  }

  /** Returns this area moved so many rows down and columns right. */
  public Area moved(int rows, int columns) {
    return new Area(top + rows, left + columns, bottom + rows, right + columns);
  }

  /** Returns an area with the same first cell, so many rows and columns large. */
  public Area sized(int rows, int columns) {
    return new Area(top, left, top + rows - 1, left + columns - 1);
  }

  /** Returns whether this is a single cell. */
  public boolean isCell() {
    return top == bottom && left == right;
  }

  /** Returns whether any cell is in both areas. */
  public boolean overlaps(Area other) {
    return top <= other.bottom && other.top <= bottom && left <= other.right && other.left <= right;
  }

  /** Returns whether a cell, row and column counted from 1, is in this area. */
  public boolean contains(int row, int column) {
    return row >= top && row <= bottom && column >= left && column <= right;
  }

  /** Returns the address with dollar signs, such as {@code $B$3:$D$5}. */
  public String absolute() {
    String first = "$" + CellRef.columnName(left) + "$" + top;
    return isCell() ? first : first + ":$" + CellRef.columnName(right) + "$" + bottom;
  }

  /** Returns the address for a formula on any sheet, such as {@code 'Round 01'!$B$3}. */
  public String on(String sheet) {
    return "'" + sheet.replace("'", "''") + "'!" + absolute();
  }

  /** Returns the address without dollar signs, such as {@code B3:D5}; {@code of} reads it. */
  @Override
  public String toString() {
    return absolute().replace("$", "");
  }
}
