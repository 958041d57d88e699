package roundbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Places of cells as they are written and read. */
class CellRefTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "tally.csv",
        "tally.csv: B9",
        "tally.csv: 12",
        "a: b.xlsx: Logs!AB12",
        "cabin.xlsx: Logs! old!C3",
        "cabin.xlsx: Old list",
        ""
      })
  void whatIsWrittenIsReadAgain(String text) {
    assertEquals(text, CellRef.parse(text).toString());
  }

  @Test
  void thePartsAreReadToo() {
    CellRef expected = new CellRef("cabin.xlsx", "Logs", 12, 28);
    assertEquals(expected, CellRef.parse("cabin.xlsx: Logs!AB12"));
    assertEquals(expected, CellRef.parse(expected.toString()));
  }
}
