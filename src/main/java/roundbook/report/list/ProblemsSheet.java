package roundbook.report.list;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.CellNames;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.problem.Problem;
import roundbook.problem.Severity;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;

/**
 * Every problem of the input and the plan, with its place and its remedy.
 *
 * <p>A hidden column after the printed ones carries each as code and values, so that a later
 * revision tells it in whatever language its job asks for.
 */
public final class ProblemsSheet {
  private static final double[] WIDTHS = {12, 20, 9, 38, 12, 30, 13};

  private static final List<String> COLUMNS =
      List.of("severities", "places", "logs", "messages", "founds", "remedies", "codes", "carried");

  private static final int FIRST_ROW = 4;

  private ProblemsSheet() {}

  /**
   * Returns the names of the columns of what was found while the tally was read, which stands
   * first; a later revision tells it again. None where nothing was found.
   */
  static SortedMap<String, String> names(CrewContext context) {
    SortedMap<String, String> names = new TreeMap<>();
    int last = FIRST_ROW - 1 + (int) context.found().stream().distinct().count();
    String tab = Tab.PROBLEMS.in(context.words());
    for (int at = 1; last >= FIRST_ROW && at <= COLUMNS.size(); at++) {
      String name = CellNames.problem(COLUMNS.get(at - 1));
      names.put(name, new Area(FIRST_ROW, at, last, at).on(tab));
    }
    return names;
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    ListSheet list =
        new ListSheet(context, Tab.PROBLEMS, context.page(PageKind.TABLE).lying(), WIDTHS)
            .title(Tab.PROBLEMS);
    List<Problem> problems = context.problems();
    list.text(Role.NOTE, summary(context, problems)).headOf("problems.head").repeatHead();
    Cells cells = new Cells(context);
    list.margin(1, 0);
    for (Problem problem : problems) {
      list.row(
          severity(cells, problem.severity()),
          cells.text(problem.where().toString()),
          cells.centre(problem.log()),
          cells.text(context.message(problem)),
          cells.text(context.sentences().found(problem)),
          cells.text(context.remedy(problem)),
          cells.text(problem.code().id()),
          cells.text(problem.carried()));
    }
    return List.of(list.build());
  }

  /** Returns a problem's weight in sign and word; errors stand out without colour. */
  public static Cell severity(Cells cells, Severity severity) {
    Cell cell = cells.word("severity." + severity.word());
    return severity == Severity.ERROR ? cell.role(Role.FLAG) : cell;
  }

  private static String summary(CrewContext context, List<Problem> problems) {
    return context.text(
        "problems.note",
        count(problems, Severity.ERROR),
        count(problems, Severity.WARNING),
        count(problems, Severity.INFO));
  }

  private static long count(List<Problem> problems, Severity severity) {
    return problems.stream().filter(problem -> problem.severity() == severity).count();
  }
}
