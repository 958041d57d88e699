package roundbook.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** A cell read as a length is certain, or it is none. */
class TableLengthTest {
  @ParameterizedTest
  @CsvSource({"24', 288", "24, 24", "1/2 in, 0.5", "24?,", "'~24',", "about,", "'',"})
  void aTextIsALengthOrNone(String text, Double inches) {
    Optional<Length> wanted =
        Optional.ofNullable(inches).map(each -> Length.ofInchFraction((int) (each * 2), 2));
    assertEquals(wanted, read(Cell.text(1, text)));
  }

  @Test
  void aNumberTakesTheUnitOfItsFormatBeforeTheOneOfTheSheet() {
    assertEquals(
        Optional.of(Length.ofInches(24)),
        read(new Cell(1, Cell.CellKind.NUMBER, "2 ft", BigDecimal.valueOf(2), "ft")));
  }

  private static Optional<Length> read(Cell cell) {
    Row row = new Row(2, List.of(cell), false, false);
    return Table.of("job.xlsx", "Walls", Set.of(), List.of(row)).length(row, 1, LengthUnit.INCH);
  }
}
