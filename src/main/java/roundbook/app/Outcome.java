package roundbook.app;

import static java.util.stream.Collectors.joining;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.page.PlainTable;
import roundbook.plan.Plan;
import roundbook.problem.Briefing;
import roundbook.problem.Problem;
import roundbook.problem.Severity;
import roundbook.problem.words.Sentences;
import roundbook.rounds.Nearness;

/**
 * What became of one file of a batch.
 *
 * @param file the file
 * @param exit how it ended
 * @param written the workbook written; empty when none was
 * @param rounds rounds planned
 * @param used logs placed, or read where nothing was to be planned
 * @param spare logs without a place
 * @param leftOut logs that serve no wall
 * @param better by how many hundredths another choice could be better at most, where it was
 *     reckoned
 * @param errors how many errors were found
 * @param warnings how many warnings
 * @param note what went wrong in one line, or empty
 */
record Outcome(
    Path file,
    Exit exit,
    String written,
    int rounds,
    long used,
    long spare,
    long leftOut,
    Optional<Integer> better,
    long errors,
    long warnings,
    String note) {
  private static final List<String> HEADER =
      List.of(
          "file",
          "exit",
          "written",
          "rounds",
          "used",
          "spare",
          "left_out",
          "better_at_most_percent",
          "errors",
          "warnings",
          "note");

  static Outcome failed(Path file, Exit exit, List<Problem> problems, String note) {
    return new Outcome(
        file,
        exit,
        "",
        0,
        0,
        0,
        0,
        Optional.empty(),
        count(problems, Severity.ERROR),
        count(problems, Severity.WARNING),
        note);
  }

  static Outcome checked(Path file, Exit exit, int logs, List<Problem> problems) {
    long errors = count(problems, Severity.ERROR);
    long warnings = count(problems, Severity.WARNING);
    Optional<Integer> none = Optional.empty();
    String note = reason(exit, problems);
    return new Outcome(file, exit, "", 0, logs, 0, 0, none, errors, warnings, note);
  }

  static Outcome ordered(Path file, Exit exit, Path written, int logs, List<Problem> problems) {
    long errors = count(problems, Severity.ERROR);
    long warnings = count(problems, Severity.WARNING);
    String note = logs + " logs ordered";
    Optional<Integer> none = Optional.empty();
    return new Outcome(file, exit, written.toString(), 0, 0, 0, 0, none, errors, warnings, note);
  }

  static Outcome planned(Path file, Exit exit, Path written, Plan plan, List<Problem> problems) {
    return new Outcome(
        file,
        exit,
        written.toString(),
        plan.rounds(),
        plan.count(Plan.Use.PLACED),
        plan.count(Plan.Use.SPARE),
        plan.count(Plan.Use.LEFT_OUT),
        plan.choice().nearness().flatMap(Nearness::known),
        count(problems, Severity.ERROR),
        count(problems, Severity.WARNING),
        reason(exit, problems));
  }

  /** Returns the table of {@code --report}, in the order of the files. */
  static PlainTable report(List<Outcome> outcomes) {
    return new PlainTable("report", HEADER, outcomes.stream().map(Outcome::row).toList());
  }

  private List<String> row() {
    return List.of(
        file.toString(),
        String.valueOf(exit.code()),
        written,
        String.valueOf(rounds),
        String.valueOf(used),
        String.valueOf(spare),
        String.valueOf(leftOut),
        better.map(String::valueOf).orElse(""),
        String.valueOf(errors),
        String.valueOf(warnings),
        note);
  }

  /** Returns the most costly error in one line, with what to do, or nothing. */
  static String firstError(List<Problem> problems) {
    return Briefing.of(problems).stops().stream()
        .map(Sentences.english()::told)
        .findFirst()
        .orElse("");
  }

  /** Returns the first error, or the first warning where it counts as one. */
  private static String reason(Exit exit, List<Problem> problems) {
    String error = firstError(problems);
    return error.isEmpty() && exit == Exit.BAD_INPUT ? first(problems, Severity.WARNING) : error;
  }

  private static String first(List<Problem> problems, Severity severity) {
    return problems.stream()
        .filter(problem -> problem.severity() == severity)
        .map(Sentences.english()::message)
        .findFirst()
        .orElse("");
  }

  /** Returns the workbook and what is wrong, whichever there is, in one line. */
  String became() {
    return Stream.of(written, note).filter(each -> !each.isEmpty()).collect(joining(": "));
  }

  static long count(List<Problem> problems, Severity severity) {
    return problems.stream().filter(problem -> problem.severity() == severity).count();
  }
}
