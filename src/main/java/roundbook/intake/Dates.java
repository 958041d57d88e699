package roundbook.intake;

import java.math.BigDecimal;
import java.time.LocalDate;

/** Guesses what a spreadsheet turned into a date; a guess is shown, never used. */
final class Dates {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private Dates() {}

  /**
   * Returns the fraction that was probably typed: 3 October 2004 was {@code 10-3/4}, 4 March of a
   * recent year was {@code 3/4}; empty when none is likely.
   */
  static String fraction(BigDecimal serial) {
    if (serial == null || serial.signum() <= 0 || serial.intValue() > 2_000_000) {
      return "";
    }
    LocalDate date = DAY_ZERO.plusDays(serial.intValue());
    int year = date.getYear() % 100;
    boolean mixed = year == 2 || year == 4 || year == 8 || year == 16 || year == 32;
    if (mixed && date.getYear() < 2033 && date.getDayOfMonth() < year) {
      return date.getMonthValue() + "-" + date.getDayOfMonth() + "/" + year;
    }
    return date.getMonthValue()
        + "/"
        + date.getDayOfMonth()
        + " or "
        + date.getMonthValue()
        + "-"
        + date.getDayOfMonth();
  }
}
