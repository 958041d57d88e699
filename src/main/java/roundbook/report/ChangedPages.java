package roundbook.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import roundbook.job.Wall;
import roundbook.plan.Plan;
import roundbook.replan.Difference;
import roundbook.replan.Difference.Kind;

/**
 * Which pages of a workbook show something that is printed otherwise than before.
 *
 * <p>The page of a round that is cut need not be printed again: nothing more is marked by it.
 */
final class ChangedPages {
  private final Words words;
  private final Plan plan;
  private final List<Difference> differences;

  ChangedPages(Words words, Plan plan, List<Difference> differences) {
    this.words = words;
    this.plan = plan;
    this.differences = differences;
  }

  /** Returns the names of the pages, in the order of their tabs. */
  List<String> names() {
    Set<String> names = new LinkedHashSet<>();
    boolean shared = any(Kind.MARKS, Kind.ROUND);
    boolean logs = any(Kind.LOG, Kind.CUT, Kind.ROUND);
    add(names, shared || any(Kind.GAP), Tab.NOTCH_CHART);
    for (int round = plan.job().built().rounds() + 1; round <= plan.rounds(); round++) {
      if (showsRound(round)) {
        names.add(Tab.ofRound(words, round));
      }
    }
    for (Wall wall : plan.job().building().walls()) {
      if (showsWall(wall)) {
        names.add(Tab.ofWall(words, wall));
      }
    }
    add(names, any(Kind.HEIGHT, Kind.CORNER, Kind.ROUND), Tab.LEVELS);
    add(names, logs || shared, Tab.HEWING);
    add(names, logs || shared, Tab.CUT_LIST);
    add(names, any(Kind.QUANTITY), Tab.MATERIALS);
    add(names, any(Kind.ORDER), Tab.ORDER);
    add(names, logs, Tab.LIFTING);
    add(names, logs || shared, Tab.TAGS);
    add(names, any(Kind.HEIGHT, Kind.ROUND), Tab.STORY_POLE);
    return List.copyOf(names);
  }

  private void add(Set<String> names, boolean changed, Tab tab) {
    if (changed) {
      names.add(tab.in(words));
    }
  }

  private boolean any(Kind... kinds) {
    return differences.stream().anyMatch(each -> List.of(kinds).contains(each.kind()));
  }

  private boolean showsRound(int round) {
    return differences.stream()
        .filter(each -> each.kind() != Kind.GAP)
        .anyMatch(each -> each.round() == round);
  }

  private boolean showsWall(Wall wall) {
    return differences.stream()
        .anyMatch(
            each ->
                each.place().equals(wall.name())
                    || each.kind() == Kind.MARKS
                    || each.kind() == Kind.ROUND
                    || each.kind() == Kind.HEIGHT);
  }
}
