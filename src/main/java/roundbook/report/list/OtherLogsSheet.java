package roundbook.report.list;

import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.OtherLogs;
import roundbook.plan.OtherLogs.Found;
import roundbook.plan.PiecePlan.Weight;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.mark.OtherLogOrder;
import roundbook.units.Length;

/**
 * Logs for plates, joists and the like: which of those without a place serve, what each weighs, and
 * what is to be ordered. Only a job that wants any has the sheet.
 */
final class OtherLogsSheet {
  private static final double[] WIDTHS = {15, 9, 11, 11, 9, 9, 8, 10, 12, 11, 24};
  private static final int[] EACH = {1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1};

  private OtherLogsSheet() {}

  /** Returns the sheet; none where no such log is wanted. */
  static List<Sheet> sheets(CrewContext context) {
    if (context.plan().job().others().isEmpty()) {
      return List.of();
    }
    ListSheet list =
        new ListSheet(context, Tab.OTHER_LOGS, context.page(PageKind.TABLE).lying(), WIDTHS)
            .title(Tab.OTHER_LOGS);
    list.text(Role.PLAIN_BOLD, context.text("other_logs.note"));
    list.text(Role.PLAIN, context.text("other_logs.plates", laidLast(context)));
    OtherLogs others = OtherLogs.of(context.plan());
    found(context, list, others.taken());
    OtherLogOrder.write(context, list, others.lacking(), 2, 1, 1, 1, 1, 2, 2, 1);
    return List.of(list.build());
  }

  private static String laidLast(CrewContext context) {
    return context.plan().job().building().walls().stream()
        .filter(wall -> !wall.laidFirst())
        .map(Wall::name)
        .collect(Collectors.joining(", "));
  }

  private static void found(CrewContext context, ListSheet list, List<Found> found) {
    if (found.isEmpty()) {
      list.text(Role.PLAIN_BOLD, context.text("other_logs.none"));
      return;
    }
    list.heading(context.text("other_logs.found"));
    list.spans(EACH).headOf("other_logs.head", context.rules().unit().symbol());
    Cells cells = new Cells(context);
    found.forEach(each -> list.row(row(context, cells, each)));
    list.text(Role.NOTE, context.text("other_logs.found.note"));
  }

  private static List<Cell> row(CrewContext context, Cells cells, Found each) {
    Length sweep = each.log().traits().sweep();
    return List.of(
        cells.bold(each.other().name() + " " + each.number()),
        cells.bold(each.log().tag()).align(Cell.Align.CENTRE),
        cells.tape(each.log().length()),
        cells.tape(each.other().length()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
        cells.exact(each.log().mid()),
        cells.exact(each.log().tip()),
        sweep.isZero() ? cells.text("") : cells.exact(sweep),
        cells.tape(each.over()),
        cells.weight(new Weight(each.pounds(), Length.ZERO)).role(Role.NUMBER_BOLD),
        cells.about(each.balance()),
        cells.text(each.spare() ? context.text("other_logs.spare") : each.other().remarks()));
  }
}
