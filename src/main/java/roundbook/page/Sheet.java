package roundbook.page;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * One finished sheet, made by a {@link SheetBuilder} and never changed.
 *
 * <p>Rows and columns are counted from 1 everywhere.
 */
public final class Sheet {
  private final String name;
  private final String id;
  private final View view;
  private final PageSetup page;
  private final Print print;
  private final SortedMap<Integer, SortedMap<Integer, Cell>> rows;
  private final SortedMap<Integer, Double> heights;
  private final SortedMap<Integer, Double> widths;
  private final List<Area> merges;
  private final List<Area> boxes;
  private final List<Rule> rules;
  private final List<Figure> figures;

  Sheet(SheetBuilder from) {
    name = from.name;
    id = from.id;
    view = from.view;
    page = from.page;
    print = from.print;
    rows = copy(from.rows);
    heights = Collections.unmodifiableSortedMap(new TreeMap<>(from.heights));
    widths = Collections.unmodifiableSortedMap(new TreeMap<>(from.widths));
    merges = List.copyOf(from.merges);
    boxes = List.copyOf(from.boxes);
    rules = List.copyOf(from.rules);
    figures = List.copyOf(from.figures);
  }

  private static SortedMap<Integer, SortedMap<Integer, Cell>> copy(
      SortedMap<Integer, SortedMap<Integer, Cell>> rows) {
    SortedMap<Integer, SortedMap<Integer, Cell>> copy = new TreeMap<>();
    rows.forEach(
        (row, cells) -> copy.put(row, Collections.unmodifiableSortedMap(new TreeMap<>(cells))));
    return Collections.unmodifiableSortedMap(copy);
  }

  /**
   * How the sheet is seen on a screen.
   *
   * @param hidden whether the sheet's tab is not shown
   * @param locked whether only unlocked cells can be typed in; there is no password
   * @param frozenRows how many rows stay at the top
   * @param frozenColumns how many columns stay at the left
   * @param zoom the scale on the screen in per cent
   */
  public record View(boolean hidden, boolean locked, int frozenRows, int frozenColumns, int zoom) {}

  /**
   * What of the sheet is printed.
   *
   * @param area the cells that are printed, or empty for all
   * @param firstTitleRow the first row that repeats on every page, or 0
   * @param lastTitleRow the last such row, or 0
   * @param breaks the rows after which a new page begins
   */
  public record Print(
      Optional<Area> area, int firstTitleRow, int lastTitleRow, SortedSet<Integer> breaks) {
    /** Copies the set. */
    public Print {
      breaks = Collections.unmodifiableSortedSet(new TreeSet<>(breaks));
    }
  }

  /**
   * Returns a name that a sheet can have: at most 31 characters, none of them a bracket, colon,
   * asterisk, question mark or slash, without an apostrophe at either end; never empty.
   */
  public static String safeName(String wanted) {
    String clean = wanted.replaceAll("[\\[\\]:*?/\\\\\\p{Cntrl}]", " ").replace('\u2019', '\'');
    String bare = clean.strip().replaceAll("^'+|'+$", "").strip();
    String cut = bare.length() > 31 ? bare.substring(0, 31).strip() : bare;
    return cut.isEmpty() ? "Sheet" : cut.replaceAll("'+$", "");
  }

  /** Returns the name on the tab, in the language of the job. */
  public String name() {
    return name;
  }

  /** Returns the id that names the sheet in every language, or empty. */
  public String id() {
    return id;
  }

  /** Returns how the sheet is seen. */
  public View view() {
    return view;
  }

  /** Returns the paper. */
  public PageSetup page() {
    return page;
  }

  /** Returns what is printed. */
  public Print print() {
    return print;
  }

  /** Returns the cells by row, then by column; only those that were put. */
  public SortedMap<Integer, SortedMap<Integer, Cell>> rows() {
    return rows;
  }

  /** Returns a cell if one was put there. */
  public Optional<Cell> cell(int row, int column) {
    return Optional.ofNullable(rows.getOrDefault(row, Collections.emptySortedMap()).get(column));
  }

  /** Returns the cell at an address such as {@code B3} if one was put there. */
  public Optional<Cell> cell(String address) {
    Area area = Area.of(address);
    return cell(area.top(), area.left());
  }

  /** Returns the heights of rows in points; other rows have the usual height. */
  public Map<Integer, Double> heights() {
    return heights;
  }

  /** Returns the widths of columns in characters; other columns have the usual width. */
  public Map<Integer, Double> widths() {
    return widths;
  }

  /** Returns the areas that are one cell each. */
  public List<Area> merges() {
    return merges;
  }

  /** Returns the areas with a heavy outline. */
  public List<Area> boxes() {
    return boxes;
  }

  /** Returns the checks and changing looks. */
  public List<Rule> rules() {
    return rules;
  }

  /** Returns the pictures and charts. */
  public List<Figure> figures() {
    return figures;
  }
}
