package roundbook.problem;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The place of a cell, a row, a sheet or a whole file.
 *
 * @param file the file's name as shown to the user, or empty
 * @param sheet the sheet's name, or empty (a CSV has none)
 * @param row the physical row counted from 1, or 0 for the whole sheet
 * @param column the column counted from 1, or 0 for the whole row
 */
public record CellRef(String file, String sheet, int row, int column)
    implements Comparable<CellRef> {
  private static final Pattern CELL =
      Pattern.compile("(?:(.*)!)?([A-Z]{0,3})([0-9]{1,9})", Pattern.DOTALL);

  private static final Comparator<CellRef> ORDER =
      Comparator.comparing(CellRef::file)
          .thenComparing(CellRef::sheet)
          .thenComparingInt(CellRef::row)
          .thenComparingInt(CellRef::column);

  /** Returns the place of a whole file. */
  public static CellRef ofFile(String file) {
    return new CellRef(file, "", 0, 0);
  }

  /** Returns the place of a whole sheet. */
  public static CellRef ofSheet(String file, String sheet) {
    return new CellRef(file, sheet, 0, 0);
  }

  /** Returns the place of another column in the same row. */
  public CellRef atColumn(int other) {
    return new CellRef(file, sheet, row, other);
  }

  /** Returns the A1 reference without the sheet, the row's number alone, or nothing. */
  public String address() {
    return row == 0 ? "" : columnName(column) + row;
  }

  /** Returns a column's letters; 1 is {@code A}, 27 is {@code AA}, 0 is empty. */
  public static String columnName(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest > 0; rest = (rest - 1) / 26) {
      letters.insert(0, (char) ('A' + (rest - 1) % 26));
    }
    return letters.toString();
  }

  /** Orders by file, sheet, row, column. */
  @Override
  public int compareTo(CellRef other) {
    return ORDER.compare(this, other);
  }

  /** Reads what {@link #toString} makes of a place of a file. */
  public static CellRef parse(String text) {
    int mark = text.lastIndexOf(": ");
    if (mark < 0) {
      return ofFile(text);
    }
    String file = text.substring(0, mark);
    String inside = text.substring(mark + 2);
    Matcher cell = CELL.matcher(inside);
    return cell.matches()
        ? new CellRef(
            file,
            Optional.ofNullable(cell.group(1)).orElse(""),
            Integer.parseInt(cell.group(3)),
            columnNumber(cell.group(2)))
        : ofSheet(file, inside);
  }

  private static int columnNumber(String letters) {
    return letters.chars().reduce(0, (number, letter) -> number * 26 + letter - 'A' + 1);
  }

  /** Compares as any record does, without what a record must first link to do so. */
  @Override
  public boolean equals(Object other) {
    return other instanceof CellRef ref
        && row == ref.row
        && column == ref.column
        && file.equals(ref.file)
        && sheet.equals(ref.sheet);
  }

  @Override
  public int hashCode() {
    return ((file.hashCode() * 31 + sheet.hashCode()) * 31 + row) * 31 + column;
  }

  /** Returns {@code file: Sheet!B9}, leaving out what is not known. */
  @Override
  public String toString() {
    String address = address();
    String inside = sheet.isEmpty() ? address : address.isEmpty() ? sheet : sheet + "!" + address;
    return inside.isEmpty() ? file : file.isEmpty() ? inside : file + ": " + inside;
  }
}
