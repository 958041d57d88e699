package roundbook.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.problem.CellRef;

/** Cells, rows and tables as they were read. */
class TableTest {
  private static Row row(int number, Cell... cells) {
    return new Row(number, List.of(cells), false, false);
  }

  /** Blanks of every kind that spreadsheets and pages of the web put round a text. */
  @ParameterizedTest
  @ValueSource(strings = {" ", "\t", "\u00a0", "\u2007", "\u202f", "\u200b", "\u2060", "\ufeff"})
  void blanksOfEveryKindAreTakenOffBothEnds(String blank) {
    assertEquals("a b", Cell.text(1, blank + "a b" + blank + blank).text());
    assertTrue(Cell.text(1, blank).isBlank());
    assertEquals("a" + blank + "b", Cell.strip("a" + blank + "b"));
  }

  @Test
  void aCellIsFoundByItsColumn() {
    Row row = row(4, Cell.text(1, "a"), Cell.text(2, "b"), Cell.text(5, "e"));
    assertEquals("b", row.cell(2).text());
    assertEquals("e", row.cell(5).text());
    assertTrue(row.cell(3).isBlank());
    assertTrue(row.cell(0).isBlank());
    assertTrue(row.cell(99).isBlank());
    assertEquals(99, row.cell(99).column());
  }

  @Test
  void aRowOfBlanksIsBlank() {
    assertTrue(row(1).isBlank());
    assertTrue(row(1, Cell.blank(1), Cell.text(2, " ")).isBlank());
    Row filled = row(1, Cell.blank(1), Cell.text(2, "x"));
    assertFalse(filled.isBlank());
    assertEquals(List.of(filled.cell(2)), filled.filled());
  }

  @Test
  void aPlaceIsTheSheetsOwn() {
    Row row = row(7, Cell.text(2, "b"));
    Table sheet = Table.of("job.xlsx", "Logs", Set.of(), List.of(row));
    assertEquals("job.xlsx: Logs!B7", sheet.at(row, 2).toString());
    assertEquals("job.xlsx: Logs!7", sheet.at(row).toString());
    assertEquals("job.xlsx: Logs", sheet.place().toString());
    Table lines = Table.of("yard.hpr", "", Set.of(Table.Mark.LINES), List.of(row));
    assertEquals(new CellRef("yard.hpr", "", 7, 0), lines.at(row, 2), "lines have no columns");
  }

  @Test
  void marksAreAskedFor() {
    Table both = Table.of("a", "", Set.of(Table.Mark.HIDDEN, Table.Mark.DECIMAL_COMMA), List.of());
    assertTrue(both.hidden() && both.decimalComma());
    Table none = Table.of("a", "", Set.of(), List.of());
    assertFalse(none.hidden() || none.decimalComma());
  }

  @Test
  void aSmallTableGivesItsOwnRowsAndALargeOneReadsThem() {
    List<Row> taken = new ArrayList<>();
    Row first = row(1, Cell.text(1, "a"));
    Row last = row(9, Cell.text(1, "z"));
    assertEquals(Optional.empty(), Table.of("a", "", Set.of(), List.of(first)).forEach(taken::add));
    assertEquals(List.of(first), taken);
    taken.clear();
    Table large =
        new Table(
            "a",
            "",
            Set.of(),
            List.of(first),
            taker -> {
              taker.take(first);
              taker.take(last);
              return Optional.empty();
            });
    large.forEach(taken::add);
    assertEquals(List.of(first, last), taken);
  }
}
