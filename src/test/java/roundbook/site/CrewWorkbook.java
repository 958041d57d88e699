package roundbook.site;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import roundbook.intake.Asked;
import roundbook.page.Area;
import roundbook.page.Book;
import roundbook.page.Cell.Formula;
import roundbook.page.Cell.Number;
import roundbook.page.Cell.Text;
import roundbook.page.Cell.Value;
import roundbook.page.Sheet;
import roundbook.plan.Plan;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.report.book.CrewBook;
import roundbook.report.frame.CrewContext;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.NamedBook;
import roundbook.table.NamedBook.Range;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * The crew workbook of a plan with what a crew types, read back without having been a file: its
 * pages are turned into tables as the reader of workbooks would give them.
 */
public final class CrewWorkbook {
  /** The name that it has in messages. */
  public static final String FILE = "crew.xlsx";

  private final Book book;
  private final Map<String, Range> names = new TreeMap<>();
  private final Map<String, Cell> typed = new HashMap<>();
  private final Set<String> gone = new TreeSet<>();
  private final Set<String> lost = new TreeSet<>();

  private CrewWorkbook(Book book) {
    this.book = book;
    book.names().forEach((name, area) -> names.put(key(name), range(area)));
    for (Sheet sheet : book.sheets()) {
      sheet
          .rows()
          .forEach(
              (row, cells) ->
                  cells.forEach(
                      (column, cell) -> {
                        if (!cell.name().isEmpty()) {
                          names.put(
                              key(cell.name()), new Range(sheet.name(), row, column, row, column));
                        }
                      }));
    }
  }

  /** Returns the workbook of a plan, its first revision. */
  public static CrewWorkbook of(Plan plan) {
    return of(plan, List.of());
  }

  /** Returns the workbook of a plan with what was found when its tally was read. */
  public static CrewWorkbook of(Plan plan, List<Problem> found) {
    CrewContext.Issue issue = new CrewContext.Issue(1, "cabin.xlsx", "0.1.0", false);
    return of(CrewBook.of(CrewContext.of(plan, found, issue)));
  }

  /** Returns any workbook. */
  public static CrewWorkbook of(Book book) {
    return new CrewWorkbook(book);
  }

  /** Returns the same workbook before anything was typed. */
  public CrewWorkbook again() {
    return of(book);
  }

  /** Types numbers and texts into cells by their names; an empty text clears a cell. */
  public CrewWorkbook type(Map<String, ?> values) {
    values.forEach(
        (name, value) ->
            type(
                name,
                value instanceof Double number
                    ? number(at(name).left(), number)
                    : Cell.text(at(name).left(), value.toString())));
    return this;
  }

  /** Puts a cell of any kind where a name stands: an error, a date. */
  public CrewWorkbook type(String name, CellKind kind, String shown) {
    return type(name, new Cell(at(name).left(), kind, shown, BigDecimal.TEN, ""));
  }

  private CrewWorkbook type(String name, Cell cell) {
    Range at = at(name);
    typed.put(place(at.sheet(), at.top(), at.left()), cell);
    return this;
  }

  /** Takes a sheet out, as somebody who deletes it does; its names are left. */
  public CrewWorkbook without(String sheet) {
    gone.add(sheet);
    return this;
  }

  /** Takes a name out as if it had never been there. */
  public CrewWorkbook never(String name) {
    names.remove(key(name));
    return this;
  }

  /** Takes the cells of a name out; the name is left. */
  public CrewWorkbook lose(String start) {
    List<String> all = names.keySet().stream().filter(name -> name.startsWith(key(start))).toList();
    all.forEach(names::remove);
    lost.addAll(all);
    return this;
  }

  private Range at(String name) {
    Range range = names.get(key(name));
    if (range == null) {
      throw new IllegalArgumentException("no cell is named " + name);
    }
    return range;
  }

  /** Returns the workbook as a reader of workbooks gives it. */
  public NamedBook named() {
    return named(FILE);
  }

  private NamedBook named(String file) {
    List<Table> tables =
        book.sheets().stream()
            .filter(sheet -> !gone.contains(sheet.name()))
            .map(sheet -> table(file, sheet))
            .toList();
    return new NamedBook(file, tables, names, lost);
  }

  /** Returns what is read back of it. */
  public Read<SiteReport> read() {
    return read(List.of());
  }

  /** Returns what is read back of it, with further tallies. */
  public Read<SiteReport> read(List<Table> tallies) {
    return CrewReader.read(named(), Optional.empty(), tallies, Asked.NOTHING);
  }

  /** Returns what is read back of it and of a copy that somebody else typed into. */
  public Read<SiteReport> with(CrewWorkbook copy) {
    return CrewReader.read(named(), Optional.of(copy.named("copy.xlsx")), List.of(), Asked.NOTHING);
  }

  /** Returns what is read back of it where nothing in it is an error. */
  public SiteReport report() {
    Read<SiteReport> read = read();
    return read.value().orElseThrow(() -> new AssertionError(read.problems().toString()));
  }

  private Table table(String file, Sheet sheet) {
    List<Row> rows = new ArrayList<>();
    sheet
        .rows()
        .forEach(
            (row, cells) -> {
              List<Cell> read = new ArrayList<>();
              cells.forEach(
                  (column, cell) -> {
                    Cell own = typed.get(place(sheet.name(), row, column));
                    Cell now = own == null ? cell(column, cell.value()) : own;
                    if (!now.isBlank()) {
                      read.add(now);
                    }
                  });
              rows.add(new Row(row, read, false, false));
            });
    return Table.of(file, sheet.name(), Set.of(), rows);
  }

  private static Cell cell(int column, Value value) {
    if (value instanceof Formula formula) {
      return cell(column, formula.result());
    }
    if (value instanceof Number number) {
      return number(column, number.number());
    }
    return value instanceof Text text ? Cell.text(column, text.text()) : Cell.blank(column);
  }

  private static Cell number(int column, double number) {
    BigDecimal exact = BigDecimal.valueOf(number).stripTrailingZeros();
    return new Cell(column, CellKind.NUMBER, exact.toPlainString(), exact, "");
  }

  private static Range range(String area) {
    int mark = area.lastIndexOf('!');
    String sheet = area.substring(0, mark).replaceAll("^'|'$", "").replace("''", "'");
    Area cells = Area.of(area.substring(mark + 1).replace("$", ""));
    return new Range(sheet, cells.top(), cells.left(), cells.bottom(), cells.right());
  }

  private static String place(String sheet, int row, int column) {
    return sheet + "!" + row + "!" + column;
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
