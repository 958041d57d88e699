package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;

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
    Tally tally = tally(row);
    assertEquals("A1 A2 A3 A4", tally.tags(), what);
    assertEquals(
        1, tally.read().problems().stream().filter(FigureRowsTest::isFigures).count(), what);
  }

  @ParameterizedTest
  @CsvSource({
    "|20|15.2|13|11.1, near the mean as untagged logs are",
    "A5|20|15.4|13.1|10.9, a tag makes it a log",
    "|20|15.4|12.5|10.9, the mean but for one",
    "||15.4||, one number says nothing",
  })
  void otherRowsAreLogs(String row, String what) {
    assertEquals(
        0, tally(row).read().problems().stream().filter(FigureRowsTest::isFigures).count(), what);
  }

  private static boolean isFigures(Problem problem) {
    return problem.code() == ProblemCode.SUMMARY_ROW;
  }

  private static Tally tally(String last) {
    return Tally.of(Stream.concat(TALLY.stream(), Stream.of(last)).toArray(String[]::new));
  }
}
