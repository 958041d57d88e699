package roundbook.report.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.LogColumn;

/**
 * The columns of a sheet's table from left to right, each described once: its heading, its width,
 * the cell of a row and, where formulas and later revisions look it up, its defined name.
 *
 * @param <T> what a row is about
 */
public final class Columns<T> {
  private final CrewContext context;
  private final String heads;
  private final List<Column<T>> all = new ArrayList<>();

  /**
   * One column.
   *
   * @param name its defined name, if it has one
   * @param heading what stands over it
   * @param width how wide it is, in characters
   * @param cell its cell in the row of a thing
   */
  private record Column<T>(
      Optional<String> name, String heading, double width, Function<T, Cell> cell) {}

  /**
   * Begins a table.
   *
   * @param heads what the keys of its headings begin with, such as {@code hewing.head}
   */
  public Columns(CrewContext context, String heads) {
    this.context = context;
    this.heads = heads;
  }

  /** Adds a column with the heading of a key. */
  public Columns<T> add(String key, double width, Function<T, Cell> cell) {
    return add(Optional.empty(), context.text(heads + "." + key), width, cell);
  }

  /** Adds a column of the log list with its name and the heading of a key. */
  public Columns<T> add(LogColumn column, String key, double width, Function<T, Cell> cell) {
    return add(Optional.of(column.named()), context.text(heads + "." + key), width, cell);
  }

  /** Adds a column with a name and a heading of its own. */
  public Columns<T> own(String name, String heading, double width, Function<T, Cell> cell) {
    return add(Optional.of(name), heading, width, cell);
  }

  private Columns<T> add(
      Optional<String> name, String heading, double width, Function<T, Cell> cell) {
    all.add(new Column<>(name, heading, width, cell));
    return this;
  }

  /** Returns the headings. */
  public String[] headings() {
    return all.stream().map(Column::heading).toArray(String[]::new);
  }

  /** Returns the widths, in characters. */
  public double[] widths() {
    return all.stream().mapToDouble(Column::width).toArray();
  }

  /** Returns the cells of a thing's row. */
  public List<Cell> row(T thing) {
    return all.stream().map(column -> column.cell().apply(thing)).toList();
  }

  /** Returns which column has a name, counted from 1; 0 when none has. */
  public int at(LogColumn named) {
    return all.stream().map(Column::name).toList().indexOf(Optional.of(named.named())) + 1;
  }

  /** Puts the names with where the columns lie on a sheet between two rows. */
  public void putNames(SortedMap<String, String> names, int first, int last, String sheet) {
    for (int at = 1; at <= all.size(); at++) {
      String where = new Area(first, at, last, at).on(sheet);
      all.get(at - 1).name().ifPresent(name -> names.put(name, where));
    }
  }
}
