package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The samples give the tables that stand beside them, cell by cell.
 *
 * <p>Where a change to the plan is meant, copy the tables that {@code plan SAMPLE --tables DIR}
 * writes over those in {@code samples/expected}, and say why in the commit.
 */
class SamplesTest {
  @TempDir Path folder;

  @ParameterizedTest(name = "{0}")
  @CsvSource({"hill-cabin, xlsx, ''", "metric-hut, xlsx, ''", "hill-cabin-tally, csv, 20x14"})
  void givesTheExpectedTables(String name, String ending, String walls) throws IOException {
    List<String> args =
        new ArrayList<>(
            List.of("plan", "samples/" + name + "." + ending, "-o", folder.toString(), "-q"));
    args.addAll(List.of("--no-pictures", "--tables", folder.resolve("tables").toString()));
    if (!walls.isEmpty()) {
      args.addAll(List.of("--walls", walls));
    }
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream quiet = new PrintStream(new ByteArrayOutputStream(), true);
    int exit = Main.run(args.toArray(new String[0]), quiet, new PrintStream(err, true));
    assertEquals(0, exit, err.toString());
    for (String table : List.of("rounds", "pieces", "gaps")) {
      same(Path.of("samples/expected", name, table + ".csv"), table);
    }
  }

  private void same(Path expected, String table) throws IOException {
    List<String> rows = Files.readAllLines(expected);
    List<String> found = Files.readAllLines(folder.resolve("tables/" + table + ".csv"));
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
