package roundbook.report;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import roundbook.page.Book;
import roundbook.page.Sheet;

/**
 * Strings all sheets of the crew workbook together in reading order.
 *
 * <p>Start, notch chart, one sheet a round, one a wall, levels; then the lists; then the pages for
 * the yard and the pages printed at full size; last what was in doubt and every setting.
 */
public final class CrewBook {
  private static final List<SheetMaker> MAKERS =
      List.of(
          StartSheet::sheets,
          NotchChartSheet::of,
          RoundSheets::of,
          WallSheets::of,
          LevelsSheet::of,
          AsBuiltSheet::sheets,
          HewingSheet::sheets,
          CutListSheet::sheets,
          LogListSheet::sheets,
          SparesSheet::sheets,
          OpeningsSheet::sheets,
          HeightsSheet::sheets,
          MaterialsSheet::sheets,
          ChinkingSheet::sheets,
          OrderSheet::sheets,
          LiftingSheet::sheets,
          TagsSheet::sheets,
          TemplateSheet::sheets,
          StoryPoleSheet::sheets,
          ProblemsSheet::sheets,
          SettingsSheet::sheets,
          LiveSheet::of);

  private CrewBook() {}

  /** Returns the crew workbook of a plan. */
  public static Book of(CrewContext context) {
    return of(context, sheets(context).toList());
  }

  /** Returns what makes its sheets, in their order; no part needs another one. */
  public static List<Supplier<List<Sheet>>> parts(CrewContext context) {
    return MAKERS.stream()
        .<Supplier<List<Sheet>>>map(maker -> () -> maker.sheets(context))
        .toList();
  }

  /** Returns the crew workbook of a plan, its sheets made already. */
  public static Book of(CrewContext context, List<Sheet> sheets) {
    Book.Properties properties =
        Book.Properties.titled(context.jobName() + " - " + context.revision())
            .with(Book.CREW_PROPERTY, context.issue().version());
    return Book.of(properties, sheets).names(names(context));
  }

  /** Returns the sheets one by one. */
  static Stream<Sheet> sheets(CrewContext context) {
    return parts(context).stream().flatMap(part -> part.get().stream());
  }

  private static SortedMap<String, String> names(CrewContext context) {
    SortedMap<String, String> names = new TreeMap<>(LogListSheet.names(context));
    names.putAll(ProblemsSheet.names(context));
    return names;
  }
}
