package roundbook.intake;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import roundbook.job.DiameterProfile.Station;
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
  private static final long MIX = 0x9E3779B97F4A7C15L;

  private final boolean several;
  private final Problems problems;
  private final Consumer<Log> taker;
  private final Map<String, First> byTag = new HashMap<>();
  private CellRef sheet = CellRef.ofFile("");

  /**
   * Begins without any log.
   *
   * @param several whether logs come from several sheets or files
   * @param problems takes what is found
   * @param taker takes each log that is kept
   */
  Doubles(boolean several, Problems problems, Consumer<Log> taker) {
    this.several = several;
    this.problems = problems;
    this.taker = taker;
  }

  /**
   * All that is remembered of a log, so that a tally of a million fits in little memory.
   *
   * @param sheet the sheet it stands on
   * @param row its row
   * @param measures its length and profile, mixed into 64 bits
   */
  private record First(CellRef sheet, int row, long measures) {}

  /** Returns the tags of every log kept. */
  Set<String> tags() {
    return Collections.unmodifiableSet(byTag.keySet());
  }

  /** Takes the next log. */
  void take(Log log) {
    First own = remembered(log);
    First first = byTag.putIfAbsent(log.tag(), own);
    if (first == null) {
      taker.accept(log);
    } else if (several && !first.sheet().equals(own.sheet())) {
      Log renamed = renamed(log);
      byTag.put(renamed.tag(), own);
      taker.accept(renamed);
      say(
          log,
          first,
          ProblemCode.DUPLICATE_ID,
          "both kept, this one as " + renamed.tag(),
          Severity.WARNING);
    } else if (first.measures() == own.measures()) {
      say(log, first, ProblemCode.DUPLICATE_ROW, "same values, skipped", Severity.WARNING);
    } else {
      say(log, first, ProblemCode.DUPLICATE_ID, "other values, left out", Severity.ERROR);
    }
  }

  private First remembered(Log log) {
    CellRef origin = log.origin();
    if (!origin.file().equals(sheet.file()) || !origin.sheet().equals(sheet.sheet())) {
      sheet = CellRef.ofSheet(origin.file(), origin.sheet());
    }
    return new First(sheet, log.origin().row(), measures(log));
  }

  /** Mixes a log's measures; two logs of one tag that differ come out alike once in 2^64. */
  private static long measures(Log log) {
    long mixed = log.length().nanometres();
    for (Station station : log.profile().stations()) {
      mixed = MIX * Long.rotateLeft(mixed ^ station.fromButt().nanometres(), 23);
      mixed = MIX * Long.rotateLeft(mixed ^ station.diameter().nanometres(), 29);
    }
    return mixed;
  }

  private Log renamed(Log log) {
    String source = log.origin().sheet().isEmpty() ? log.origin().file() : log.origin().sheet();
    String tag = source + " " + log.tag();
    for (int i = 2; byTag.containsKey(tag); i++) {
      tag = source + " " + log.tag() + "-" + i;
    }
    return log.tagged(tag);
  }

  private void say(Log log, First first, ProblemCode code, String rest, Severity severity) {
    CellRef origin = first.sheet();
    boolean same = origin.equals(sheet);
    String place = same ? "" : (origin.sheet().isEmpty() ? origin.file() : origin.sheet()) + " ";
    String message =
        "log " + log.tag() + " stands first on " + place + "row " + first.row() + "; " + rest;
    problems.add(Problem.of(code, log.origin(), log.tag(), message).as(severity).about(log.tag()));
  }
}
