package roundbook.report;

import java.util.List;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.plan.PiecePlan;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;

/** What the symbols on a wall's sheet mean, and what to mend before cutting. */
final class WallNotes {
  private static final int COLUMNS = 9;
  private static final int CHARACTERS = 95;

  private WallNotes() {}

  /** Puts the lines under the current row. */
  static void put(Live live, Wall wall, SheetBuilder sheet) {
    String least = live.formats().mark(live.rules().length(Setting.GAP_LEAST));
    String most = live.formats().mark(live.rules().length(Setting.GAP_MOST));
    line(sheet, live.text("wall.legend", least, most, live.unit().symbol()), Role.PLAIN);
    for (PiecePlan piece : live.plan().pieces()) {
      if (piece.placed().wall().equals(wall) && !piece.halves().isEmpty()) {
        line(sheet, ShortRows.said(live.context(), piece), Role.CAUTION);
      }
    }
    if (!wall.remarks().isBlank()) {
      line(sheet, live.text("wall.remarks", wall.remarks()), Role.PLAIN_BOLD);
    }
    List<Problem> gaps = gaps(live, wall);
    say(live, sheet, "wall.fix", gaps.stream().filter(gap -> !isCut(gap)).toList());
    say(live, sheet, "wall.cut", gaps.stream().filter(WallNotes::isCut).toList());
  }

  /** What only tells of logs that are cut is no warning any more. */
  private static boolean isCut(Problem gap) {
    return gap.severity() == Severity.INFO;
  }

  private static void say(Live live, SheetBuilder sheet, String heading, List<Problem> gaps) {
    if (!gaps.isEmpty()) {
      line(sheet, live.text(heading), Role.PLAIN_BOLD);
    }
    for (Problem gap : gaps) {
      line(sheet, told(live, gap), Role.CAUTION);
    }
  }

  /** Returns the plan's problems with gaps of this wall. */
  private static List<Problem> gaps(Live live, Wall wall) {
    List<String> tags =
        live.plan().pieces().stream()
            .filter(piece -> piece.placed().wall().equals(wall))
            .map(piece -> piece.placed().piece().log().tag())
            .toList();
    return live.plan().problems().stream()
        .filter(
            problem ->
                problem.code() == ProblemCode.GAP_SMALL || problem.code() == ProblemCode.GAP_LARGE)
        .filter(problem -> tags.contains(problem.log()))
        .toList();
  }

  private static String told(Live live, Problem fix) {
    return live.context().told(fix.message()) + ". " + live.context().told(fix.remedy());
  }

  /** Writes a line as high as it needs. */
  private static void line(SheetBuilder sheet, String text, Role role) {
    int lines = (text.length() + CHARACTERS - 1) / CHARACTERS;
    sheet.nextRow().height(16 * lines + 2.0).addAcross(COLUMNS, Cell.text(text).role(role));
  }
}
