package roundbook.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import roundbook.app.MadeTally.True;
import roundbook.app.MadeTally.Use;
import roundbook.intake.Asked;
import roundbook.intake.JobReader;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Reads a made tally and finds every figure that was taken otherwise and not said. */
final class TallyOracle {
  private static final double TOLERANCE = 0.02;

  private final MadeTally tally;
  private final List<Log> logs = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private int right;

  TallyOracle(MadeTally tally, Path file, char separator) throws IOException {
    this.tally = tally;
    Files.writeString(file, tally.text(separator));
    Read<List<Table>> tables = Sources.read(file);
    problems.addAll(tables.problems());
    if (tables.value().isPresent()) {
      Read<JobReader.Findings> read = JobReader.read(tables.value().get(), Asked.NOTHING);
      read.value().ifPresent(found -> logs.addAll(found.logs()));
      problems.addAll(read.problems());
    }
  }

  /** Returns how many logs that a clerk would read were read right. */
  int right() {
    return right;
  }

  List<Problem> problems() {
    return problems;
  }

  /** Returns what was misread in silence, or lost. */
  List<String> misread() {
    List<String> wrong = new ArrayList<>();
    for (Log log : logs) {
      boolean known = tally.truth().stream().anyMatch(each -> isSame(each, log));
      boolean row = tally.truth().stream().anyMatch(each -> each.row() == log.origin().row());
      if (!known && !(row ? isSaid(log.origin().row()) : isRowSaid(log.origin().row()))) {
        wrong.add("read " + shown(log) + " at row " + log.origin().row());
      }
    }
    for (True each : tally.truth()) {
      Optional<Log> found = logs.stream().filter(log -> isSame(each, log)).findFirst();
      boolean skip = each.use() == Use.SKIP;
      if (found.isPresent() && (!skip || found.get().traits().skip())) {
        right += each.use() == Use.ASK ? 0 : 1;
      } else if (skip && found.isPresent() && !isSaid(each.row())) {
        wrong.add("placed " + each);
      } else if (found.isEmpty() && !isSaid(each.row())) {
        wrong.add("lost " + each);
      }
    }
    return wrong;
  }

  private static boolean isSame(True each, Log log) {
    return each.row() == log.origin().row()
        && each.tag().equals(log.tag())
        && near(each.length(), log.length())
        && near(each.butt(), log.butt())
        && near(each.mid(), log.mid())
        && near(each.tip(), log.tip());
  }

  private static boolean near(double millimetres, Length length) {
    return Math.abs(length.in(LengthUnit.MILLIMETRE) - millimetres) < TOLERANCE;
  }

  /** Returns whether anything is said of a row, or of a column by its heading. */
  private boolean isSaid(int row) {
    int first = tally.truth().get(0).row();
    return isRowSaid(row)
        || problems.stream()
            .anyMatch(
                problem ->
                    isLoud(problem)
                        && (problem.where().row() < first
                            || tally.truth().stream()
                                .noneMatch(each -> each.row() == problem.where().row())));
  }

  private boolean isRowSaid(int row) {
    return problems.stream().anyMatch(problem -> isLoud(problem) && problem.where().row() == row);
  }

  private static boolean isLoud(Problem problem) {
    return problem.severity() != Severity.INFO;
  }

  /** Returns the errors that name no cell, row or heading. */
  List<Problem> unplaced() {
    return problems.stream()
        .filter(problem -> problem.severity() == Severity.ERROR && problem.where().row() == 0)
        .toList();
  }

  private static String shown(Log log) {
    return log.tag()
        + " "
        + List.of(log.length(), log.butt(), log.mid(), log.tip()).stream()
            .map(length -> String.valueOf(length.in(LengthUnit.MILLIMETRE)))
            .toList();
  }
}
