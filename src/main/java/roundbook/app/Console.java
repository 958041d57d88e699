package roundbook.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import roundbook.problem.Briefing;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.problem.words.Sentences;

/**
 * The two streams of a run: results on one, messages on the other.
 *
 * @param out where results go
 * @param err where messages go
 * @param quiet whether only errors are said
 */
record Console(PrintWriter out, PrintWriter err, boolean quiet) {
  private static final int LINES_MOST = 20;

  /** Says every problem, at most twenty of a kind. */
  void say(List<Problem> problems) {
    Map<ProblemCode, Integer> said = new EnumMap<>(ProblemCode.class);
    for (Problem problem : problems) {
      if (quiet && problem.severity() != Severity.ERROR) {
        continue;
      }
      if (said.merge(problem.code(), 1, Integer::sum) <= LINES_MOST) {
        err.println(Sentences.english().line(problem));
      }
    }
    said.forEach(this::more);
    err.flush();
  }

  /**
   * Says of a plan's problems what stops it, what must be done before the first cut, and how many
   * more there are of each kind.
   */
  void brief(Path file, List<Problem> problems) {
    Briefing briefing = Briefing.of(located(file, problems));
    say(briefing.stops());
    String name = file.getFileName().toString();
    part(name + ": before the next cut:", briefing.first(), Sentences.english()::line);
    part(
        name + ": also, each on the sheet Problems:",
        briefing.counted(),
        Sentences.english()::lineOnly);
  }

  private void part(String head, List<Briefing.Line> lines, Function<Problem, String> told) {
    if (!lines.isEmpty()) {
      say(head);
    }
    for (Briefing.Line line : lines) {
      String more = line.more() == 0 ? "" : " (and " + line.more() + " more of the kind)";
      say("  " + told.apply(line.problem()) + more);
    }
  }

  /** Says every problem of a file, with the file's name where a problem has no place of its own. */
  void say(Path file, List<Problem> problems) {
    say(located(file, problems));
  }

  private static List<Problem> located(Path file, List<Problem> problems) {
    CellRef whole = CellRef.ofFile(file.getFileName().toString());
    return problems.stream()
        .map(each -> each.where().toString().isEmpty() ? each.at(whole) : each)
        .toList();
  }

  private void more(ProblemCode code, int count) {
    if (count > LINES_MOST) {
      err.println(
          "… and " + (count - LINES_MOST) + " more of " + code.id() + " (--tables lists them all)");
    }
  }

  /** Returns a number of things, one of which has this name. */
  static String count(long number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }

  /** Says one line unless quiet. */
  void say(String line) {
    if (!quiet) {
      err.println(line);
      err.flush();
    }
  }

  /** Says a problem even when quiet. */
  void fail(Problem problem) {
    fail(Sentences.english().line(problem));
  }

  /** Says one line even when quiet. */
  void fail(String line) {
    err.println(line);
    err.flush();
  }

  /** Shows where the program failed, when that is asked for. */
  void fault(Throwable fault, boolean debug) {
    if (debug) {
      fault.printStackTrace(err);
    } else {
      fail("Run again with --debug and send what it prints to the makers.");
    }
  }

  /** Prints a result. */
  void result(String line) {
    out.println(line);
    out.flush();
  }
}
