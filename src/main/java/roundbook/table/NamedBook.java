package roundbook.table;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import roundbook.problem.CellRef;

/**
 * A workbook whose cells are found by their defined names.
 *
 * <p>A name stays with its cell when rows or columns are added, when sheets are hidden, renamed or
 * moved, and when the sheet's words are in another language.
 *
 * @param file the file's name as shown to the user
 * @param tables its sheets
 * @param names the cells of each name, by the name in small letters
 * @param lost names whose cells were deleted, in small letters
 */
public record NamedBook(
    String file, List<Table> tables, Map<String, Range> names, Set<String> lost) {
  /** Copies list, map and set. */
  public NamedBook {
    tables = List.copyOf(tables);
    names = new TreeMap<>(names);
    lost = new TreeSet<>(lost);
  }

  /**
   * The cells of a name.
   *
   * @param sheet the sheet's name
   * @param top the first row, counted from 1
   * @param left the first column, counted from 1
   * @param bottom the last row
   * @param right the last column
   */
  public record Range(String sheet, int top, int left, int bottom, int right) {}

  /**
   * A cell with its place.
   *
   * @param cell the cell
   * @param where its place
   */
  public record Found(Cell cell, CellRef where) {
    /** Returns whether nothing stands in it. */
    public boolean isBlank() {
      return cell.isBlank();
    }

    /** Returns what a person sees in it. */
    public String text() {
      return cell.text();
    }
  }

  /** Returns whether a name is defined. */
  public boolean has(String name) {
    return names.containsKey(key(name));
  }

  /** Returns the cells of a name; empty where there is none. */
  public Optional<Range> range(String name) {
    return Optional.ofNullable(names.get(key(name)));
  }

  /** Returns the defined names that begin so, in small letters and in order. */
  public List<String> beginning(String start) {
    String first = key(start);
    return names.keySet().stream().filter(name -> name.startsWith(first)).toList();
  }

  /** Returns the names that begin so and whose cells are gone, or the sheet they stood on. */
  public List<String> gone(String start) {
    Stream<String> stranded =
        beginning(start).stream().filter(name -> sheet(names.get(name).sheet()).isEmpty());
    Stream<String> deleted = lost.stream().filter(name -> name.startsWith(key(start)));
    return Stream.concat(stranded, deleted).sorted().toList();
  }

  /** Returns the first cell of a name; empty where the name or its sheet is gone. */
  public Optional<Found> cell(String name) {
    return range(name)
        .flatMap(range -> sheet(range.sheet()).map(table -> at(table, range.top(), range.left())));
  }

  /** Returns the sheet of a name. */
  public Optional<Table> sheet(String name) {
    return tables.stream().filter(table -> table.sheet().equalsIgnoreCase(name)).findFirst();
  }

  private static Found at(Table table, int row, int column) {
    Row none = new Row(row, List.of(), false, false);
    Row found = table.rows().stream().filter(each -> each.number() == row).findFirst().orElse(none);
    return new Found(found.cell(column), table.at(found, column));
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
