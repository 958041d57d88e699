package roundbook.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import roundbook.problem.Phrase;

/** Guesses what a spreadsheet turned into a date; a guess is shown, never used. */
final class Dates {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final int LAST_SERIAL = 2_958_465;

  private Dates() {}

  /**
   * A guess at what was typed.
   *
   * @param date the date; empty when the number is no day
   * @param remedy what to type instead, with the guess
   */
  record Guess(Optional<Phrase> date, Phrase remedy) {}

  /**
   * Guesses: 3 October 2004 was {@code 10-3/4}; of other dates the month and day were the two
   * numbers, {@code 3/4} of an inch or {@code 24-6}, feet and inches.
   *
   * @param along whether the number should be a length
   */
  static Guess guess(BigDecimal serial, boolean along) {
    if (serial == null || serial.intValue() < 1 || serial.intValue() > LAST_SERIAL) {
      return new Guess(Optional.empty(), Phrase.of("remedy.date-in-number"));
    }
    LocalDate date = DAY_ZERO.plusDays(serial.intValue());
    return new Guess(Optional.of(shown(date)), typed(date, along));
  }

  private static Phrase shown(LocalDate date) {
    return Phrase.of("date")
        .with("day", date.getDayOfMonth())
        .with("month", Phrase.of("month." + date.getMonthValue()))
        .with("year", String.valueOf(date.getYear()));
  }

  private static Phrase typed(LocalDate date, boolean along) {
    int month = date.getMonthValue();
    int day = date.getDayOfMonth();
    int year = date.getYear() % 100;
    boolean mixed = (year & (year - 1)) == 0 && year >= 2 && day < year && day % 2 == 1;
    if (mixed && !along) {
      String fraction = day + "/" + year;
      return was(month + "-" + fraction, month + " " + fraction);
    }
    if (along) {
      boolean dayFirst = day >= 6 && month < 12;
      int feet = dayFirst ? day : month;
      int inches = dayFirst ? month : day;
      return was(feet + "-" + inches, feet + "' " + inches + "\"");
    }
    boolean fraction = (day & (day - 1)) == 0 && month < day;
    String guess = fraction ? month + "/" + day : month + "-" + day;
    return Phrase.of("remedy.was-it-part").with("guess", guess);
  }

  private static Phrase was(String guess, String typed) {
    return Phrase.of("remedy.was-it-typed").with("guess", guess).with("typed", typed);
  }
}
