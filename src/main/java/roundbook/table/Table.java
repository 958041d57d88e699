package roundbook.table;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;

/**
 * A sheet as it was read, or a whole text file.
 *
 * <p>A small table holds all of its rows. A large one holds its first rows, enough to tell its
 * headings and units from, and reads the others again from its file when they are asked for, so
 * that a tally of a million logs never stands in memory as cells.
 *
 * @param file the file's name as shown to the user
 * @param sheet the sheet's name; empty for a text file
 * @param marks what is particular about it
 * @param rows its rows that are not blank, from the top; the first of them when it is large
 * @param all reads every row of a large table; null when {@code rows} holds them all
 */
public record Table(String file, String sheet, Set<Mark> marks, List<Row> rows, RowSource all) {
  /** How many rows of a large table are held. */
  public static final int HELD_ROWS = 2000;

  /** What is particular about a table. */
  public enum Mark {
    /** The sheet is hidden. */
    HIDDEN,
    /** Its numbers are written with a decimal comma. */
    DECIMAL_COMMA,
    /** Its rows are lines of a text without columns: places are given by line alone. */
    LINES
  }

  /** Copies the lists. */
  public Table {
    marks = Set.copyOf(marks);
    rows = List.copyOf(rows);
  }

  /** Returns a small table, all of whose rows are held. */
  public static Table of(String file, String sheet, Set<Mark> marks, List<Row> rows) {
    return new Table(file, sheet, marks, rows, null);
  }

  /** Returns whether the sheet is hidden. */
  public boolean hidden() {
    return marks.contains(Mark.HIDDEN);
  }

  /** Returns whether its numbers are written with a decimal comma. */
  public boolean decimalComma() {
    return marks.contains(Mark.DECIMAL_COMMA);
  }

  /**
   * Gives every row to the taker, from the top.
   *
   * @return what kept the file from being read to its end; empty when nothing did
   */
  public Optional<Problem> forEach(RowTaker taker) {
    if (all != null) {
      return all.forEach(taker);
    }
    rows.forEach(taker::take);
    return Optional.empty();
  }

  /**
   * Returns a cell as a length; empty where it is none or may be read in two ways.
   *
   * @param bare the unit of a number that states none
   */
  public Optional<Length> length(Row row, int column, LengthUnit bare) {
    Cell cell = row.cell(column);
    return switch (cell.kind()) {
      case NUMBER ->
          Optional.of(Length.of(cell.number(), LengthUnit.ofSymbol(cell.unit()).orElse(bare)));
      case TEXT ->
          new LengthReader(bare, decimalComma())
              .read(cell.text())
              .filter(each -> each.doubt().isEmpty())
              .map(LengthReader.Reading::length);
      default -> Optional.empty();
    };
  }

  /** Returns the place of a cell. */
  public CellRef at(Row row, int column) {
    return new CellRef(file, sheet, row.number(), marks.contains(Mark.LINES) ? 0 : column);
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
