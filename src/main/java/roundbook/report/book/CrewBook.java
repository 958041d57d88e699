package roundbook.report.book;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import roundbook.page.Book;
import roundbook.page.Sheet;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.SheetMaker;
import roundbook.report.list.ListSheets;
import roundbook.report.live.LiveSheet;
import roundbook.report.mark.NotchChartSheet;
import roundbook.report.proof.ProofSheet;
import roundbook.report.round.RoundSheets;
import roundbook.report.start.StartSheet;
import roundbook.report.wall.WallSheets;

/**
 * Strings all sheets of the crew workbook together in reading order.
 *
 * <p>Start, proof, notch chart, one sheet a round, one a wall, levels; then the lists; then the
 * pages for the yard and the pages printed at full size; last what was in doubt and every setting.
 */
public final class CrewBook {
  private static final List<Parts> PARTS =
      List.of(
          one(StartSheet::sheets),
          one(ProofSheet::sheets),
          one(NotchChartSheet::of),
          RoundSheets::parts,
          WallSheets::parts,
          ListSheets::parts,
          one(LiveSheet::of));

  private CrewBook() {}

  /** What makes the sheets of one kind, a round's or a wall's sheet each by itself. */
  private interface Parts {
    /** Returns the parts in the order of their sheets. */
    List<Supplier<List<Sheet>>> of(CrewContext context);
  }

  private static Parts one(SheetMaker maker) {
    return context -> List.of(() -> maker.sheets(context));
  }

  /** Returns the crew workbook of a plan. */
  public static Book of(CrewContext context) {
    return of(context, sheets(context).toList());
  }

  /** Returns what makes its sheets, in their order; no part needs another one. */
  public static List<Supplier<List<Sheet>>> parts(CrewContext context) {
    return PARTS.stream().flatMap(parts -> parts.of(context).stream()).toList();
  }

  /** Returns the crew workbook of a plan, its sheets made already. */
  public static Book of(CrewContext context, List<Sheet> sheets) {
    Book.Properties properties =
        Book.Properties.titled(context.jobName() + " - " + context.revision())
            .with(Book.CREW_PROPERTY, context.issue().version())
            .with(Book.INPUT_PROPERTY, context.issue().input());
    return Book.of(properties, printing(context, sheets)).names(ListSheets.names(context));
  }

  /** Returns the sheets, the first of which tells what is printed for whom, by page numbers. */
  private static List<Sheet> printing(CrewContext context, List<Sheet> made) {
    List<Sheet> sheets = made;
    for (int pages = 0; pages != PrintedPages.of(sheets.get(0)).count(); ) {
      pages = PrintedPages.of(sheets.get(0)).count();
      List<Sheet> start = StartSheet.sheets(context.printing(PrintSets.of(context, sheets)));
      sheets = Stream.concat(start.stream(), sheets.stream().skip(start.size())).toList();
    }
    return sheets;
  }

  /** Returns the sheets one by one. */
  static Stream<Sheet> sheets(CrewContext context) {
    return parts(context).stream().flatMap(part -> part.get().stream());
  }
}
