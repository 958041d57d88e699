package roundbook.report.list;

import java.util.List;
import java.util.stream.Stream;
import roundbook.page.Cell;
import roundbook.page.Cell.Align;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.PiecePlan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.mark.PieceCells;
import roundbook.report.mark.ShortRows;

/** Running distances of every log from its squared butt, in round order. */
final class CutListSheet {
  private static final double[] WIDTHS = {8, 8, 12, 10, 15, 15, 15, 18, 15, 9, 9};

  private CutListSheet() {}

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    ListSheet list =
        new ListSheet(context, Tab.CUT_LIST, context.page(PageKind.TABLE).lying(), WIDTHS)
            .title(Tab.CUT_LIST)
            .text(Role.PLAIN_BOLD, context.text("cut_list.note"))
            .headOf("cut_list.head")
            .repeatHead();
    for (int round = 1; round <= context.plan().rounds(); round++) {
      list.together(
          context.plan().round(round).stream().flatMap(each -> rows(context, each)).toList());
    }
    return List.of(list.build());
  }

  private static Stream<List<Cell>> rows(CrewContext context, PiecePlan piece) {
    Cells cells = new Cells(context);
    return ShortRows.rows(
        context,
        piece,
        beside -> beside.cut(cells),
        () -> row(cells, new PieceCells(LiveContext.of(context), piece)));
  }

  private static List<Cell> row(Cells cells, PieceCells live) {
    PiecePlan piece = live.piece();
    Role role = piece.placed().round() % 2 == 1 ? Role.BODY_CENTRE : Role.SHADED;
    return List.of(
        cells.count(piece.placed().round()).role(role).align(Align.CENTRE),
        cells.bold(piece.placed().wall().name()).align(Align.CENTRE),
        live.tag(Role.BODY_BOLD),
        cells.text("● " + piece.buttAt()).role(role).align(Align.CENTRE),
        live.offButt(role).align(Align.CENTRE),
        cells.tape(piece.nearShoulder()).role(role).align(Align.CENTRE),
        cells.tape(piece.farShoulder()).role(role).align(Align.CENTRE),
        cells.tape(piece.placed().trimmed()).role(Role.LARGE_CUT),
        live.fallsOff(role).align(Align.CENTRE),
        Cell.blank(Role.TICK),
        Cell.blank(Role.TICK));
  }
}
