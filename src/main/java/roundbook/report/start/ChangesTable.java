package roundbook.report.start;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import roundbook.page.Role;
import roundbook.plan.Plan;
import roundbook.replan.Change;
import roundbook.replan.Difference;
import roundbook.replan.Difference.DifferenceKind;
import roundbook.replan.Replan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;

/** What changed since the revision before, with the reasons and the pages to print again. */
final class ChangesTable {
  private static final int MOST_OF_A_KIND = 12;

  private final CrewContext context;
  private final Replan replan;
  private final ChangeWords words;
  private final Cells cells;

  ChangesTable(CrewContext context, Replan replan) {
    this.context = context;
    this.replan = replan;
    this.words = new ChangeWords(context.words());
    this.cells = new Cells(context);
  }

  /** Writes the logs that changed and the pages to print again. */
  void write(ListSheet list) {
    list.heading(context.text("changes.title", replan.revision()));
    Plan plan = replan.plan();
    if (plan.job().built().rounds() > 0) {
      list.text(Role.PLAIN, context.text("changes.cut", plan.job().built().rounds()));
    }
    list.text(Role.PLAIN_BOLD, words.pages(context.changed()));
    logs(list);
  }

  /** Writes everything else that is printed otherwise, which is long and can wait. */
  void writeAll(ListSheet list) {
    list.heading(context.text("changes.all", replan.revision()));
    differences(list);
  }

  private void logs(ListSheet list) {
    if (replan.changes().isEmpty()) {
      return;
    }
    list.spans(3, 3, 5, 5, 8).headOf("changes.logs.head");
    for (Change change : replan.changes()) {
      list.row(
          cells.count(change.place().round()),
          cells.centre(change.place().wall()),
          cells.centre(words.orDash(change.was())),
          cells.bold(words.now(change)),
          cells.text(words.why(change)));
    }
  }

  private void differences(ListSheet list) {
    List<Difference> shown = shown();
    if (shown.isEmpty()) {
      list.text(Role.PLAIN, context.text("changes.none"));
      return;
    }
    list.spans(10, 7, 7).headOf("changes.list.head");
    Map<DifferenceKind, Integer> counts = new EnumMap<>(DifferenceKind.class);
    for (Difference each : shown) {
      int count = counts.merge(each.kind(), 1, Integer::sum);
      if (count <= MOST_OF_A_KIND) {
        list.row(
            cells.text(words.what(each)),
            cells.text(words.value(each, each.was())),
            cells.text(words.value(each, each.now())));
      } else if (count == MOST_OF_A_KIND + 1) {
        long all = shown.stream().filter(other -> other.kind() == each.kind()).count();
        String more = context.text("changes.more", all - MOST_OF_A_KIND);
        list.row(cells.text(more), cells.text(""), cells.text(""));
      }
    }
  }

  /** Returns the differences but for those of logs, which the table of logs has with reasons. */
  private List<Difference> shown() {
    List<Difference> shown = new ArrayList<>(replan.differences());
    shown.removeIf(each -> each.kind() == DifferenceKind.LOG || each.kind() == DifferenceKind.CUT);
    shown.sort(java.util.Comparator.comparing(Difference::kind));
    return shown;
  }

  /** Returns a key in small letters. */
  static String key(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
