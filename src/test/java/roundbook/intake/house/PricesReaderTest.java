package roundbook.intake.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.intake.JobReader.Findings;
import roundbook.job.Price;
import roundbook.job.Price.Basis;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/** Prices as builders type them. */
class PricesReaderTest {
  private static final Asked WALLS =
      new Asked(
          java.util.Map.of(),
          Optional.of(HouseTold.ofWalls("20x16")),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  @Test
  void aPriceHasABasisALineAndADelivery() {
    Read<Findings> read = read("bd ft Doyle|$0.60|1, 3-5|75|Hill yard", "each|45|||");
    assertEquals(List.of(), problems(read));
    assertEquals(
        List.of(
            new Price(
                Basis.DOYLE,
                new BigDecimal("0.60"),
                Set.of(1, 3, 4, 5),
                Optional.of(new BigDecimal("75"))),
            new Price(Basis.EACH, new BigDecimal("45"), Set.of(), Optional.empty())),
        read.value().orElseThrow().job().orElseThrow().prices());
  }

  @ParameterizedTest
  @CsvSource({
    "'|45|||', A2",
    "'board foot|45|||', A2",
    "'each|dear|||', B2",
    "'each|-3|||', B2",
    "'each|0|||', B2",
    "'each|45|three||', C2",
    "'each|45|5-3||', C2",
    "'each|45||soon|', D2"
  })
  void whatCannotBeWorkedWithIsSaidWhereItStands(String row, String cell) {
    List<Problem> problems = problems(read(row));
    assertEquals(1, problems.size());
    assertEquals(ProblemCode.BAD_PRICE, problems.get(0).code());
    assertTrue(problems.get(0).toString().contains("Prices!" + cell), problems.toString());
  }

  @ParameterizedTest
  @CsvSource({"How sold|Price, basis", "Basis|We ask, price", "Yard|Telephone, basis"})
  void aHeadingThatIsMissingIsAskedForOnce(String headings, String missing) {
    List<Problem> problems = problems(readUnder(headings, "each|45", "each|50"));
    assertEquals(1, problems.size());
    assertEquals(ProblemCode.BAD_PRICE, problems.get(0).code());
    assertTrue(problems.get(0).toString().contains(missing), problems.toString());
  }

  @Test
  void anEmptyListOfPricesIsNone() {
    assertEquals(List.of(), read("||||").value().orElseThrow().job().orElseThrow().prices());
  }

  /** Returns what is said besides that there is no log yet. */
  private static List<Problem> problems(Read<Findings> read) {
    return read.problems().stream()
        .filter(problem -> problem.code() != ProblemCode.EMPTY_FILE)
        .toList();
  }

  private static Read<Findings> read(String... texts) {
    return readUnder("Basis|Price|For lines|Delivery a load|Remarks", texts);
  }

  private static Read<Findings> readUnder(String headings, String... texts) {
    List<Row> rows = new ArrayList<>();
    rows.add(row(1, headings));
    for (String text : texts) {
      rows.add(row(rows.size() + 1, text));
    }
    Table prices = Table.of("job.xlsx", "Prices", Set.of(), rows);
    return JobReader.read(List.of(prices), WALLS);
  }

  private static Row row(int number, String text) {
    String[] cells = text.split("\\|", -1);
    return new Row(
        number,
        IntStream.range(0, cells.length).mapToObj(at -> Cell.text(at + 1, cells[at])).toList(),
        false,
        false);
  }
}
