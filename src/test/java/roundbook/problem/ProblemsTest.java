package roundbook.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Problems gathered: the gravest of a cell, in the order in which a person goes through a file. */
class ProblemsTest {
  private final Problems problems = new Problems();

  private static Problem problem(String place, Severity severity) {
    return Problem.of(ProblemCode.DOUBTFUL_VALUE, "apart", CellRef.parse("yard.xlsx: " + place))
        .as(severity)
        .found(severity.word());
  }

  private String places() {
    return problems.sorted().stream()
        .map(each -> each.where().toString().replace("yard.xlsx: ", "") + " " + each.severity())
        .collect(Collectors.joining(", "));
  }

  /** One cell has one problem, whatever the order; a row or a sheet may have several. */
  @ParameterizedTest
  @CsvSource({
    "ERROR, WARNING, ERROR",
    "WARNING, ERROR, ERROR",
    "INFO, WARNING, WARNING",
    "ERROR, ERROR, ERROR",
    "INFO, INFO, INFO",
  })
  void theGravestOfACellCounts(Severity one, Severity other, Severity kept) {
    problems.add(problem("Logs!B2", one));
    problems.add(problem("Logs!B2", other));
    assertEquals("Logs!B2 " + kept, places());
  }

  @Test
  void theFirstOfTwoAsGraveCounts() {
    problems.add(problem("Logs!B2", Severity.ERROR).about("first"));
    problems.add(problem("Logs!B2", Severity.ERROR).about("second"));
    assertEquals("first", problems.sorted().get(0).log());
  }

  @Test
  void rowsAndSheetsHaveSeveral() {
    for (String place : List.of("Logs!2", "Logs!2", "Logs", "Logs")) {
      problems.add(problem(place, Severity.WARNING));
    }
    assertEquals("Logs WARNING, Logs WARNING, Logs!2 WARNING, Logs!2 WARNING", places());
  }

  /** Sheets as they were met first, within a sheet by row and column; columns as numbers. */
  @Test
  void goesThroughAFileAsAPersonDoes() {
    List<String> wanted =
        List.of("Logs!A2", "Logs!B2", "Logs!Z2", "Logs!AA2", "Logs!A10", "Logs!A11", "Logs!B11");
    List<String> mixed = new ArrayList<>(wanted);
    Collections.shuffle(mixed, new Random(5));
    problems.add(problem("Yard!C9", Severity.INFO));
    mixed.forEach(place -> problems.add(problem(place, Severity.INFO)));
    problems.add(problem("Yard!C2", Severity.INFO));
    assertEquals("Yard!C2, Yard!C9, " + String.join(", ", wanted), places().replace(" INFO", ""));
  }

  /** Letters of columns count in 26s without a zero: Z is 26, AA 27, XFD 16,384. */
  @ParameterizedTest
  @CsvSource({
    "1, A",
    "26, Z",
    "27, AA",
    "52, AZ",
    "53, BA",
    "702, ZZ",
    "703, AAA",
    "16384, XFD",
    "0, ''",
  })
  void columnsHaveLetters(int column, String name) {
    assertEquals(name, CellRef.columnName(column));
    if (column > 0) {
      assertEquals(column, CellRef.parse("a.csv: " + name + "7").column());
    }
  }

  @Test
  void placesHaveAnOrder() {
    List<CellRef> wanted = new ArrayList<>();
    for (String file : List.of("a.csv", "b.csv")) {
      for (String sheet : List.of("", "Logs")) {
        for (int row = 0; row < 3; row++) {
          for (int column = 0; column < 3; column++) {
            wanted.add(new CellRef(file, sheet, row, column));
          }
        }
      }
    }
    List<CellRef> mixed = new ArrayList<>(wanted);
    Collections.shuffle(mixed, new Random(5));
    Collections.sort(mixed);
    assertEquals(wanted, mixed);
    assertEquals(wanted.size(), wanted.stream().distinct().count());
  }

  @Test
  void problemsThatSayTheSameAreEqual() {
    Problem one = problem("Logs!B2", Severity.ERROR);
    assertEquals(one, problem("Logs!B2", Severity.ERROR));
    assertEquals(one.hashCode(), problem("Logs!B2", Severity.ERROR).hashCode());
    List<Problem> others =
        List.of(
            problem("Logs!B3", Severity.ERROR),
            problem("Logs!B2", Severity.INFO).found("error"),
            one.found("other"),
            one.about("L7"),
            one.with("text", "x"),
            one.remedy(),
            Problem.of(ProblemCode.BAD_NUMBER, "unread", one.where()).as(Severity.ERROR));
    assertTrue(others.stream().noneMatch(one::equals));
    assertTrue(others.stream().noneMatch(other -> other.equals(one)));
  }
}
