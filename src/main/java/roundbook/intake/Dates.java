package roundbook.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/** Guesses what a spreadsheet turned into a date; a guess is shown, never used. */
final class Dates {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");
  private static final int LAST_SERIAL = 2_958_465;

  private Dates() {}

  /**
   * A guess at what was typed.
   *
   * @param date the date in words, or empty when the number is no day
   * @param remedy what to type instead, with the guess
   */
  record Guess(String date, String remedy) {}

  /**
   * Guesses: 3 October 2004 was {@code 10-3/4}; of other dates the month and day were the two
   * numbers, {@code 3/4} of an inch or {@code 24-6}, feet and inches.
   *
   * @param along whether the number should be a length
   */
  static Guess guess(BigDecimal serial, boolean along) {
    if (serial == null || serial.intValue() < 1 || serial.intValue() > LAST_SERIAL) {
      return new Guess("", "Set the column to Text and type the value again.");
    }
    LocalDate date = DAY_ZERO.plusDays(serial.intValue());
    String text = "set the column to Text";
    String typed = typed(date, along);
    return new Guess(shown(date), "Was it " + typed + " or " + text + ".");
  }

  private static String shown(LocalDate date) {
    return date.getDayOfMonth() + " " + MONTHS.get(date.getMonthValue() - 1) + " " + date.getYear();
  }

  private static String typed(LocalDate date, boolean along) {
    int month = date.getMonthValue();
    int day = date.getDayOfMonth();
    int year = date.getYear() % 100;
    boolean mixed = (year & (year - 1)) == 0 && year >= 2 && day < year && day % 2 == 1;
    if (mixed && !along) {
      return month + "-" + day + "/" + year + "? Type " + month + " " + day + "/" + year;
    }
    if (along) {
      boolean dayFirst = day >= 6 && month < 12;
      return (dayFirst
              ? day + "-" + month + "? Type " + day + "' " + month
              : month + "-" + day + "? Type " + month + "' " + day)
          + "\"";
    }
    boolean fraction = (day & (day - 1)) == 0 && month < day;
    String guess = fraction ? month + "/" + day : month + "-" + day;
    return guess + "? Type the whole inches too,";
  }
}
