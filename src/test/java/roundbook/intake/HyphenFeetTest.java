package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.JobReader.Findings;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;

/** Lengths such as 16-6: feet and inches where they can only be that, else asked about. */
class HyphenFeetTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Length (ft-in), 18-0, 216",
    "Length (ft-in), 18-0 16 14-10, 216 192 178",
    "Length (ft & in), 16-06, 198",
    "Length (ft), 18-0 16-6 14-11, 216 198 179",
    "Length, 18-0 16-6 8-10, 216 198 106",
  })
  void readsFeetAndInches(String heading, String lengths, String inches) {
    List<String> read =
        read(heading, lengths).value().orElseThrow().logs().stream()
            .map(Log::length)
            .map(Length::inches)
            .map(each -> String.valueOf(each.intValue()))
            .toList();
    assertEquals(List.of(inches.split(" ")), read);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Length (ft), 18-0, 1",
    "Length (ft), 18-0 16-6, 2",
    "Length (ft), 18-0 16 14, 1",
    "Length (ft), 8-10 10-11 9-11, 3",
    "Length (ft-in), 18-13, 1",
    "Length (ft), 18-0 16-6 14-12, 3",
  })
  void asksWhereItMayBeARange(String heading, String lengths, int asked) {
    List<Problem> problems = read(heading, lengths).problems();
    assertEquals(
        asked,
        problems.stream().filter(each -> each.said().key().equals("bad-number.range")).count(),
        problems.toString());
  }

  private static Read<Findings> read(String heading, String lengths) {
    List<Row> rows = new ArrayList<>(List.of(row(1, "Log", heading, "Butt (in)", "Tip (in)")));
    for (String length : lengths.split(" ")) {
      rows.add(row(rows.size() + 1, "L" + rows.size(), length, "14", "12"));
    }
    return JobReader.read(List.of(Table.of("tally.csv", "", Set.of(), rows)), Asked.NOTHING);
  }

  private static Row row(int number, String... texts) {
    List<Cell> cells = new ArrayList<>();
    for (String text : texts) {
      cells.add(Cell.text(cells.size() + 1, text));
    }
    return new Row(number, cells, false, false);
  }
}
