package roundbook.report.book;

import java.util.List;
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
  /** Pages that the sheet Start mostly has. */
  private static final int START_PAGES = 2;

  private static final int START_TRIES = 5;

  private static final List<SheetMaker> MAKERS =
      List.of(
          ProofSheet::sheets,
          NotchChartSheet::of,
          RoundSheets::sheets,
          WallSheets::sheets,
          ListSheets::sheets,
          LiveSheet::of);

  private CrewBook() {}

  /** Returns the crew workbook of a plan. */
  public static Book of(CrewContext context) {
    List<Sheet> made = MAKERS.stream().flatMap(maker -> maker.sheets(context).stream()).toList();
    Book.Properties properties =
        Book.Properties.titled(context.jobName() + " - " + context.revision())
            .with(Book.CREW_PROPERTY, context.issue().version())
            .with(Book.INPUT_PROPERTY, context.issue().input());
    List<Sheet> sheets = Stream.concat(start(context, made).stream(), made.stream()).toList();
    return Book.of(properties, sheets).names(ListSheets.names(context));
  }

  /**
   * Returns the first sheet, which tells what is printed for whom by page numbers; those hang on
   * how many pages it has itself, so it is laid anew where that was guessed wrong.
   *
   * @throws IllegalStateException if the count swings, so that no page number would be right
   */
  private static List<Sheet> start(CrewContext context, List<Sheet> others) {
    int pages = START_PAGES;
    for (int tries = 0; tries < START_TRIES; tries++) {
      List<Sheet> start = StartSheet.sheets(context.printing(PrintSets.of(context, pages, others)));
      int count = PrintedPages.of(start.get(0)).count();
      if (count == pages) {
        return start;
      }
      pages = count;
    }
    throw new IllegalStateException("the first sheet does not settle on a number of pages");
  }
}
