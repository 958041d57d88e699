package roundbook.report.list;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
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
import roundbook.report.frame.Columns;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.mark.PieceCells;
import roundbook.report.mark.PieceCells.LiveLength;
import roundbook.report.mark.ShortRows;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/** What to hew or saw, log by log: thickness, crown, face, and the heights left. */
final class HewingSheet {
  private static final Set<Note> TOLD = Set.of(Note.MID_ESTIMATED, Note.BED_FLAT);

  private final CrewContext context;
  private final Cells cells;
  private final Columns<Row> columns;

  private HewingSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.columns =
        new Columns<Row>(context, "hewing.head")
            .add("round", 6.5, row -> cells.count(row.placed().round()))
            .add("wall", 6, row -> cells.bold(row.place()).align(Cell.Align.CENTRE))
            .add("log", 8, row -> row.live().tag(Role.BODY_BOLD))
            .add("thick", 6.5, this::thickness)
            .add("sweep", 7, row -> sweep(row.traits().sweep()))
            .add("face", 11, row -> cells.word(row.outside()))
            .add("butt", 8.5, row -> row.printed(PieceCells::butt))
            .add("mid", 8.5, row -> row.printed(PieceCells::mid))
            .add("tip", 8.5, row -> row.printed(PieceCells::tip))
            .add("slab_butt", 8.5, row -> row.printed(live -> live.slab(live.butt())))
            .add("slab_tip", 8.5, row -> row.printed(live -> live.slab(live.tip())))
            .add("mind", 18, Row::mind)
            .add("hewn", 6, row -> Cell.blank(Role.TICK));
  }

  /**
   * One log.
   *
   * @param live its cells
   * @param mind what is to be minded
   */
  private record Row(PieceCells live, Cell mind) {
    PlacedLog placed() {
      return live.spot().placed();
    }

    String place() {
      return ShortRows.place(live.spot());
    }

    Log.Traits traits() {
      return placed().piece().log().traits();
    }

    String outside() {
      return placed().buttAtStart() ? "hewing.left" : "hewing.right";
    }

    Cell printed(Function<PieceCells, LiveLength> length) {
      return live.printed(length.apply(live));
    }
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new HewingSheet(context).sheet());
  }

  private Sheet sheet() {
    ListSheet list =
        new ListSheet(context, Tab.HEWING, context.page(PageKind.TABLE), columns.widths())
            .title(Tab.HEWING)
            .text(Role.PLAIN_BOLD, context.text("hewing.rule"))
            .text(Role.NOTE, context.text("hewing.note", cells.unitWord()))
            .head(columns.headings())
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

  private List<Cell> row(PieceCells live, Cell mind) {
    return columns.row(new Row(live, mind));
  }

  private Cell thickness(Row row) {
    Cell thick = cells.exact(row.placed().wall().thickness());
    return thick.role(Role.BODY_BOLD).align(Cell.Align.CENTRE);
  }

  private Cell sweep(Length sweep) {
    return sweep.isZero() ? cells.centre("") : cells.printed(sweep);
  }

  private String notes(PiecePlan plan) {
    return plan.notes().stream()
        .filter(TOLD::contains)
        .map(note -> context.text("hewing." + note.name().toLowerCase(Locale.ROOT)))
        .collect(Collectors.joining("; "));
  }
}
