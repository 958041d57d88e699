package roundbook.markup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import roundbook.problem.Problem;
import roundbook.table.Row;
import roundbook.table.RowSource;
import roundbook.table.RowTaker;
import roundbook.table.Table;

/** Holds the first rows of every sheet, and gives all rows of one when they are asked for. */
final class Held implements SheetTaker {
  private final String file;
  private final boolean comma;
  private final Function<SheetTaker, Optional<Problem>> again;
  private final List<Table> tables = new ArrayList<>();
  private List<Row> rows = new ArrayList<>();
  private String name = "";
  private boolean more;

  /**
   * Begins without a sheet.
   *
   * @param file the file's name, for messages
   * @param comma whether numbers that stand as text have a decimal comma
   * @param again reads the whole file once more
   */
  Held(String file, boolean comma, Function<SheetTaker, Optional<Problem>> again) {
    this.file = file;
    this.comma = comma;
    this.again = again;
  }

  @Override
  public boolean begin(String sheet) {
    name = sheet;
    rows = new ArrayList<>();
    more = false;
    return true;
  }

  @Override
  public boolean row(Row row) {
    if (rows.size() == Table.HELD_ROWS) {
      more = true;
      return false;
    }
    return rows.add(row);
  }

  @Override
  public void end(boolean hidden) {
    Set<Table.Mark> marks = new java.util.HashSet<>();
    if (hidden) {
      marks.add(Table.Mark.HIDDEN);
    }
    if (comma) {
      marks.add(Table.Mark.DECIMAL_COMMA);
    }
    int number = tables.size();
    RowSource all = taker -> again.apply(new One(number, taker));
    tables.add(new Table(file, name, marks, rows, more ? all : null));
  }

  List<Table> tables() {
    return tables;
  }

  /** Gives the rows of one sheet to their taker. */
  private static final class One implements SheetTaker {
    private final int wanted;
    private final RowTaker taker;
    private int sheet = -1;

    One(int wanted, RowTaker taker) {
      this.wanted = wanted;
      this.taker = taker;
    }

    @Override
    public boolean begin(String name) {
      return ++sheet == wanted;
    }

    @Override
    public boolean row(Row row) {
      taker.take(row);
      return true;
    }

    @Override
    public void end(boolean hidden) {}
  }
}
