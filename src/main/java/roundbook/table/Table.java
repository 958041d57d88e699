package roundbook.table;

import java.util.List;
import roundbook.problem.CellRef;

/**
 * A sheet as it was read, or a whole text file.
 *
 * @param file the file's name as shown to the user
 * @param sheet the sheet's name; empty for a text file
 * @param hidden whether the sheet is hidden
 * @param decimalComma whether its numbers are written with a decimal comma
 * @param rows its rows that are not blank, from the top
 */
public record Table(
    String file, String sheet, boolean hidden, boolean decimalComma, List<Row> rows) {
  /** Copies the list. */
  public Table {
    rows = List.copyOf(rows);
  }

  /** Returns the place of a cell. */
  public CellRef at(Row row, int column) {
    return new CellRef(file, sheet, row.number(), column);
  }

  /** Returns the place of a whole row. */
  public CellRef at(Row row) {
    return at(row, 0);
  }

  /** Returns the place of the sheet. */
  public CellRef place() {
    return CellRef.ofSheet(file, sheet);
  }
}
