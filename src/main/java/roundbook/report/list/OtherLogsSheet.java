package roundbook.report.list;

import java.util.List;
import java.util.stream.Collectors;
import roundbook.job.Wall;
import roundbook.page.Area;
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
import roundbook.units.Bulk;
import roundbook.units.Length;

/**
 * Logs for plates, joists and the like: which of those without a place serve, what each weighs, and
 * what is to be ordered. Only a job that wants any has the sheet.
 */
final class OtherLogsSheet {
  private static final double[] WIDTHS = {15, 9, 11, 11, 9, 9, 8, 10, 12, 11, 24};
  private static final int[] EACH = {1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1};
  private static final double[] TAG_ROWS = {30, 30, 22, 28};
  private static final double GAP = 9;

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
    tags(context, list, others.taken());
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
        cells.tape(each.log().length().minus(each.from())),
        cells.tape(each.other().length()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
        cells.exact(each.log().mid()),
        cells.exact(each.log().tip()),
        sweep.isZero() ? cells.text("") : cells.exact(sweep),
        cells.tape(each.over()),
        cells.weight(new Weight(each.pounds(), Length.ZERO)).role(Role.NUMBER_BOLD),
        cells.about(each.balance()),
        cells.text(note(context, each)));
  }

  private static String note(CrewContext context, Found each) {
    String from = context.formats().feetInches(each.from());
    String rest = each.from().isZero() ? "" : context.text("other_logs.rest", from);
    String note = each.spare() ? context.text("other_logs.spare") : each.other().remarks();
    return (rest + " " + note).strip();
  }

  /** Writes a tag for each log found, to cut out and tack to it. */
  private static void tags(CrewContext context, ListSheet list, List<Found> found) {
    if (found.isEmpty()) {
      return;
    }
    list.heading(context.text("other_logs.tags"));
    for (int first = 0; first < found.size(); first += 2) {
      if (first > 0) {
        list.block();
      }
      int top = list.next();
      for (double height : TAG_ROWS) {
        list.free(height);
      }
      tag(context, list, found.get(first), Area.cell(top, 1).sized(TAG_ROWS.length, 5));
      if (first + 1 < found.size()) {
        tag(context, list, found.get(first + 1), Area.cell(top, 7).sized(TAG_ROWS.length, 5));
      }
      list.free(GAP);
    }
  }

  private static void tag(CrewContext context, ListSheet list, Found each, Area area) {
    Cells cells = new Cells(context);
    Area line = Area.cell(area.top(), area.left()).sized(1, 5);
    String name = each.other().name() + " " + each.number();
    String trim = context.text("tags.cut", cells.formats().feetInches(each.other().length()));
    Bulk bulk = new Bulk(context.rules().metric());
    String most = Math.round(bulk.weight(each.pounds())) + (bulk.metric() ? " kg" : " lb");
    Length balance = each.balance().roundedTo(context.rules().unit().coarseStep());
    String lift = context.text("other_logs.tag", most, cells.formats().feetInches(balance));
    list.sheet()
        .merge(line, Cell.text(name).role(Role.TAG_LARGE).align(Cell.Align.LEFT))
        .merge(
            line.moved(1, 0).sized(1, 2),
            Cell.text(each.log().tag()).role(Role.TAG_LARGE).align(Cell.Align.LEFT))
        .merge(
            line.moved(1, 2).sized(1, 3),
            Cell.text(trim).role(Role.TAG_LARGE).align(Cell.Align.RIGHT))
        .merge(line.moved(2, 0), Cell.text(lift).role(Role.TAG_BODY))
        .merge(line.moved(3, 0), Cell.text(note(context, each)).role(Role.BODY));
    list.sheet().box(area);
  }
}
