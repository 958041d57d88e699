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
  private static final List<Parts> PARTS =
      List.of(
          one(StartSheet::sheets),
          one(NotchChartSheet::of),
          RoundSheets::parts,
          WallSheets::parts,
          one(LevelsSheet::of),
          one(AsBuiltSheet::sheets),
          one(HewingSheet::sheets),
          one(CutListSheet::sheets),
          one(LogListSheet::sheets),
          one(SparesSheet::sheets),
          one(OpeningsSheet::sheets),
          one(HeightsSheet::sheets),
          one(MaterialsSheet::sheets),
          one(ChinkingSheet::sheets),
          one(OrderSheet::sheets),
          one(LiftingSheet::sheets),
          one(TagsSheet::sheets),
          one(TemplateSheet::sheets),
          one(StoryPoleSheet::sheets),
          one(ProblemsSheet::sheets),
          one(SettingsSheet::sheets),
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
