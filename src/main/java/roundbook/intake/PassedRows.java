package roundbook.intake;

import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Severity;
import roundbook.table.Row;
import roundbook.table.Table;

/** Says which rows were passed over: the first few one by one, many alike in one line. */
final class PassedRows {
  private static final int MOST_NOTES = 5;

  private final Table table;
  private final Problems problems;
  private int notes;
  private Row lastNote;
  private int numbered;
  private Row firstNumbered;
  private Row lastNumbered;

  PassedRows(Table table, Problems problems) {
    this.table = table;
    this.problems = problems;
  }

  /** Takes a row of free text. */
  void note(Row row) {
    notes++;
    lastNote = row;
    if (notes <= MOST_NOTES) {
      problems.add(Problem.of(ProblemCode.NOTE_ROW, "text", table.at(row)));
    }
  }

  /** Takes a row that holds a tag and nothing else. */
  void numbered(Row row) {
    numbered++;
    firstNumbered = firstNumbered == null ? row : firstNumbered;
    lastNumbered = row;
  }

  /**
   * Says what was gathered.
   *
   * @param lastLog the last row that was read as a log; rows before it were hardly left for later
   */
  void end(int lastLog) {
    if (notes > MOST_NOTES) {
      problems.add(
          Problem.of(ProblemCode.NOTE_ROW, "more", table.at(lastNote))
              .with("count", notes - MOST_NOTES));
    }
    if (numbered > 0) {
      Problem problem =
          Problem.of(ProblemCode.NUMBERED_ROW, table.at(firstNumbered))
              .with("count", numbered)
              .with("last", lastNumbered.number());
      boolean between = firstNumbered.number() < lastLog;
      problems.add(between ? problem.as(Severity.WARNING) : problem);
    }
  }
}
