package roundbook.report.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import roundbook.page.Sheet;
import roundbook.plan.Plan;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.words.Words;

/**
 * Which pages of a workbook print otherwise than those of the revision before.
 *
 * <p>The sheets of both plans are made and held against each other, so nothing that is printed can
 * be forgotten. The page of a round that is cut need not be printed again: nothing more is marked
 * by it. The first page goes with any other that changes.
 */
public final class ChangedPages {
  private ChangedPages() {}

  /**
   * Returns the names of the pages, in the order of their tabs.
   *
   * @param was the plan of the revision before, as it was printed
   * @param context the plan now, without what is said of its changes
   */
  public static List<String> of(Plan was, CrewContext context) {
    CrewContext before =
        CrewContext.of(was, context.found(), context.issue()).saying(context.typed());
    Map<String, PrintedSheet> old = new HashMap<>();
    sheets(before).forEach(sheet -> old.put(sheet.id(), PrintedSheet.of(sheet)));
    Set<String> cut = cutRounds(context.plan());
    List<Sheet> changed = new ArrayList<>();
    for (Sheet sheet : sheets(context).toList()) {
      boolean same = PrintedSheet.of(sheet).equals(old.get(sheet.id()));
      if (!same && !cut.contains(sheet.id())) {
        changed.add(sheet);
      }
    }
    return names(changed, context.words());
  }

  private static Stream<Sheet> sheets(CrewContext context) {
    return CrewBook.sheets(context).filter(sheet -> !sheet.view().hidden());
  }

  private static Set<String> cutRounds(Plan plan) {
    return IntStream.rangeClosed(1, plan.job().built().rounds())
        .mapToObj(Tab::roundId)
        .collect(Collectors.toSet());
  }

  private static List<String> names(List<Sheet> changed, Words words) {
    Stream<String> first = changed.isEmpty() ? Stream.of() : Stream.of(Tab.START.in(words));
    return Stream.concat(first, changed.stream().map(Sheet::name)).distinct().toList();
  }
}
