package roundbook.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import roundbook.table.NamedBook.Found;
import roundbook.table.NamedBook.Range;

/** Cells are found by their names, whatever became of rows, columns and sheets. */
class NamedBookTest {
  private static final Row ROW =
      new Row(5, List.of(Cell.text(2, "twelve"), Cell.text(4, "x")), false, false);
  private static final Range BOX = new Range("Round 01", 5, 2, 5, 2);
  private static final NamedBook BOOK =
      new NamedBook(
          "crew.xlsx",
          List.of(Table.of("crew.xlsx", "Round 01", Set.of(), List.of(ROW))),
          Map.of(
              "measured_1_n", BOX,
              "measured_1_s", new Range("Round 01", 9, 3, 9, 3),
              "measured_2_n", new Range("Round 02", 5, 2, 5, 2)),
          Set.of("measured_1_e", "cut_1"));

  @Test
  void aNameIsFoundInAnyCase() {
    assertTrue(BOOK.has("Measured_1_N"));
    assertEquals(Optional.of(BOX), BOOK.range("MEASURED_1_N"));
    Found found = BOOK.cell("Measured_1_N").orElseThrow();
    assertEquals("twelve", found.text());
    assertEquals("crew.xlsx: Round 01!B5", found.where().toString());
    assertFalse(found.isBlank());
  }

  @Test
  void anEmptyBoxHasItsPlace() {
    Found found = BOOK.cell("Measured_1_S").orElseThrow();
    assertTrue(found.isBlank());
    assertEquals("crew.xlsx: Round 01!C9", found.where().toString());
  }

  @Test
  void aNameOfASheetThatIsGoneHasNoCell() {
    assertTrue(BOOK.has("Measured_2_N"));
    assertEquals(Optional.empty(), BOOK.cell("Measured_2_N"));
    assertEquals(Optional.empty(), BOOK.cell("Measured_9_N"));
  }

  @Test
  void whatIsGoneIsNamed() {
    assertEquals(List.of("measured_1_e", "measured_2_n"), BOOK.gone("Measured_"));
    assertEquals(List.of("cut_1"), BOOK.gone("Cut"));
    assertEquals(List.of(), BOOK.gone("Used"));
  }

  @Test
  void namesThatBeginAlikeComeInOrder() {
    assertEquals(List.of("measured_1_n", "measured_1_s"), BOOK.beginning("Measured_1"));
  }
}
