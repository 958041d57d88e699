package roundbook.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Puts one sheet together, cell by cell; then {@code build} it.
 *
 * <pre>{@code
 * Sheet sheet =
 *     new SheetBuilder("Round 01", PageSetup.of(Kind.SITE, Paper.LETTER).lying().fit(ONE_PAGE))
 *         .id("round_01")
 *         .widths(12, 9, 9, 14)
 *         .row(1).height(36)
 *         .merge("A1:C1", Cell.text("ROUND 1").role(Role.TITLE))
 *         .put("B3", Cell.number(3.5).role(Role.MARK).format(Format.FRACTION).named("Upper_1"))
 *         .build();
 * }</pre>
 *
 * <p>The builder keeps a current row, so that tables can be filled with {@link #row} and {@link
 * #add} without counting addresses. Unless told otherwise a sheet is locked without a password,
 * shows no grid lines and is not hidden.
 */
public final class SheetBuilder {
  final String name;
  String id = "";
  Sheet.View view = new Sheet.View(false, true, 0, 0, 100);
  PageSetup page;
  Sheet.Print print = new Sheet.Print(Optional.empty(), 0, 0, new TreeSet<>());
  final SortedMap<Integer, SortedMap<Integer, Cell>> rows = new TreeMap<>();
  final SortedMap<Integer, Double> heights = new TreeMap<>();
  final SortedMap<Integer, Double> widths = new TreeMap<>();
  final List<Area> merges = new ArrayList<>();
  final List<Area> boxes = new ArrayList<>();
  final List<Rule> rules = new ArrayList<>();
  final List<Figure> figures = new ArrayList<>();

  private int row = 1;
  private int column = 1;

  /**
   * Begins a sheet.
   *
   * @param name the name on its tab
   * @param page the paper
   * @throws IllegalArgumentException if a sheet cannot have the name ({@link Sheet#safeName})
   */
  public SheetBuilder(String name, PageSetup page) {
    if (!Sheet.safeName(name).equals(name)) {
      throw new IllegalArgumentException("no name for a sheet: " + name);
    }
    this.name = name;
    this.page = Objects.requireNonNull(page);
  }

  /** Names the sheet for programs, in letters, digits and underscores, in every language alike. */
  public SheetBuilder id(String other) {
    id = Book.checkedName(other);
    return this;
  }

  /** Returns the sheet's name on its tab. */
  public String name() {
    return name;
  }

  /** Makes a row the current one, its first column being the next for {@link #add}. */
  public SheetBuilder row(int number) {
    row = number;
    column = 1;
    return this;
  }

  /** Makes the row after the current one the current row. */
  public SheetBuilder nextRow() {
    return row(row + 1);
  }

  /** Returns the current row's number. */
  public int row() {
    return row;
  }

  /** Returns how many columns have cells so far. */
  public int width() {
    return rows.values().stream().mapToInt(SortedMap::lastKey).max().orElse(0);
  }

  /** Sets the current row's height in points. */
  public SheetBuilder height(double points) {
    heights.put(row, points);
    return this;
  }

  /** Sets the widths of the first columns in characters of the usual font. */
  public SheetBuilder widths(double... characters) {
    for (int index = 0; index < characters.length; index++) {
      widths.put(index + 1, characters[index]);
    }
    return this;
  }

  /** Puts a cell at an address such as {@code B3}, in place of what stood there. */
  public SheetBuilder put(String address, Cell cell) {
    Area area = Area.of(address);
    return put(area.top(), area.left(), cell);
  }

  /** Puts a cell at a row and a column, both counted from 1. */
  public SheetBuilder put(int atRow, int atColumn, Cell cell) {
    Area.cell(atRow, atColumn);
    rows.computeIfAbsent(atRow, key -> new TreeMap<>()).put(atColumn, cell);
    return this;
  }

  /** Puts a cell in the current row's next column and goes on to the one after. */
  public SheetBuilder add(Cell cell) {
    put(row, column, cell);
    column++;
    return this;
  }

  /** Leaves out so many columns of the current row. */
  public SheetBuilder skip(int columns) {
    column += columns;
    return this;
  }

  /** Makes cells from the current row's next column on one cell, so many columns wide. */
  public SheetBuilder addAcross(int columns, Cell cell) {
    Area area = Area.cell(row, column).sized(1, columns);
    column += columns;
    return merge(area, cell);
  }

  /** Makes an area one cell with a content; its other cells get the same role's looks. */
  public SheetBuilder merge(String address, Cell cell) {
    return merge(Area.of(address), cell);
  }

  /**
   * Makes an area one cell with a content; its other cells get the same role's looks.
   *
   * @throws IllegalArgumentException if it overlaps another such area
   */
  public SheetBuilder merge(Area area, Cell cell) {
    if (merges.stream().anyMatch(area::overlaps)) {
      throw new IllegalArgumentException(name + ": merged twice: " + area);
    }
    fill(area, Cell.blank(cell.role()));
    if (!area.isCell()) {
      merges.add(area);
    }
    return put(area.top(), area.left(), cell);
  }

  /** Puts the same cell everywhere in an area, for a ground or a border. */
  public SheetBuilder fill(Area area, Cell cell) {
    for (int at = area.top(); at <= area.bottom(); at++) {
      for (int across = area.left(); across <= area.right(); across++) {
        put(at, across, cell);
      }
    }
    return this;
  }

  /** Draws a heavy outline around an area, whatever borders its cells' roles have. */
  public SheetBuilder box(Area area) {
    boxes.add(area);
    return this;
  }

  /** Adds a check of what is typed, or looks that change. */
  public SheetBuilder rule(Rule rule) {
    rules.add(rule);
    return this;
  }

  /** Adds a picture or a chart. */
  public SheetBuilder figure(Figure figure) {
    figures.add(figure);
    return this;
  }

  /** Keeps so many rows and columns in sight. */
  public SheetBuilder freeze(int frozenRows, int frozenColumns) {
    view = new Sheet.View(view.hidden(), view.locked(), frozenRows, frozenColumns, view.zoom());
    return this;
  }

  /** Hides the sheet's tab. */
  public SheetBuilder hidden() {
    view =
        new Sheet.View(true, view.locked(), view.frozenRows(), view.frozenColumns(), view.zoom());
    return this;
  }

  /** Lets every cell be typed in. */
  public SheetBuilder unlocked() {
    view =
        new Sheet.View(view.hidden(), false, view.frozenRows(), view.frozenColumns(), view.zoom());
    return this;
  }

  /** Sets the scale on the screen in per cent. */
  public SheetBuilder zoom(int perCent) {
    view =
        new Sheet.View(
            view.hidden(), view.locked(), view.frozenRows(), view.frozenColumns(), perCent);
    return this;
  }

  /** Prints only an area. */
  public SheetBuilder printArea(Area area) {
    print =
        new Sheet.Print(
            Optional.of(area), print.firstTitleRow(), print.lastTitleRow(), print.breaks());
    return this;
  }

  /** Repeats rows at the top of every printed page. */
  public SheetBuilder printTitles(int firstRow, int lastRow) {
    print = new Sheet.Print(print.area(), firstRow, lastRow, print.breaks());
    return this;
  }

  /** Begins a new printed page after a row. */
  public SheetBuilder breakAfter(int afterRow) {
    TreeSet<Integer> breaks = new TreeSet<>(print.breaks());
    breaks.add(afterRow);
    print = new Sheet.Print(print.area(), print.firstTitleRow(), print.lastTitleRow(), breaks);
    return this;
  }

  /** Returns how large an area is by the heights and widths set so far, at 100 %. */
  public Figure.Size sizeOf(Area area) {
    return Figure.Size.of(area, heights, widths);
  }

  /** Sets how the sheet is scaled to the paper. */
  public SheetBuilder fit(PageSetup.Fit fit) {
    page = page.fit(fit);
    return this;
  }

  /** Returns the sheet as it is now. */
  public Sheet build() {
    return new Sheet(this);
  }
}
