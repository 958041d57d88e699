package roundbook.report;

import java.util.List;
import roundbook.job.Opening;
import roundbook.page.PageSetup.Kind;
import roundbook.page.Role;
import roundbook.page.Sheet;

/** Doors and windows as they were asked for. */
final class OpeningsSheet {
  private static final double[] WIDTHS = {20, 8, 13, 12, 12, 12, 20, 37};

  private OpeningsSheet() {}

  /** Returns the sheet; it says so when there are no openings. */
  static List<Sheet> sheets(CrewContext context) {
    List<Opening> openings = context.plan().job().openings();
    ListSheet list =
        new ListSheet(context, Tab.OPENINGS, context.page(Kind.TABLE).lying(), WIDTHS)
            .title(Tab.OPENINGS);
    if (openings.isEmpty()) {
      return List.of(list.text(Role.PLAIN, context.text("openings.none")).build());
    }
    Cells cells = new Cells(context);
    list.text(Role.NOTE, context.text("openings.note", cells.unitWord()));
    list.headOf("openings.head").repeatHead();
    for (Opening opening : openings) {
      list.row(
          cells.bold(opening.name()),
          cells.centre(opening.wall()),
          cells.exact(opening.left()),
          cells.exact(opening.width()),
          cells.exact(opening.sill()),
          cells.exact(opening.head()),
          cells.word(opening.shortLogs() ? "openings.short" : "openings.after"),
          cells.text(opening.remarks()));
    }
    list.text(Role.CAUTION, context.text("openings.caution"));
    return List.of(list.build());
  }
}
