package roundbook.report.list;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import roundbook.page.Sheet;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.SheetMaker;

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
          CutListSheet::sheets,
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

  /** Returns what makes the sheets, each kind by itself, in their order. */
  public static List<Supplier<List<Sheet>>> parts(CrewContext context) {
    return MAKERS.stream()
        .<Supplier<List<Sheet>>>map(maker -> () -> maker.sheets(context))
        .toList();
  }

  /** Returns the names of areas that a re-plan reads these sheets back by, with where they lie. */
  public static SortedMap<String, String> names(CrewContext context) {
    SortedMap<String, String> names = new TreeMap<>(LogListSheet.names(context));
    names.putAll(ProblemsSheet.names(context));
    names.putAll(CrossCutsSheet.names(context));
    return names;
  }
}
