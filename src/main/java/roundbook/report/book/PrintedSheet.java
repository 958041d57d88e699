package roundbook.report.book;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Sheet;

/** What a crew sees of a page it works by. */
final class PrintedSheet {
  private static final int MOST_DECIMALS = 3;

  /**
   * What differs without a difference to the work: the revision, why logs were chosen, what the
   * crew typed itself, and headings, one of which tells a planned height.
   */
  private static final Set<Role> PASSED_OVER =
      Set.of(
          Role.REVISION,
          Role.PLAIN,
          Role.TYPED_IN,
          Role.TYPED_IN_TEXT,
          Role.COLUMN_HEAD,
          Role.COLUMN_HEAD_SHADED);

  private PrintedSheet() {}

  /** Returns the cells of a sheet's print area as they are shown, from the top left on. */
  static List<String> seen(Sheet sheet) {
    Optional<Area> area = sheet.print().area();
    List<String> cells = new ArrayList<>();
    sheet
        .rows()
        .forEach(
            (row, line) ->
                line.forEach(
                    (column, cell) -> {
                      boolean printed = area.isEmpty() || area.get().contains(row, column);
                      if (printed && !PASSED_OVER.contains(cell.role())) {
                        cells.add(shown(cell));
                      }
                    }));
    return cells;
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
      case WHOLE, THOUSANDS, MILLIMETRES, WHOLE_SIGNED -> 0;
      case POUNDS, KILOGRAMS, POUNDS_STAND_IN, KILOGRAMS_STAND_IN -> 0;
      case DECIMAL_1, FEET -> 1;
      case DECIMAL_2, METRES, PERCENT -> 2;
      default -> MOST_DECIMALS;
    };
  }
}
