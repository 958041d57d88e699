package roundbook.table;

import java.util.List;

/**
 * One row of a sheet.
 *
 * @param number the physical row or line counted from 1
 * @param cells its cells by rising column; columns that are left out are blank
 * @param hidden whether the row is hidden
 * @param struck whether its cells are struck through
 * @param note what was written beside its cells, such as comments, or empty
 */
public record Row(int number, List<Cell> cells, boolean hidden, boolean struck, String note) {
  /** Copies the list. */
  public Row {
    cells = List.copyOf(cells);
  }

  /** Makes a row without anything written beside it. */
  public Row(int number, List<Cell> cells, boolean hidden, boolean struck) {
    this(number, cells, hidden, struck, "");
  }

  /** Returns the cell of a column; blank where there is none. */
  public Cell cell(int column) {
    int index = column - 1;
    if (index < cells.size() && index >= 0 && cells.get(index).column() == column) {
      return cells.get(index);
    }
    for (Cell cell : cells) {
      if (cell.column() == column) {
        return cell;
      }
    }
    return Cell.blank(column);
  }

  /** Returns whether nothing stands in it. */
  public boolean isBlank() {
    return cells.stream().allMatch(Cell::isBlank);
  }

  /** Returns its cells that hold something. */
  public List<Cell> filled() {
    return cells.stream().filter(cell -> !cell.isBlank()).toList();
  }
}
