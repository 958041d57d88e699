package roundbook.report.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import roundbook.job.Wall;
import roundbook.page.Sheet;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.PrintSet;
import roundbook.report.frame.PrintSet.Kind;
import roundbook.report.frame.PrintSet.Part;
import roundbook.report.frame.Tab;
import roundbook.report.list.ListSheets;

/**
 * What is printed for whom: for the crew what it hews and cuts by now, for the yard what is done
 * with the logs before, for the office the rest. Rounds above the next one stand in no set: their
 * numbers may change until they are in hand.
 */
final class PrintSets {
  private static final Set<Tab> YARD =
      Set.of(Tab.LOG_LIST, Tab.CROSS_CUTS, Tab.SPARES, Tab.LIFTING, Tab.ORDER);

  /** How many rounds are printed for the crew: the one in hand and the next. */
  private static final int IN_HAND = 2;

  private final CrewContext context;
  private final Set<String> crew = new HashSet<>();
  private final Set<String> later = new HashSet<>();
  private final Map<Kind, List<Part>> parts = new EnumMap<>(Kind.class);

  private PrintSets(CrewContext context) {
    this.context = context;
    int cut = context.plan().job().built().rounds();
    crew.add(Tab.PROOF.id());
    crew.add(Tab.NOTCH_CHART.id());
    crew.add(Tab.HEWING.id());
    crew.add(Tab.OPENINGS.id());
    if (cut == 0) {
      crew.add(Tab.TEMPLATE.id());
      crew.add(Tab.STORY_POLE.id());
    }
    for (int round = 1; round <= context.plan().rounds(); round++) {
      boolean now = round > cut && round <= cut + IN_HAND;
      (now ? crew : later).add(Tab.roundId(round));
    }
    for (Wall wall : context.plan().job().building().walls()) {
      crew.add(Tab.wallId(wall));
    }
    for (Kind kind : Kind.values()) {
      parts.put(kind, new ArrayList<>());
    }
  }

  /**
   * Returns the sets of a workbook with pages, in the order of {@link Kind}.
   *
   * @param startPages the pages of the sheet Start, which comes first
   * @param others the other sheets in their order
   */
  static List<PrintSet> of(CrewContext context, int startPages, List<Sheet> others) {
    PrintSets sets = new PrintSets(context);
    sets.parts.get(Kind.CREW).add(new Part(Tab.START.in(context.words()), 1, startPages));
    int before = startPages;
    for (Sheet sheet : others) {
      if (!sheet.view().hidden()) {
        PrintedPages pages = PrintedPages.of(sheet);
        sets.put(sheet, pages, before);
        before += pages.count();
      }
    }
    return sets.parts.entrySet().stream()
        .map(entry -> new PrintSet(entry.getKey(), entry.getValue()))
        .filter(set -> !set.parts().isEmpty())
        .toList();
  }

  private void put(Sheet sheet, PrintedPages pages, int before) {
    if (sheet.id().equals(Tab.TAGS.id())) {
      tags(sheet, pages, before);
    } else if (!later.contains(sheet.id())) {
      boolean yard = YARD.stream().anyMatch(tab -> tab.id().equals(sheet.id()));
      Kind kind = crew.contains(sheet.id()) ? Kind.CREW : yard ? Kind.YARD : Kind.OFFICE;
      parts.get(kind).add(new Part(sheet.name(), before + 1, before + pages.count()));
    }
  }

  /** Puts the pages with tags of the rounds in hand to the crew's. */
  private void tags(Sheet sheet, PrintedPages pages, int before) {
    int cut = context.plan().job().built().rounds();
    ListSheets.tagRows(context).entrySet().stream()
        .filter(row -> row.getValue() > cut && row.getValue() <= cut + IN_HAND)
        .map(row -> before + pages.pageOf(row.getKey()) + 1)
        .distinct()
        .sorted(Comparator.naturalOrder())
        .forEach(page -> parts.get(Kind.CREW).add(new Part(sheet.name(), page, page)));
  }
}
