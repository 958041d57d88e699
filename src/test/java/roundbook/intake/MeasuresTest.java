package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.problem.Severity;
import roundbook.table.Table.Mark;
import roundbook.units.LengthUnit;

/** Cells of measures of every kind: read as they are written, or refused with their place. */
class MeasuresTest {
  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "18 | 216",
        "=18 | 216",
        "=18.5 | 222",
        "18.25 | 219",
        "18' 3 1/2\" | 219.5",
        "18 ft 3 in | 219",
        "=5.5@m | 216.54",
        "5.5 m | 216.54",
        "=216@in | 216",
        "550 cm | 216.54",
        "6 | 72",
        "60 | 720",
      })
  void readsALength(String cell, String inches) {
    Tally tally = Tally.one(Tally.HEADINGS, "A1|" + cell + "|14|13|12");
    assertEquals(inches, Tally.inches(tally.log().length()));
    assertEquals("", tally.said());
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | missing-cell.length | Fill the cell.",
        "n/a | missing-cell.length | Fill the cell.",
        "? | missing-cell.length | Fill the cell.",
        "abc | bad-number.unread | Type the value again.",
        "=! | bad-number.error-value | Type the value again.",
        "=? | bad-number.formula | Open the file in a spreadsheet program, save it, and run again.",
        "=true | bad-number.no-number | Type the value again.",
        "=1000000 | bad-number.no-measure | Type the value again.",
        "17-19 | bad-number.range | Type one number.",
        "16-6 | bad-number.range | Was it 16' 6\"?",
        "10/12/2004 | bad-number.like-date | Type the value again.",
        "=date 45467 | date-in-number.date | Was it 24-6? Type 24' 6\" or set the column to Text.",
        "=date 0.5 | date-in-number.date-or-time | Set the column to Text and type the value"
            + " again.",
        "5 | out-of-range.outside | Was it 5 m (16.4 ft)?",
        "5.9 | out-of-range.outside | Was it 5.9 m (19.4 ft)?",
        "61 | out-of-range.outside | Check the value and its unit.",
        "=-18 | out-of-range.outside | Check the value and its unit.",
        "0 | out-of-range.outside | Check the value and its unit.",
        "550 | out-of-range.outside | Was it 550 in (45.8 ft) or 550 cm (18 ft)?",
        "=5500 | out-of-range.outside | Was it 5500 mm (18 ft)?",
      })
  void refusesALength(String cell, String key, String remedy) {
    Tally tally = Tally.one(Tally.HEADINGS, "A1|" + cell + "|14|13|12");
    assertEquals("", tally.tags());
    assertEquals("B2 " + key, tally.said());
    assertEquals(remedy + " Log A1 left out.", tally.remedy(key));
    assertEquals(Severity.ERROR, tally.problem(key).severity());
    assertEquals("A1", tally.problem(key).log());
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "13 | 13",
        "=12.75 | 12.75",
        "12 3/4 | 12.75",
        "12-3/4 | 12.75",
        "=32@cm | 12.6",
        "320 mm | 12.6",
        "4 | 4",
        "36 | 36",
      })
  void readsADiameter(String cell, String inches) {
    Tally tally = Tally.one("Log|Length (ft)|Mid (in)", "A1|18|" + cell);
    assertEquals(inches, Tally.inches(tally.log().mid()));
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | missing-cell.diameter | Fill the cell.",
        "=date 38263 | date-in-number.date | Was it 10-3/4? Type 10 3/4 or set the column to Text.",
        "=date 45385 | date-in-number.date | Was it 4-3? Type the whole inches too, or set the"
            + " column to Text.",
        "=date 45355 | date-in-number.date | Was it 3/4? Type the whole inches too, or set the"
            + " column to Text.",
        "3.9 | out-of-range.outside | Check the value and its unit.",
        "36.5 | out-of-range.outside | Was it 36.5 cm (14.4 in)?",
        "320 | out-of-range.outside | Was it 320 mm (12.6 in)?",
        "12 to 13 | bad-number.range | Type one number.",
      })
  void refusesADiameter(String cell, String key, String remedy) {
    Tally tally = Tally.one("Log|Length (ft)|Mid (in)", "A1|18|" + cell);
    assertEquals("", tally.tags());
    assertEquals(remedy + " Log A1 left out.", tally.remedy(key));
    assertEquals("C2", tally.problem(key).where().address());
  }

  /** Read, and said: the person may have meant something else. */
  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "ca. 18 | 216 | doubtful-value.although",
        "18' 14\" | 230 | doubtful-value.although",
        "16 3/2 ft | 210 | doubtful-value.although",
      })
  void readsAndDoubts(String cell, String inches, String key) {
    Tally tally = Tally.one(Tally.HEADINGS, "A1|" + cell + "|14|13|12");
    assertEquals(inches, Tally.inches(tally.log().length()));
    assertEquals("B2 " + key, tally.said());
    assertEquals(Severity.WARNING, tally.problem(key).severity());
  }

  /** 12,125 with a decimal point in the file's other numbers: 12 thousand inches are no log. */
  @Test
  void aGroupOfThreeDigitsThatNoLogCanHaveIsADecimal() {
    Tally tally = Tally.one("Log|Length (ft)|Mid (in)", "A1|18|12,125");
    assertEquals("12.13", Tally.inches(tally.log().mid()));
    assertEquals("C2", tally.problem("doubtful-value.decimal-mark").where().address());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Log|Length (ft)|Mid girth (in)| A1|18|44 | 14.01",
        "Log|Length (ft)|Mid circumference (cm)| A1|18|=100 | 12.53",
      },
      ignoreLeadingAndTrailingWhitespace = true,
      maxCharsPerColumn = 200)
  void aGirthIsDividedByPi(
      String log, String length, String girth, String tag, String feet, String cell, String mid) {
    Tally tally = Tally.one(log + "|" + length + "|" + girth, tag + "|" + feet + "|" + cell);
    assertEquals(mid, Tally.inches(tally.log().mid()));
    assertTrue(tally.said().contains("C1 girth-converted"), tally.said());
  }

  /** The larger and the smaller reading; one alone counts where the other was not taken. */
  @ParameterizedTest
  @CsvSource({"12, 13, 12.5", "13, 12, 12.5", "12, '', 12", "'', 13, 13", "12.25, 12.25, 12.25"})
  void twoReadingsAreAMean(String one, String other, String mid) {
    Tally tally = Tally.one("Log|Length (ft)|Mid 1 (in)|Mid 2 (in)", "A1|18|" + one + "|" + other);
    assertEquals(mid, Tally.inches(tally.log().mid()));
  }

  @ParameterizedTest
  @CsvSource({
    "Length (ft), in, 16, 6, 198",
    "Length (ft), in, 16, '', 192",
    "Length (ft), in, 16, 7 1/2, 199.5",
    "Length (ft), in, 16, 7-1/2, 199.5",
    "Length (ft), in, 16, '7\"', 199",
    "Length (ft), in, 16, =0, 192",
    "ft, in, 16, 11, 203",
    "Length (m), cm, 5, 50, 216.54",
    "Length (m), cm, 5, '', 196.85",
  })
  void theRestOfALengthStandsInAColumnOfItsOwn(
      String whole, String rest, String one, String other, String inches) {
    Tally tally =
        Tally.one(
            "Log|" + whole + "|" + rest + "|Butt (in)|Tip (in)",
            "A1|" + one + "|" + other + "|14|11");
    assertEquals(inches, Tally.inches(tally.log().length()));
  }

  /** Inches beside feet that are no part of a foot are not read, which might be missed. */
  @ParameterizedTest
  @ValueSource(strings = {"12", "13", "abc", "-3"})
  void whatIsNoRestIsSaid(String rest) {
    Tally tally =
        Tally.of(
            "Log|Length (ft)|in|Butt (in)|Tip (in)", "A1|16|7|14|11", "A2|16|" + rest + "|14|11");
    assertEquals(Severity.WARNING, tally.problem("duplicate-column.unread").severity());
    assertEquals("C1", tally.problem("duplicate-column.unread").where().address());
  }

  @Test
  void aDashIsNoRest() {
    Tally tally =
        Tally.of("Log|Length (ft)|in|Butt (in)|Tip (in)", "A1|16|7 1/2|14|11", "A2|16|-|14|11");
    assertEquals("A1 199.5 14/12.08/11; A2 192 14/12.04/11", tally.measures());
  }

  /** A harvester's short pieces are no mistake, and are counted in one line. */
  @Test
  void whatAMachineCutForSomethingElseIsPassed() {
    Tally tally =
        Tally.of(Tally.HEADINGS, "1|18|14|13|12", "2|3|14|13|12", "3|18|3|3|3").mark(Mark.LINES);
    assertEquals("1", tally.tags());
    assertEquals("3", tally.problem("out-of-range.passed").where().address());
    assertEquals(Severity.INFO, tally.problem("out-of-range.passed").severity());
  }

  /** One log, written as each unit is: the same log to the nanometre. */
  @ParameterizedTest
  @CsvSource({
    "Length (mm), 5486.4, Mid (mm), 317.5",
    "Length (cm), 548.64, Mid (cm), 31.75",
    "Length (m), 5.4864, Mid (mm), 317.5",
    "Length (in), 216, Mid (in), 12 1/2",
    "Length (ft), 18, Mid (in), 12.5",
    "Length, 18', Mid, 12 1/2\"",
    "Length, 18' 0\", Mid, 12.5 in",
    "Length, =18@ft, Mid, =12.5@in",
    "Length, =5.4864@m, Mid, =31.75@cm",
  })
  void theSameLogInEveryUnit(String lengths, String length, String mids, String mid) {
    Tally tally = Tally.one("Log|" + lengths + "|" + mids, "A1|" + length + "|" + mid);
    assertEquals(5_486_400_000L, tally.log().length().nanometres());
    assertEquals(317_500_000L, tally.log().mid().nanometres());
    assertEquals(18, tally.log().length().in(LengthUnit.FOOT), 0);
  }
}
