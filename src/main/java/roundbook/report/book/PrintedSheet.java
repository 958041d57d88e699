package roundbook.report.book;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.page.TypedBox;

/**
 * What of a sheet stands on paper: cells as they are shown, drawings, what charts are drawn from.
 *
 * <p>The revision in a page's head is left out, for it differs on every page; so is a gap that was
 * measured, which nobody works by.
 *
 * @param cells the cells of the printed area, each with its address
 * @param figures its drawings and charts
 */
record PrintedSheet(List<String> cells, List<Figure> figures) {
  private static final int MOST_DECIMALS = 3;

  /** Returns what of a sheet is printed. */
  static PrintedSheet of(Sheet sheet) {
    List<String> cells = new ArrayList<>();
    sheet
        .rows()
        .forEach(
            (row, line) ->
                line.forEach(
                    (column, cell) -> {
                      boolean own = cell.role() == Role.REVISION || isGap(cell);
                      if (isPrinted(sheet, row, column) && !own) {
                        cells.add(Area.cell(row, column) + " " + shown(cell));
                      }
                    }));
    return new PrintedSheet(cells, sheet.figures());
  }

  private static boolean isGap(Cell cell) {
    return cell.name().startsWith(TypedBox.GAP.start());
  }

  private static boolean isPrinted(Sheet sheet, int row, int column) {
    Optional<Area> area = sheet.print().area();
    return area.isEmpty() || area.get().contains(row, column) || isCharted(sheet, row, column);
  }

  /** Returns whether a chart of the sheet is drawn from a cell. */
  private static boolean isCharted(Sheet sheet, int row, int column) {
    return sheet.figures().stream()
        .flatMap(figure -> figure instanceof Figure.Chart chart ? chart.series().stream() : null)
        .filter(series -> series.sheet().equals(sheet.name()))
        .anyMatch(series -> series.values().contains(row, column));
  }

  /** Returns a cell's value as it is printed, with its looks. */
  private static String shown(Cell cell) {
    Cell.Value value = cell.value() instanceof Cell.Formula made ? made.result() : cell.value();
    String text = value instanceof Cell.Number number ? shown(number, cell) : value.toString();
    return cell.role() + " " + text;
  }

  /** Returns a number to as many decimals as its format has; fractions are rounded already. */
  private static String shown(Cell.Number number, Cell cell) {
    return BigDecimal.valueOf(number.number())
        .setScale(decimals(cell.format()), RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static int decimals(Cell.Format format) {
    return switch (format) {
      case WHOLE, THOUSANDS, MILLIMETRES, WHOLE_SIGNED, POUNDS, KILOGRAMS -> 0;
      case DECIMAL_1, FEET -> 1;
      case DECIMAL_2, METRES, PERCENT -> 2;
      default -> MOST_DECIMALS;
    };
  }
}
