package roundbook.intake.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.intake.JobReader.Findings;
import roundbook.job.OtherLog;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;

/** Logs for other places than the walls, as builders type them. */
class OtherLogsReaderTest {
  private static final String HEADINGS =
      "For|Count|Length (ft)|Mid at least (in)|Tip at least (in)|Sweep at most (in)|Remarks";

  @Test
  void aRowIsAKindOfLog() {
    Read<Findings> read = read(HEADINGS, "joist|6|18|10 1/2|8|1|hall", "ridge||24' 6\"||||");
    assertEquals(List.of(), problems(read));
    List<OtherLog> others = read.value().orElseThrow().job().orElseThrow().others();
    assertEquals(2, others.size());
    OtherLog joist = others.get(0);
    assertEquals("joist hall", joist.name() + " " + joist.remarks());
    assertEquals(6, joist.count());
    assertEquals(Length.ofInches(216), joist.length());
    assertEquals(10.5, joist.mid().inches());
    assertEquals(8, joist.tip().inches());
    assertEquals(Optional.of(Length.ofInches(1)), joist.sweep());
    OtherLog ridge = others.get(1);
    assertEquals(1, ridge.count());
    assertEquals(Length.ofInches(294), ridge.length());
    assertTrue(ridge.mid().isZero() && ridge.tip().isZero() && ridge.sweep().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "'|6|18||||', A2, bad-other-log",
    "'joist|six|18||||', B2, bad-other-log",
    "'joist|0|18||||', B2, bad-other-log",
    "'joist|6|1||||', C2, bad-other-log",
    "'joist|6|200||||', C2, bad-other-log",
    "'joist|6|long||||', C2, bad-number",
    "'joist|6|||||', C2, bad-number",
    "'joist|6|18|thick|||', D2, bad-number",
    "'joist|6|18|||straight|', F2, bad-number",
  })
  void whatCannotBeLookedForIsSaidWhereItStands(String row, String cell, String code) {
    Read<Findings> read = read(HEADINGS, row);
    List<Problem> problems = problems(read);
    assertEquals(1, problems.size(), problems.toString());
    assertEquals(code, problems.get(0).code().id());
    assertTrue(problems.get(0).toString().contains("Other_logs!" + cell), problems.toString());
    assertEquals(List.of(), read.value().orElseThrow().job().orElseThrow().others());
  }

  @Test
  void aSheetWithoutTheHeadingsIsAskedForThem() {
    List<Problem> problems = problems(read("What|Number", "joist|6"));
    assertEquals(List.of(ProblemCode.BAD_OTHER_LOG), problems.stream().map(Problem::code).toList());
    assertEquals(List.of(), problems(read("What|Number", "|")));
  }

  /** Returns what is said besides that there is no log yet. */
  private static List<Problem> problems(Read<Findings> read) {
    return read.problems().stream()
        .filter(problem -> problem.code() != ProblemCode.EMPTY_FILE)
        .toList();
  }

  private static Read<Findings> read(String... texts) {
    List<Row> rows = new ArrayList<>();
    for (String text : texts) {
      String[] cells = text.split("\\|", -1);
      rows.add(
          new Row(
              rows.size() + 1,
              IntStream.range(0, cells.length)
                  .mapToObj(at -> Cell.text(at + 1, cells[at]))
                  .toList(),
              false,
              false));
    }
    Asked walls =
        new Asked(
            Map.of(),
            Optional.of(HouseTold.ofWalls("20x16")),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return JobReader.read(List.of(Table.of("job.xlsx", "Other_logs", Set.of(), rows)), walls);
  }
}
