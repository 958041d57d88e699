package roundbook.report.book;

import java.util.ArrayList;
import java.util.List;
import roundbook.page.Area;
import roundbook.page.Figure;
import roundbook.page.Sheet;

/**
 * How a sheet falls on pages, as its print area, its breaks, the heights of its rows and the scale
 * that its width asks for have it.
 *
 * @param firstRows the first row of each page
 */
public record PrintedPages(List<Integer> firstRows) {
  /** Copies the list. */
  public PrintedPages {
    firstRows = List.copyOf(firstRows);
  }

  private static final double USUAL_ROW = 15;

  /** By how much a sheet is shrunk at a time until it is on as many pages as it is to be. */
  private static final double STEP = 1.01;

  /** Returns the pages of a sheet under the margins of the standard template. */
  public static PrintedPages of(Sheet sheet) {
    Area area = printed(sheet);
    double columns = Figure.Size.of(area, sheet.heights(), sheet.widths()).wide();
    double page = sheet.page().high() / sheet.page().scale(columns);
    int most = sheet.page().fit().tall();
    PrintedPages pages = of(sheet, area, page);
    while (most > 0 && pages.count() > most) {
      page *= STEP;
      pages = of(sheet, area, page);
    }
    return pages;
  }

  /** Returns the pages of an area when so many points stand on each. */
  private static PrintedPages of(Sheet sheet, Area area, double page) {
    List<Integer> first = new ArrayList<>(List.of(area.top()));
    double used = 0;
    for (int row = area.top(); row <= area.bottom(); row++) {
      double high = high(sheet, row);
      boolean turned = sheet.print().breaks().contains(row - 1) || used + high > page;
      if (turned && row > area.top()) {
        first.add(row);
        used = titles(sheet, row);
      }
      used += high;
    }
    return new PrintedPages(first);
  }

  /** Returns the area that is printed: the one that is set, or all that is used. */
  private static Area printed(Sheet sheet) {
    int bottom = sheet.rows().isEmpty() ? 1 : sheet.rows().lastKey();
    int last = sheet.heights().keySet().stream().mapToInt(row -> row).max().orElse(1);
    int right = sheet.widths().keySet().stream().mapToInt(column -> column).max().orElse(1);
    Area used = new Area(1, 1, Math.max(bottom, last), right);
    return sheet.print().area().orElse(used);
  }

  private static double high(Sheet sheet, int row) {
    return sheet.heights().getOrDefault(row, USUAL_ROW);
  }

  /** Returns how high the rows stand that are repeated over a page that begins with a row. */
  private static double titles(Sheet sheet, int row) {
    double high = 0;
    int last = Math.min(row - 1, sheet.print().lastTitleRow());
    for (int title = sheet.print().firstTitleRow(); title > 0 && title <= last; title++) {
      high += high(sheet, title);
    }
    return high;
  }

  /** Returns how many pages there are. */
  public int count() {
    return firstRows.size();
  }

  /** Returns on which page a row stands, the first being 0. */
  int pageOf(int row) {
    return (int) firstRows.stream().skip(1).filter(first -> first <= row).count();
  }
}
