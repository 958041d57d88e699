package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
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
final class UniqueLogs {
  private static final long MIX = 0x9E3779B97F4A7C15L;

  private final boolean several;
  private final Problems problems;
  private final Consumer<Log> taker;
  private final SeenTags seen = new SeenTags();
  private final List<CellRef> sheets = new ArrayList<>();

  /**
   * Begins without any log.
   *
   * @param several whether logs come from several sheets or files
   * @param problems takes what is found
   * @param taker takes each log that is kept
   */
  UniqueLogs(boolean several, Problems problems, Consumer<Log> taker) {
    this.several = several;
    this.problems = problems;
    this.taker = taker;
  }

  /** Returns whether a log of a tag was kept. */
  boolean has(String tag) {
    return seen.find(tag) >= 0;
  }

  /** Returns whether any log was taken. */
  boolean hasAny() {
    return !sheets.isEmpty();
  }

  /** Takes the next log. */
  void take(Log log) {
    int sheet = sheet(log.origin());
    long measures = measures(log);
    int first = seen.add(log.tag(), sheet, log.origin().row(), measures);
    if (first < 0) {
      taker.accept(log);
    } else if (several && seen.sheet(first) != sheet) {
      takeOther(log, first, measures);
    } else {
      sayTwice(log, first, measures);
    }
  }

  /** Takes a log whose tag is another sheet's, under its own sheet's name, once as any other. */
  private void takeOther(Log log, int first, long measures) {
    int sheet = sheet(log.origin());
    String source = log.origin().sheet().isEmpty() ? log.origin().file() : log.origin().sheet();
    String name = source + " " + log.tag();
    String tag = name;
    int taken = seen.add(tag, sheet, log.origin().row(), measures);
    for (int i = 2; taken >= 0 && seen.sheet(taken) != sheet; i++) {
      tag = name + "-" + i;
      taken = seen.add(tag, sheet, log.origin().row(), measures);
    }
    if (taken >= 0) {
      sayTwice(log, taken, measures);
      return;
    }
    taker.accept(log.tagged(tag));
    problems.add(
        told(log, first, ProblemCode.DUPLICATE_ID, "kept")
            .with("renamed", tag)
            .as(Severity.WARNING));
  }

  private void sayTwice(Log log, int first, long measures) {
    problems.add(
        seen.measures(first) == measures
            ? told(log, first, ProblemCode.DUPLICATE_ROW, "")
            : told(log, first, ProblemCode.DUPLICATE_ID, "left-out"));
  }

  /** Returns the number of a log's sheet, mostly that of the log before. */
  private int sheet(CellRef origin) {
    for (int i = sheets.size() - 1; i >= 0; i--) {
      CellRef sheet = sheets.get(i);
      if (origin.sheet().equals(sheet.sheet()) && origin.file().equals(sheet.file())) {
        return i;
      }
    }
    sheets.add(CellRef.ofSheet(origin.file(), origin.sheet()));
    return sheets.size() - 1;
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

  /** Returns that a log's tag stands first on another row, which a sentence names. */
  private Problem told(Log log, int first, ProblemCode code, String variant) {
    CellRef origin = sheets.get(seen.sheet(first));
    Phrase row = Phrase.of("place.row").with("row", String.valueOf(seen.row(first)));
    Phrase place =
        seen.sheet(first) == sheet(log.origin())
            ? row
            : Phrase.of("place.sheet-row")
                .with("sheet", origin.sheet().isEmpty() ? origin.file() : origin.sheet())
                .with("row", row);
    return Problem.of(code, variant, log.origin())
        .found(log.tag())
        .with("tag", log.tag())
        .with("place", place)
        .about(log.tag());
  }
}
