package roundbook.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import roundbook.job.Log;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Severity;

/**
 * Keeps each log once: a row that stands twice is left out, and so is a second log of a tag.
 *
 * <p>Where logs come from several sheets or files, their tags may be numbers of a load; a tag that
 * is taken then gets the sheet's or file's name before it.
 */
final class Doubles {
  private final boolean several;
  private final Problems problems;
  private final Map<String, Log> byTag = new HashMap<>();
  private final List<Log> kept = new ArrayList<>();

  Doubles(boolean several, Problems problems) {
    this.several = several;
    this.problems = problems;
  }

  List<Log> kept() {
    return kept;
  }

  /** Takes the next log. */
  void take(Log log) {
    Log first = byTag.putIfAbsent(log.tag(), log);
    if (first == null) {
      kept.add(log);
    } else if (several && !samePlace(first, log)) {
      Log renamed = renamed(log);
      byTag.put(renamed.tag(), renamed);
      kept.add(renamed);
      say(
          log,
          first,
          ProblemCode.DUPLICATE_ID,
          "both kept, this one as " + renamed.tag(),
          Severity.WARNING);
    } else if (same(first, log)) {
      say(log, first, ProblemCode.DUPLICATE_ROW, "same values, skipped", Severity.WARNING);
    } else {
      say(log, first, ProblemCode.DUPLICATE_ID, "other values, left out", Severity.ERROR);
    }
  }

  private static boolean samePlace(Log one, Log other) {
    return one.origin().file().equals(other.origin().file())
        && one.origin().sheet().equals(other.origin().sheet());
  }

  private static boolean same(Log one, Log other) {
    return one.length().equals(other.length()) && one.profile().equals(other.profile());
  }

  private Log renamed(Log log) {
    String source = log.origin().sheet().isEmpty() ? log.origin().file() : log.origin().sheet();
    String tag = source + " " + log.tag();
    for (int i = 2; byTag.containsKey(tag); i++) {
      tag = source + " " + log.tag() + "-" + i;
    }
    return log.tagged(tag);
  }

  private void say(Log log, Log first, ProblemCode code, String rest, Severity severity) {
    CellRef origin = first.origin();
    String place =
        samePlace(first, log)
            ? "row " + origin.row()
            : (origin.sheet().isEmpty() ? origin.file() : origin.sheet()) + " row " + origin.row();
    String message = "log " + log.tag() + " stands first on " + place + "; " + rest;
    problems.add(Problem.of(code, log.origin(), log.tag(), message).as(severity).about(log.tag()));
  }
}
