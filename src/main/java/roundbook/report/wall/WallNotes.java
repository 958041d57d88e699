package roundbook.report.wall;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.SheetBuilder;
import roundbook.plan.PiecePlan;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.report.live.LiveContext;
import roundbook.report.mark.ShortRows;

/** What the symbols on a wall's sheet mean, and what to mend before cutting. */
final class WallNotes {
  private static final Set<ProblemCode> GAPS =
      EnumSet.of(ProblemCode.GAP_SMALL, ProblemCode.GAP_LARGE, ProblemCode.GAP_SWEEP);

  private static final int COLUMNS = 12;
  private static final int CHARACTERS = 95;

  private WallNotes() {}

  /**
   * One line.
   *
   * @param text what it says
   * @param role how it looks
   */
  private record Line(String text, Role role) {
    /** Returns how high it stands, in points. */
    double height() {
      return 16 * ((text.length() + CHARACTERS - 1) / CHARACTERS) + 2.0;
    }
  }

  /** Puts the lines under the current row, each as high as it needs. */
  static void put(LiveContext live, Wall wall, SheetBuilder sheet) {
    for (Line line : lines(live, wall)) {
      sheet
          .nextRow()
          .height(line.height())
          .addAcross(COLUMNS, Cell.text(line.text).role(line.role));
    }
  }

  /** Returns how high all lines stand together, in points. */
  static double height(LiveContext live, Wall wall) {
    return lines(live, wall).stream().mapToDouble(Line::height).sum();
  }

  private static List<Line> lines(LiveContext live, Wall wall) {
    List<Line> lines = new ArrayList<>();
    String least = live.formats().mark(live.rules().length(Setting.GAP_LEAST));
    String most = live.formats().mark(live.rules().length(Setting.GAP_MOST));
    lines.add(new Line(live.text("wall.legend", least, most, live.unit().symbol()), Role.PLAIN));
    for (PiecePlan piece : live.plan().pieces()) {
      if (piece.placed().wall().equals(wall) && !piece.halves().isEmpty()) {
        lines.add(new Line(ShortRows.said(live.context(), piece), Role.CAUTION));
      }
    }
    if (!wall.remarks().isBlank()) {
      lines.add(new Line(live.text("wall.remarks", wall.remarks()), Role.PLAIN_BOLD));
    }
    List<Problem> gaps = gaps(live, wall);
    say(live, lines, "wall.fix", gaps.stream().filter(gap -> !isCut(gap)).toList());
    say(live, lines, "wall.cut", gaps.stream().filter(WallNotes::isCut).toList());
    return lines;
  }

  /** What only tells of logs that are cut is no warning any more. */
  private static boolean isCut(Problem gap) {
    return gap.severity() == Severity.INFO;
  }

  private static void say(LiveContext live, List<Line> lines, String heading, List<Problem> gaps) {
    if (!gaps.isEmpty()) {
      lines.add(new Line(live.text(heading), Role.PLAIN_BOLD));
    }
    gaps.stream()
        .collect(
            Collectors.groupingBy(
                gap -> gap.code() == ProblemCode.GAP_SWEEP ? gap.remedies() : gap,
                LinkedHashMap::new,
                Collectors.toList()))
        .values()
        .forEach(alike -> lines.add(new Line(told(live, alike), Role.CAUTION)));
  }

  /** Returns the plan's problems with gaps of this wall. */
  private static List<Problem> gaps(LiveContext live, Wall wall) {
    List<String> tags =
        live.plan().pieces().stream()
            .filter(piece -> piece.placed().wall().equals(wall))
            .map(piece -> piece.placed().tags())
            .toList();
    return live.plan().problems().stream()
        .filter(problem -> GAPS.contains(problem.code()))
        .filter(problem -> tags.contains(problem.log()))
        .toList();
  }

  /** Tells problems of one kind in a line, with the remedy that they share. */
  private static String told(LiveContext live, List<Problem> fixes) {
    return fixes.stream().map(live.context()::message).collect(Collectors.joining("; "))
        + ". "
        + live.context().remedy(fixes.get(0));
  }
}
