package roundbook.site;

import java.util.List;
import java.util.stream.Stream;
import roundbook.job.Setting;
import roundbook.page.LogColumn;
import roundbook.problem.CellRef;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Severity;
import roundbook.table.NamedBook;

/**
 * Says what somebody deleted from a crew workbook that its reader would else pass over in silence.
 *
 * <p>A deleted cell leaves its name behind. What the cut rounds were cut to cannot be done without;
 * the rest leaves something out of the next plan, which is for the builder to judge.
 *
 * @param book the workbook
 * @param problems takes what is said
 */
record DeletedCells(NamedBook book, Problems problems) {
  /** Says a line for each list that is not whole. */
  void say() {
    say("Built_", Severity.ERROR, "built");
    say("Problem_", Severity.WARNING, "problems");
    say("Log_", Severity.WARNING, "log-columns");
    say("Opening_", Severity.WARNING, "openings");
    say("Pin_", Severity.WARNING, "pins");
  }

  private void say(String start, Severity severity, String variant) {
    List<String> gone = book.gone(start).stream().filter(name -> !isSaidElsewhere(name)).toList();
    if (!gone.isEmpty()) {
      CellRef file = CellRef.ofFile(book.file());
      problems.add(
          Problem.of(ProblemCode.CELL_LOST, variant, file).found(gone.get(0)).as(severity));
    }
  }

  /** Settings are named in the same way, and without the list's own columns there is no list. */
  private boolean isSaidElsewhere(String name) {
    boolean setting =
        Stream.of(Setting.values()).anyMatch(each -> each.label().equalsIgnoreCase(name));
    boolean list = name.startsWith("log_") && !book.gone(LogColumn.TAGS.named()).isEmpty();
    return setting || list;
  }
}
