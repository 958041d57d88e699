package roundbook.sheet.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;

/**
 * Number formats as people make them; what they show after ISO/IEC 29500-1, 18.8.31 (numFmts):
 * zeros pad, quotes and backslashes are literal, letters of dates make dates.
 */
class NumberLookTest {
  @ParameterizedTest(name = "{0} of {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "General | 12.5 | NUMBER | 12.5 |",
        "0.00 | 12.5 | NUMBER | 12.5 |",
        "0.00\" in\" | 12.5 | NUMBER | 12.5 | in",
        "0.0 \\c\\m | 32 | NUMBER | 32 | cm",
        "0\" (mm)\" | 320 | NUMBER | 320 | mm",
        "0'' | 18 | NUMBER | 18 | in",
        "0\"'\" | 18 | NUMBER | 18 | ft",
        "0\" pcs\" | 18 | NUMBER | 18 |",
        "# ??/?? | 12.75 | NUMBER | 12.75 |",
        "#,##0 | 1234 | NUMBER | 1234 |",
        "_(* #,##0_) | 7 | NUMBER | 7 |",
        "0;\"-\"0\" in\" | 7 | NUMBER | 7 |",
        "000 | 7 | NUMBER | 007 |",
        "\"L-\"000 | 7 | NUMBER | L-007 |",
        "00.0 | 7 | NUMBER | 7 |",
        "0.00E+00 | 7 | NUMBER | 7 |",
        "yyyy\\-mm\\-dd | 38263 | DATE | 2004-10-03 |",
        "d\\-mmm\\-yy | 38263 | DATE | 3-Oct-04 |",
      })
  void showsANumber(String format, double value, CellKind kind, String text, String unit) {
    Cell cell = NumberLook.of(200, format, false).cell(3, value, false);
    assertEquals(kind, cell.kind());
    assertEquals(text, cell.text());
    assertEquals(unit == null ? "" : unit, cell.unit());
    assertEquals(0, BigDecimal.valueOf(value).compareTo(cell.number()));
    assertEquals(3, cell.column());
  }

  /** A spreadsheet keeps 15 digits of what was typed; a double has more. */
  @ParameterizedTest
  @CsvSource({
    "0.30000000000000004, 0.3", "16.100000000000001, 16.1", "-0.0, 0", "1e3, 1000",
    "123456789012345, 123456789012345", "0.1, 0.1", "1e20, 100000000000000000000", "-12.5, -12.5",
  })
  void keepsWhatWasTyped(double value, String text) {
    assertEquals(text, NumberLook.of(0, null, false).cell(1, value, false).text());
  }

  /** Day 0 of the system of 1904 is 1 January 1904, day 1462 of the other (18.17.4.1). */
  @Test
  void daysOf1904AreCountedFromThere() {
    Cell cell = NumberLook.of(200, "yyyy\\-mm\\-dd", false).cell(1, 0, true);
    assertEquals("1904-01-01", cell.text());
    assertEquals(new BigDecimal("1462"), cell.number());
  }
}
