package roundbook.report.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.page.Cell;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.list.ProblemsSheet;
import roundbook.stack.PlacedLog;

/** The problems that matter on the first page, one line for each kind, with a link each. */
final class Warnings {
  private final CrewContext context;
  private final Cells cells;

  Warnings(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
  }

  /**
   * Returns the rows: how grave, the first of its kind and how many more, remedy, link; of the same
   * gravity those of few first, lest the many hide them.
   */
  List<List<Cell>> rows() {
    Map<ProblemCode, List<Problem>> kinds = new LinkedHashMap<>();
    context.problems().stream()
        .filter(problem -> problem.severity() != Severity.INFO)
        .sorted(Comparator.comparing(Problem::severity))
        .forEach(each -> kinds.computeIfAbsent(each.code(), key -> new ArrayList<>()).add(each));
    return kinds.values().stream()
        .sorted(Comparator.comparing(Warnings::severity).thenComparing(List::size))
        .map(this::row)
        .toList();
  }

  private static Severity severity(List<Problem> kind) {
    return kind.get(0).severity();
  }

  private List<Cell> row(List<Problem> kind) {
    Problem first = kind.get(0);
    String more = kind.size() == 1 ? "" : " " + context.text("start.more", kind.size() - 1);
    String tab = tab(first);
    return List.of(
        ProblemsSheet.severity(cells, first.severity()),
        cells.text(context.message(first) + more),
        cells.text(context.remedy(first)),
        cells.link(tab));
  }

  /** Returns the sheet that shows a problem best: a log's wall or round, the order, or the list. */
  private String tab(Problem problem) {
    Optional<PlacedLog> placed =
        context.plan().uses().stream()
            .filter(use -> use.log().tag().equals(problem.log()))
            .flatMap(use -> use.placed().stream())
            .findFirst();
    return switch (problem.code()) {
      case GAP_SMALL, GAP_LARGE ->
          placed.map(log -> Tab.ofWall(context.words(), log.wall())).orElse(list());
      case TIP_THIN -> Tab.NOTCH_CHART.in(context.words());
      case TOO_FEW_LOGS -> Tab.ORDER.in(context.words());
      case MID_ESTIMATED, END_ESTIMATED -> Tab.LOG_LIST.in(context.words());
      default -> list();
    };
  }

  private String list() {
    return Tab.PROBLEMS.in(context.words());
  }
}
