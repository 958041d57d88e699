package roundbook.report.list;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.Log;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Note;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.mark.PieceCells;
import roundbook.report.mark.ShortRows;
import roundbook.stack.PlacedLog;

/** What to hew or saw, log by log: thickness, crown, face, and the heights left. */
final class HewingSheet {
  private static final double[] WIDTHS = {7, 6, 10, 11, 8, 8, 11, 9.5, 9.5, 9.5, 10, 10, 18, 7};
  private static final Set<Note> TOLD = Set.of(Note.MID_ESTIMATED, Note.BED_FLAT);

  private final CrewContext context;
  private final Cells cells;

  private HewingSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new HewingSheet(context).sheet());
  }

  private Sheet sheet() {
    ListSheet list =
        new ListSheet(context, Tab.HEWING, context.page(PageKind.TABLE).lying(), WIDTHS)
            .title(Tab.HEWING)
            .text(Role.PLAIN_BOLD, context.text("hewing.rule"))
            .text(Role.NOTE, context.text("hewing.note", cells.unitWord()))
            .headOf("hewing.head")
            .repeatHead();
    for (int round = 1; round <= context.plan().rounds(); round++) {
      list.together(context.plan().round(round).stream().flatMap(this::rows).toList());
    }
    return list.build();
  }

  private Stream<List<Cell>> rows(PiecePlan piece) {
    return ShortRows.rows(
        context,
        piece,
        beside -> row(beside.cells(), cells.word("beside.mind")),
        () -> row(new PieceCells(LiveContext.of(context), piece), cells.text(notes(piece))));
  }

  private List<Cell> row(PieceCells live, Cell notes) {
    PlacedLog placed = live.spot().placed();
    Log.Traits traits = placed.piece().log().traits();
    return List.of(
        cells.count(placed.round()),
        cells.bold(ShortRows.place(live.spot())).align(Cell.Align.CENTRE),
        live.tag(Role.BODY_BOLD),
        cells.text(traits.species()),
        cells.exact(placed.wall().thickness()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
        traits.sweep().isZero() ? cells.centre("") : cells.printed(traits.sweep()),
        cells.word(placed.buttAtStart() ? "hewing.left" : "hewing.right"),
        live.printed(live.butt()),
        live.printed(live.mid()),
        live.printed(live.tip()),
        live.printed(live.slab(live.butt())),
        live.printed(live.slab(live.tip())),
        notes,
        Cell.blank(Role.TICK));
  }

  private String notes(PiecePlan plan) {
    return plan.notes().stream()
        .filter(TOLD::contains)
        .map(note -> context.text("hewing." + note.name().toLowerCase(Locale.ROOT)))
        .collect(Collectors.joining("; "));
  }
}
