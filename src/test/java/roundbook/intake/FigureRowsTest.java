package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.JobReader.Findings;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/** Figures over a tally under it, without a word; reckoned by hand. */
class FigureRowsTest {
  private static final List<String> TALLY =
      List.of(
          "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in)",
          "A1|18|14|12.5|11",
          "A2|20|15|13|11 1/2",
          "A3|22|16|13.5|11",
          "A4|20|16.5|13.5|10");

  @ParameterizedTest
  @CsvSource({
    "|20|15.4|13.1|10.9, mean",
    "|20|15.375|13.125|10.875, mean in full",
    "|20|15 3/8|13 1/8|10 7/8, mean in eighths",
    "|20|15.5|13.3|11, median",
    "|18|14|12.5|10, least",
    "|22|16.5|13.5|11.5, most",
    "|80|61.5|52.5|43.5, sum",
    "|80||52.5|, sum of two",
  })
  void areNoLog(String row, String what) {
    Read<Findings> read = read(row);
    assertEquals("A1 A2 A3 A4", tags(read), what);
    assertEquals(1, read.problems().stream().filter(FigureRowsTest::isFigures).count(), what);
  }

  @ParameterizedTest
  @CsvSource({
    "|20|15.2|13|11.1, near the mean as untagged logs are",
    "A5|20|15.4|13.1|10.9, a tag makes it a log",
    "|20|15.4|12.5|10.9, the mean but for one",
    "||15.4||, one number says nothing",
  })
  void otherRowsAreLogs(String row, String what) {
    Read<Findings> read = read(row);
    assertEquals(0, read.problems().stream().filter(FigureRowsTest::isFigures).count(), what);
  }

  private static boolean isFigures(Problem problem) {
    return problem.code() == ProblemCode.SUMMARY_ROW;
  }

  private static String tags(Read<Findings> read) {
    return read.value().orElseThrow().logs().stream()
        .map(Log::tag)
        .collect(Collectors.joining(" "));
  }

  private static Read<Findings> read(String last) {
    List<String> texts = new ArrayList<>(TALLY);
    texts.add(last);
    List<Row> rows =
        IntStream.range(0, texts.size()).mapToObj(i -> row(i + 1, texts.get(i))).toList();
    return JobReader.read(List.of(Table.of("tally.csv", "", Set.of(), rows)), Asked.NOTHING);
  }

  private static Row row(int number, String text) {
    String[] cells = text.split("\\|", -1);
    return new Row(
        number,
        IntStream.range(0, cells.length)
            .mapToObj(at -> Cell.text(at + 1, cells[at]))
            .filter(cell -> !cell.isBlank())
            .toList(),
        false,
        false);
  }
}
