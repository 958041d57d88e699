package roundbook.app;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import roundbook.plan.Plan;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;

/** The exit codes of the program, worse ones with higher rank. */
enum Exit {
  /** Done; warnings allowed. */
  DONE(0, 0, "done", "Done; there may be warnings."),
  /** Not enough logs: a partial plan and the order are written. */
  SHORT_OF_LOGS(
      4, 1, "short of logs", "Not enough logs: what can be built is planned, the rest is ordered."),
  /** The input has errors and nothing was planned. */
  BAD_INPUT(3, 2, "with errors", "The input has errors and nothing was planned."),
  /** Stopped by the user. */
  STOPPED(130, 3, "stopped", "Stopped: what was being planned is written as far as it had come."),
  /** A file cannot be read or written. */
  NO_ACCESS(5, 4, "not read or not written", "A file cannot be read or written."),
  /** The command line is wrong. */
  USAGE(2, 5, "asked for wrongly", "The command line is wrong."),
  /** The program is at fault. */
  FAULT(1, 6, "failed by a fault of the program", "The program is at fault.");

  private final int code;
  private final int rank;
  private final String brief;
  private final String words;

  Exit(int code, int rank, String brief, String words) {
    this.code = code;
    this.rank = rank;
    this.brief = brief;
    this.words = words;
  }

  /** Returns how a file ends of which nothing can be used. */
  static Exit refused(List<Problem> problems) {
    return ProblemCode.UNREADABLE.isIn(problems) ? NO_ACCESS : BAD_INPUT;
  }

  /** Returns how a file ends of which all could be done; strictly, a warning is an error. */
  static Exit done(List<Problem> problems, boolean strict) {
    boolean doubts = problems.stream().anyMatch(problem -> problem.severity() != Severity.INFO);
    return strict && doubts ? BAD_INPUT : DONE;
  }

  /** Returns how a file ends whose workbook is written. */
  static Exit planned(Plan plan, List<Problem> problems, boolean stopped, boolean strict) {
    Exit whole = plan.choice().shortage().isPresent() ? SHORT_OF_LOGS : done(problems, strict);
    return stopped ? STOPPED : whole;
  }

  /** Returns the exit of a code. */
  static Optional<Exit> ofCode(int code) {
    return Arrays.stream(values()).filter(each -> each.code == code).findFirst();
  }

  /** Returns how so many files ended, after their number. */
  String brief() {
    return brief;
  }

  /** Returns what it means, in a sentence. */
  String words() {
    return words;
  }

  int code() {
    return code;
  }

  Exit worse(Exit other) {
    return other.rank > rank ? other : this;
  }
}
