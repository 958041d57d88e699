package roundbook.report.live;

import java.util.List;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.report.frame.CrewContext;

/**
 * The hidden sheet of the sums behind the live pages.
 *
 * <p>Everything that follows from what a crew types is worked out here once, in tables with
 * headings, and every page shows it from here.
 */
public final class LiveSheet {
  /** The sheet's id in every language. */
  static final String ID = "working";

  private LiveSheet() {}

  /** Returns the sheet. */
  public static List<Sheet> of(CrewContext context) {
    LiveContext live = LiveContext.of(context);
    SheetBuilder sheet = new SheetBuilder(live.map().sheet(), context.page(PageKind.TABLE));
    sheet.id(ID).hidden().widths(14, 12);
    sheet.put("A1", Cell.text(live.text("working.title")).role(Role.HEADING));
    sheet.put("A2", Cell.text(live.text("working.note")).role(Role.LABEL));
    new LiveRules(live).put(sheet);
    new LiveRounds(live).put(sheet);
    new LiveCorners(live).put(sheet);
    new LivePieces(live).put(sheet);
    new LiveLogs(live).put(sheet);
    return List.of(sheet.build());
  }
}
