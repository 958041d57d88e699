package roundbook.markup;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;

/** Makes cells of the values that markup writes. */
final class Values {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private Values() {}

  /**
   * Returns a cell of a number.
   *
   * @param shown what the cell shows
   * @param look how its numbers look
   */
  static Cell number(int column, String value, String shown, NumberStyle look) {
    try {
      BigDecimal number = new BigDecimal(value.strip());
      if (number.precision() - number.scale() > 15) {
        return Cell.text(column, shown.isEmpty() ? value : shown);
      }
      BigDecimal plain = number.round(new java.math.MathContext(15)).stripTrailingZeros();
      String text = look.padded() && !shown.isEmpty() ? shown : plain.toPlainString();
      return new Cell(column, CellKind.NUMBER, text, plain, look.unit());
    } catch (NumberFormatException broken) {
      return Cell.text(column, shown.isEmpty() ? value : shown);
    }
  }

  /** Returns a cell of a date, written as 2004-10-03 with or without a time. */
  static Cell date(int column, String value, String shown) {
    try {
      LocalDate date = LocalDate.parse(value.substring(0, Math.min(10, value.length())));
      BigDecimal serial = BigDecimal.valueOf(ChronoUnit.DAYS.between(DAY_ZERO, date));
      return new Cell(column, CellKind.DATE, shown.isEmpty() ? value : shown, serial, "");
    } catch (DateTimeParseException time) {
      return new Cell(column, CellKind.DATE, shown.isEmpty() ? value : shown, BigDecimal.ZERO, "");
    }
  }

  /** Returns a cell of true or false. */
  static Cell truth(int column, boolean value) {
    return new Cell(column, CellKind.BOOLEAN, value ? "TRUE" : "FALSE", null, "");
  }

  /** Returns a cell of an error, or of a formula that was never reckoned. */
  static Cell none(int column, CellKind kind, String shown) {
    return new Cell(column, kind, shown, null, "");
  }
}
