package roundbook.report.list;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import roundbook.page.Sheet;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.SheetMaker;
import roundbook.report.frame.Tab;

/**
 * Strings the sheets after the walls together in reading order: levels, lists, full size, doubts.
 */
public final class ListSheets {
  private static final List<SheetMaker> MAKERS =
      List.of(
          LevelsSheet::of,
          AsBuiltSheet::sheets,
          HewingSheet::sheets,
          CrossCutsSheet::sheets,
          LogListSheet::sheets,
          SparesSheet::sheets,
          OpeningsSheet::sheets,
          HeightsSheet::sheets,
          MaterialsSheet::sheets,
          ChinkingSheet::sheets,
          OrderSheet::sheets,
          OtherLogsSheet::sheets,
          LiftingSheet::sheets,
          TagsSheet::sheets,
          TemplateSheet::sheets,
          StoryPoleSheet::sheets,
          ProblemsSheet::sheets,
          SettingsSheet::sheets);

  private ListSheets() {}

  /** Returns the sheets in their order. */
  public static List<Sheet> sheets(CrewContext context) {
    return MAKERS.stream().flatMap(maker -> maker.sheets(context).stream()).toList();
  }

  /** Returns whether a workbook has a sheet: those that would be empty are left out. */
  public static boolean has(CrewContext context, Tab tab) {
    return switch (tab) {
      case AS_BUILT -> AsBuiltSheet.isWanted(context);
      case ORDER -> OrderSheet.isWanted(context);
      case CROSS_CUTS -> !context.plan().job().stems().isEmpty();
      case OTHER_LOGS -> !context.plan().job().others().isEmpty();
      default -> true;
    };
  }

  /** Returns the sheet of openings. */
  public static List<Sheet> openings(CrewContext context) {
    return OpeningsSheet.sheets(context);
  }

  /** Returns what stands on each tag, by its place, round by round in the order of the tags. */
  public static SortedMap<Integer, Map<String, List<String>>> tags(CrewContext context) {
    return TagsSheet.texts(context);
  }

  /** Returns on which rows of the sheet of tags tags begin, with the rounds of their logs. */
  public static SortedMap<Integer, Integer> tagRows(CrewContext context) {
    return TagsSheet.rounds(context);
  }

  /** Returns the names of areas that a re-plan reads these sheets back by, with where they lie. */
  public static SortedMap<String, String> names(CrewContext context) {
    SortedMap<String, String> names = new TreeMap<>(LogListSheet.names(context));
    names.putAll(ProblemsSheet.names(context));
    names.putAll(CrossCutsSheet.names(context));
    return names;
  }
}
