package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.intake.JobReader.Findings;
import roundbook.intake.house.HouseTold;
import roundbook.job.Log;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Rows that are read in few steps, held against each of them read alone under the same headings,
 * when no measure has been seen before and all go the long way.
 */
class PlainRowsTest {
  private static final int ROWS = 300;
  private static final List<String> TAGS =
      List.of(
          "A%d",
          "abc-%d", "%d.0", "%d", "total %d", "SUM%d", "%d logs", "TOTAL %d", "", "?%d", "-%d");
  private static final List<String> LENGTHS =
      List.of("16' 6\"", "18", "18.25", "20", "", "ca. 18", "16-6", "5", "18 ft", "x", "---");
  private static final List<String> DIAMETERS =
      List.of(
          "14", "13 1/2", "13", "12.5", "12", "11 3/4", "11", "10", "", "19", "3", "n/a", "25 cm");
  private static final List<String> OTHERS =
      List.of("spruce", "pine", "", "sill", "3", "over", "no", "N", "a note in a few words");

  private final SplittableRandom random = new SplittableRandom(11);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Log|Length (ft)|Butt (in)|Mid (in)|Tip (in)|Species",
        "Log|Length (ft)|Butt (in)|Tip (in)",
        "Log|Length (ft)|Mid (in)|Species|Remarks",
        "Species|Log|Length (ft)|Butt (in)|Mid (in)|Tip (in)",
        "Log|Length (ft)|Butt (in) over bark|Mid (in)|Tip (in)|Keep for|Count|Yard",
        "Log|Length (ft)|Butt girth (in)|Mid (in)|Tip (in)|Bark|Wall|Round",
      })
  void readsEachRowAsItIsReadAlone(String headings) {
    Row top = row(1, List.of(headings.split("\\|")));
    List<Row> rows = new ArrayList<>(List.of(top));
    for (int i = 2; i < ROWS; i++) {
      rows.add(random(i, top));
    }
    Read<Findings> whole = read(rows);
    int logs = 0;
    for (Row row : rows.subList(1, rows.size())) {
      Read<Findings> alone = read(List.of(top, row));
      assertEquals(ofRow(row, alone), ofRow(row, whole));
      logs += alone.value().orElseThrow().logs().size();
    }
    assertTrue(logs > ROWS / 3, "too few rows were logs: " + logs);
  }

  /**
   * Returns the logs of a row and what is said of it. What is said of whole columns counts rows,
   * and a value lies apart only from other rows, so that is said otherwise of each row alone.
   */
  private static String ofRow(Row row, Read<Findings> read) {
    List<Log> logs = read.value().orElseThrow().logs();
    return row.number()
        + logs.stream().filter(log -> log.origin().row() == row.number()).toList().toString()
        + read.problems().stream()
            .filter(problem -> problem.where().row() == row.number())
            .filter(problem -> !problem.said().key().equals("doubtful-value.apart"))
            .toList();
  }

  private static Read<Findings> read(List<Row> rows) {
    Table table = Table.of("tally.csv", "", Set.of(), rows);
    Map<String, String> peeled = Map.of("Bark_off", "0.5");
    return JobReader.read(
        List.of(table),
        new Asked(
            peeled,
            Optional.of(HouseTold.ofWalls("20x14")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  private static Row row(int number, List<String> texts) {
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      cells.add(Cell.text(i + 1, texts.get(i)));
    }
    cells.removeIf(Cell::isBlank);
    return new Row(number, cells, false, false);
  }

  /** A row that is plain in most of its cells, so that each oddity meets plain ones. */
  private Row random(int number, Row top) {
    List<Cell> cells = new ArrayList<>();
    for (Cell heading : top.cells()) {
      int column = heading.column();
      String text = heading.text();
      if (text.equals("Log")) {
        String tag = odd() ? any(TAGS) : "%d";
        cells.add(
            odd()
                ? new Cell(column, CellKind.NUMBER, "" + number, new BigDecimal(number), "")
                : Cell.text(column, tag.replace("%d", "" + number)));
      } else if (text.startsWith("Length")) {
        cells.add(Cell.text(column, odd() ? any(LENGTHS) : any(LENGTHS.subList(0, 4))));
      } else if (text.contains("(in)")) {
        int usual = text.startsWith("Butt") ? 0 : text.startsWith("Mid") ? 3 : 5;
        cells.add(Cell.text(column, any(odd() ? DIAMETERS : DIAMETERS.subList(usual, usual + 3))));
      } else if (text.equals("Species") || odd()) {
        cells.add(Cell.text(column, odd() ? any(OTHERS) : "spruce"));
      }
    }
    if (odd() && odd()) {
      cells.add(Cell.text(12, any(OTHERS)));
    }
    cells.removeIf(Cell::isBlank);
    return new Row(number, cells, odd() && odd(), odd() && odd());
  }

  private boolean odd() {
    return random.nextInt(8) == 0;
  }

  private String any(List<String> texts) {
    return texts.get(random.nextInt(texts.size()));
  }
}
