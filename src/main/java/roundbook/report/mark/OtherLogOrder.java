package roundbook.report.mark;

import java.util.List;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.plan.OtherLogs.Lack;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.units.Length;

/** What is to be ordered for other places than the walls, as a table of any sheet. */
public final class OtherLogOrder {

  private OtherLogOrder() {}

  /**
   * Writes the table, unless there is nothing to order.
   *
   * @param spans how many of the sheet's columns each of the eight takes
   */
  public static void write(CrewContext context, ListSheet list, List<Lack> lacks, int... spans) {
    if (lacks.isEmpty()) {
      return;
    }
    Cells cells = new Cells(context);
    list.heading(context.text("other_logs.order"));
    String over = cells.withUnit(lacks.get(0).lengths().over());
    list.spans(spans).headOf("other_logs.order.head", context.rules().unit().symbol(), over);
    for (Lack lack : lacks) {
      list.row(
          cells.bold(lack.other().name()),
          cells.count(lack.count()),
          cells.tape(lack.lengths().least()),
          cells.tape(lack.lengths().ask()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
          cells.tape(lack.lengths().delivered()),
          least(cells, lack.other().mid()),
          least(cells, lack.other().tip()),
          lack.other().sweep().map(cells::printed).orElseGet(() -> cells.centre("–")));
    }
    list.text(Role.NOTE, context.text("other_logs.order.note"));
  }

  private static Cell least(Cells cells, Length length) {
    return length.isZero() ? cells.centre("–") : cells.printed(length);
  }
}
