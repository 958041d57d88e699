package roundbook.report.start;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.page.Cell;
import roundbook.problem.Briefing;
import roundbook.problem.Problem;
import roundbook.problem.Severity;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.list.ProblemsSheet;
import roundbook.stack.PlacedLog;

/** The problems that matter on the first page, as a {@link Briefing} has them. */
final class Warnings {
  private final CrewContext context;
  private final Cells cells;
  private final Briefing briefing;

  Warnings(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.briefing = Briefing.of(context.problems());
  }

  /** Returns what stops the plan, a row a kind, then what must be done before the first cut. */
  List<List<Cell>> rows() {
    return Stream.concat(briefing.stopKinds().stream(), briefing.first().stream())
        .map(this::row)
        .toList();
  }

  /** Returns the other warnings in one line, the first of each kind with how many more. */
  String counted() {
    return briefing.counted().stream()
        .filter(line -> line.problem().severity() != Severity.INFO)
        .map(this::told)
        .collect(Collectors.joining(" · "));
  }

  private List<Cell> row(Briefing.Line line) {
    Problem problem = line.problem();
    return List.of(
        ProblemsSheet.severity(cells, problem.severity()),
        cells.text(told(line)),
        cells.text(context.remedy(problem)),
        cells.linkForCrew(tab(problem)));
  }

  private String told(Briefing.Line line) {
    String more = line.more() == 0 ? "" : " " + context.text("start.more", line.more());
    return context.message(line.problem()) + more;
  }

  /** Returns the sheet that shows a problem best: a log's wall or round, the order, or the list. */
  private String tab(Problem problem) {
    Optional<PlacedLog> placed =
        context.plan().uses().stream()
            .filter(use -> use.log().tag().equals(problem.log()))
            .flatMap(use -> use.placed().stream())
            .findFirst();
    return switch (problem.code()) {
      case GAP_SMALL, GAP_LARGE, GAP_SWEEP ->
          placed.map(log -> Tab.ofWall(context.words(), log.wall())).orElse(list());
      case PARE_TOP -> Tab.ofRound(context.words(), context.plan().job().built().rounds());
      case TIP_THIN -> Tab.NOTCH_CHART.in(context.words());
      case TOO_FEW_LOGS -> Tab.ORDER.in(context.words());
      case OPENING_SILL, OPENING_HEADER, OPENING_PIECE_SHORT, OPENING_OUTSIDE ->
          Tab.OPENINGS.in(context.words());
      case MID_ESTIMATED, END_ESTIMATED -> Tab.LOG_LIST.in(context.words());
      default -> list();
    };
  }

  private String list() {
    return Tab.PROBLEMS.in(context.words());
  }
}
