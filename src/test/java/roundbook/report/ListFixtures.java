package roundbook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.page.Cell;
import roundbook.page.Sheet;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.report.frame.CrewContext;

/** Contexts to make sheets from, and ways to look at what was made. */
public final class ListFixtures {
  /** An error of the tally that left a log out. */
  public static final Problem DATE =
      Problem.of(
              ProblemCode.DATE_IN_NUMBER, "date-or-time", new CellRef("cabin.xlsx", "Logs", 99, 2))
          .with("what", Phrase.of("field.length"))
          .found("24-Jun")
          .about("99");

  /** Something that was only counted. */
  static final Problem NOTE =
      Problem.of(ProblemCode.SHEET_SKIPPED, "empty", CellRef.ofSheet("cabin.xlsx", "Old"))
          .as(Severity.INFO);

  private ListFixtures() {}

  public static CrewContext inches(int rounds) {
    return of(PlanFixtures.inches().withOpenings().plan(rounds));
  }

  public static CrewContext metric(int rounds) {
    return of(PlanFixtures.metric().withOpenings().plan(rounds));
  }

  public static CrewContext of(Plan plan) {
    return CrewContext.of(
        plan, List.of(DATE, NOTE), new CrewContext.Issue(2, "cabin.xlsx", "0.0-test", true));
  }

  public static Stream<CrewContext> several() {
    return Stream.of(
        inches(1),
        inches(4),
        metric(4),
        of(PlanFixtures.inches().wanting(9).plan(6)),
        inches(14),
        metric(14));
  }

  /** Returns the one sheet that a maker makes. */
  public static Sheet only(List<Sheet> sheets) {
    if (sheets.size() != 1) {
      throw new AssertionError(sheets.size() + " sheets");
    }
    return sheets.get(0);
  }

  /** Returns what a cell shows: its text, or its number as a program would read it. */
  public static String shown(Cell cell) {
    return shown(cell.value());
  }

  private static String shown(Cell.Value value) {
    if (value instanceof Cell.Text text) {
      return text.text();
    }
    if (value instanceof Cell.Number number) {
      return java.math.BigDecimal.valueOf(number.number()).stripTrailingZeros().toPlainString();
    }
    if (value instanceof Cell.Formula formula) {
      return shown(formula.result());
    }
    return value instanceof Cell.Truth truth ? String.valueOf(truth.truth()) : "";
  }

  /** Returns a row's shown cells from the left. */
  public static List<String> row(Sheet sheet, int row) {
    return sheet.rows().get(row).values().stream().map(ListFixtures::shown).toList();
  }

  /** Returns the rows whose first cell shows a text. */
  public static List<List<String>> rowsFrom(Sheet sheet, String first) {
    List<List<String>> found = new ArrayList<>();
    for (int row : sheet.rows().keySet()) {
      List<String> shown = row(sheet, row);
      if (shown.get(0).equals(first)) {
        found.add(shown.stream().filter(text -> !text.isEmpty()).toList());
      }
    }
    return found;
  }

  /** Returns the row of a column heading; 0 when there is none. */
  public static int headRow(Sheet sheet, String heading) {
    return sheet.rows().entrySet().stream()
        .filter(row -> row.getValue().values().stream().anyMatch(at -> shown(at).equals(heading)))
        .map(java.util.Map.Entry::getKey)
        .findFirst()
        .orElse(0);
  }

  /** Returns every text that a sheet shows. */
  public static List<String> texts(Sheet sheet) {
    return sheet.rows().values().stream()
        .flatMap(row -> row.values().stream())
        .map(ListFixtures::shown)
        .toList();
  }

  /** Returns the cell of a defined name. */
  public static Optional<Cell> named(Sheet sheet, String name) {
    return sheet.rows().values().stream()
        .flatMap(row -> row.values().stream())
        .filter(cell -> cell.name().equals(name))
        .findFirst();
  }
}
