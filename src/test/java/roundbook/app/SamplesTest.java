package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The samples give the tables that stand beside them, cell by cell.
 *
 * <p>Where a change to the plan is meant, copy the tables that {@code plan SAMPLE --tables DIR}
 * writes over those in {@code samples/expected}, and say why in the commit.
 */
class SamplesTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({"hill-cabin, xlsx", "metric-hut, xlsx", "hill-cabin-tally, csv"})
  void givesTheExpectedTables(String name, String ending) throws IOException {
    SampleRun run = SampleRun.of(name + "." + ending);
    for (String table : List.of("rounds", "pieces", "gaps")) {
      same(Path.of("samples/expected", name, table + ".csv"), run.lines(table));
    }
  }

  /** Logs of ordinary taper on walls of 20 ft lose nothing that a builder would act on. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"hill-cabin, xlsx", "metric-hut, xlsx"})
  void noEndOfASampleIsFlagged(String name, String ending) throws IOException {
    List<String> problems = SampleRun.of(name + "." + ending).lines("problems");
    assertTrue(problems.stream().noneMatch(line -> line.contains("tip-thin")), problems.toString());
    long bows = problems.stream().filter(line -> line.contains("gap-sweep")).count();
    assertTrue(problems.size() - bows < 8, "few problems are heard: " + problems);
    assertTrue(bows < 8, "few bows bring a gap out of its limits: " + problems);
  }

  private static void same(Path expected, List<String> found) throws IOException {
    List<String> rows = Files.readAllLines(expected);
    assertTrue(rows.size() > 4, expected.toString());
    assertEquals(rows.get(0), found.get(0), expected + ", headings");
    for (int row = 1; row < rows.size(); row++) {
      List<String> cells = List.of(rows.get(row).split(",", -1));
      List<String> own = List.of(found.get(row).split(",", -1));
      for (int column = 0; column < cells.size(); column++) {
        String place = expected + ", row " + (row + 1) + ", column " + (column + 1);
        assertEquals(cells.get(column), own.get(column), place);
      }
    }
    assertEquals(rows.size(), found.size(), expected + ", rows");
  }
}
