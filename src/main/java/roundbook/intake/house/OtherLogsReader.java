package roundbook.intake.house;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.job.BuildRules;
import roundbook.job.OtherLog;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Value;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/**
 * Reads the sheet Other_logs: what is wanted for other places than the walls, a kind a row.
 *
 * <pre>{@code
 * For     Count  Length (ft)  Mid at least (in)  Tip at least (in)  Sweep at most (in)  Remarks
 * joist   6      18           10                 8                  1                   hall
 * }</pre>
 */
public final class OtherLogsReader {
  private static final int MOST = 1000;
  private static final Length SHORTEST = Length.ofInches(24);
  private static final Length LONGEST = Length.ofInches(720);

  private final SheetColumns columns;
  private final BuildRules rules;
  private final Problems problems;

  /** Takes the sheet, whose bare lengths are in the unit of the job. */
  public OtherLogsReader(Table table, BuildRules rules, Problems problems) {
    this.columns = SheetColumns.of(table);
    this.rules = rules;
    this.problems = problems;
  }

  /** Returns the logs wanted; says what is wrong with rows that name none. */
  public List<OtherLog> others() {
    List<OtherLog> others = new ArrayList<>();
    List<Row> filled = columns.below().stream().filter(row -> !row.isBlank()).toList();
    for (String heading : List.of("for", "length")) {
      if (columns.column(heading) == 0 && !filled.isEmpty()) {
        CellRef where = columns.table().at(columns.table().rows().get(0));
        problems.add(
            Problem.of(ProblemCode.BAD_OTHER_LOG, "no-heading", where).with("heading", heading));
        return List.of();
      }
    }
    filled.forEach(row -> other(row).ifPresent(others::add));
    return others;
  }

  private Optional<OtherLog> other(Row row) {
    String name = columns.text(row, "for");
    if (name.isEmpty()) {
      return refuse(bad("no-name", row, "for"));
    }
    String text = columns.text(row, "count");
    String count = text.isEmpty() ? "1" : text.replaceFirst("\\.0+$", "");
    if (!count.matches("[1-9]\\d{0,2}|1000")) {
      return refuse(bad("count", row, "count").with("text", text).with("most", MOST).found(text));
    }
    LengthUnit large = rules.metric() ? rules.unit() : LengthUnit.FOOT;
    Optional<Length> length = columns.length(row, "length", large, problems);
    Optional<Length> mid = orNothing(row, "mid");
    Optional<Length> tip = orNothing(row, "tip");
    Optional<Length> sweep = orNothing(row, "sweep");
    if (length.isEmpty() || mid.isEmpty() || tip.isEmpty() || sweep.isEmpty()) {
      return Optional.empty();
    }
    if (length.get().isLessThan(SHORTEST) || length.get().isMoreThan(LONGEST)) {
      Value printed =
          Value.measure(length.get(), LengthFormat.forJob(rules.unit(), rules.printStep()));
      return refuse(bad("length", row, "length").with("length", printed));
    }
    boolean straight = !columns.text(row, "sweep").isEmpty();
    return Optional.of(
        new OtherLog(
            name,
            Integer.parseInt(count),
            length.get(),
            mid.get(),
            tip.get(),
            straight ? sweep : Optional.empty(),
            columns.text(row, "remarks"),
            columns.table().at(row)));
  }

  /** Returns a length; nothing where nothing was typed, empty where it is none, which is said. */
  private Optional<Length> orNothing(Row row, String heading) {
    return columns.text(row, heading).isEmpty()
        ? Optional.of(Length.ZERO)
        : columns.length(row, heading, rules.unit(), problems);
  }

  private Optional<OtherLog> refuse(Problem problem) {
    problems.add(problem);
    return Optional.empty();
  }

  private Problem bad(String variant, Row row, String heading) {
    int column = Math.max(1, columns.column(heading));
    return Problem.of(ProblemCode.BAD_OTHER_LOG, variant, columns.table().at(row, column));
  }
}
