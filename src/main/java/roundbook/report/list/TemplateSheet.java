package roundbook.report.list;

import java.util.List;
import java.util.stream.Stream;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.units.Length;

/**
 * The slope of the necks: a bar to check the print by, and the drops to set a bevel from.
 *
 * <p>The sheet prints at its own size. The bar's height is a row's height, which printers keep.
 */
final class TemplateSheet {
  private static final double[] WIDTHS = {22, 20, 20, 32};
  private static final double POINTS_AN_INCH = 72;

  private TemplateSheet() {}

  /** Returns the sheet: the drawing alone, on one page, or where there is none what it tells. */
  static List<Sheet> sheets(CrewContext context) {
    ListSheet list = new ListSheet(context, Tab.TEMPLATE, context.page(PageKind.FULL_SIZE), WIDTHS);
    if (FullSizePages.put(context, list, drawings -> List.of(drawings.template()))) {
      return List.of(list.build());
    }
    list.title(Tab.TEMPLATE)
        .text(Role.PLAIN_BOLD, context.text("template.note", context.rules().slope()));
    bar(context, list);
    drops(context, list);
    context.words().lines("template.rule").forEach(line -> list.text(Role.PLAIN, line));
    return List.of(list.build());
  }

  private static void bar(CrewContext context, ListSheet list) {
    Length high = context.rules().metric() ? Length.ofMillimetres(50) : Length.ofInches(1);
    Area row = list.free(high.inches() * POINTS_AN_INCH);
    String length = new Cells(context).withUnit(high);
    Area bar = Area.cell(row.top(), 1);
    list.sheet()
        .put(row.top(), 1, Cell.text(context.text("template.bar", length)).role(Role.SHADED))
        .box(bar);
    list.text(Role.NOTE, context.text("template.bar.note", length));
  }

  private static void drops(CrewContext context, ListSheet list) {
    list.heading(context.text("template.drops")).headOf("template.head");
    Cells cells = new Cells(context);
    for (Wall wall : context.plan().job().building().walls()) {
      Length thickness = wall.thickness();
      Length end = thickness.plus(context.rules().overhang());
      List<Cell> drops =
          Stream.of(thickness, end).map(along -> drop(context, cells, along)).toList();
      list.row(
          cells.bold(wall.name()).align(Cell.Align.CENTRE),
          drops.get(0),
          drops.get(1),
          cells.text(context.text("template.across", cells.withUnit(thickness))));
    }
  }

  private static Cell drop(CrewContext context, Cells cells, Length along) {
    return cells.printed(context.rules().slope().dropOver(along));
  }
}
