package roundbook.report.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import roundbook.job.Wall;
import roundbook.page.Sheet;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.list.ListSheets;
import roundbook.report.live.LiveContext;
import roundbook.report.round.RoundSheets;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Which pages that a crew works by are no longer right after a new plan, so that it prints these
 * and no others.
 *
 * <p>The page of a round counts until the round is cut, and where a crew could see the difference:
 * another log, mark, length or word to lay out by, or a planned height that moved by an eighth of
 * an inch (3 mm), which is half of what corners may be off. The sheets of both plans are made and
 * held against each other for it, so that nothing can be forgotten. A wall's page counts when one
 * of its logs is another or lies the other way round, the notch chart when a mark changed, and tags
 * one by one; the openings when their sheet differs and a log or a height does. The hewing list is
 * mended by the changes on the first page, which goes with any other. Lists for the yard and the
 * office are printed when they are next needed, so no change of them is named.
 */
public final class ChangedPages {
  private final Plan was;
  private final Plan now;
  private final CrewContext context;
  private final CrewContext before;

  private ChangedPages(Plan was, CrewContext context) {
    this.was = was;
    this.now = context.plan();
    this.context = context;
    this.before = CrewContext.of(was, context.found(), context.issue()).saying(context.typed());
  }

  /**
   * Returns the names of the pages, in the order of their tabs.
   *
   * @param was the plan of the revision before, as it was printed
   * @param context the plan now, without what is said of its changes
   */
  public static List<String> of(Plan was, CrewContext context) {
    return new ChangedPages(was, context).names();
  }

  private List<String> names() {
    List<String> names = new ArrayList<>();
    if (uncut().anyMatch(this::marksDiffer)) {
      names.add(Tab.NOTCH_CHART.in(context.words()));
    }
    LiveContext old = LiveContext.of(before);
    LiveContext made = LiveContext.of(context);
    uncut()
        .filter(
            round ->
                round > was.rounds()
                    || heightsDiffer(round)
                    || !PrintedSheet.seen(RoundSheets.sheet(old, round))
                        .equals(PrintedSheet.seen(RoundSheets.sheet(made, round))))
        .forEach(round -> names.add(Tab.ofRound(context.words(), round)));
    List<Wall> other =
        now.job().building().walls().stream()
            .filter(wall -> !logs(was, wall).equals(logs(now, wall)))
            .toList();
    other.forEach(wall -> names.add(Tab.ofWall(context.words(), wall)));
    boolean moved = uncut().anyMatch(round -> round <= was.rounds() && heightsDiffer(round));
    if ((!other.isEmpty() || moved)
        && !seen(ListSheets.openings(before)).equals(seen(ListSheets.openings(context)))) {
      names.add(Tab.OPENINGS.in(context.words()));
    }
    tags().ifPresent(names::add);
    if (!names.isEmpty()) {
      names.add(0, Tab.START.in(context.words()));
    }
    return names;
  }

  /** Returns the rounds that are not cut yet. */
  private IntStream uncut() {
    return IntStream.rangeClosed(1, now.rounds()).filter(round -> !now.job().built().isCut(round));
  }

  private boolean marksDiffer(int round) {
    return round > was.rounds()
        || !was.stack()
            .courses()
            .get(round - 1)
            .notch()
            .equals(now.stack().courses().get(round - 1).notch());
  }

  private boolean heightsDiffer(int round) {
    Stack old = was.stack();
    Stack made = now.stack();
    return isSeen(old.firstLevelHeight(round), made.firstLevelHeight(round))
        || isSeen(old.levelHeight(round), made.levelHeight(round));
  }

  private boolean isSeen(Length one, Length other) {
    boolean metric = context.rules().metric();
    Length least = metric ? Length.ofMillimetres(3) : Length.ofInchFraction(1, 8);
    return !one.minus(other).absolute().isLessThan(least);
  }

  private static List<String> seen(List<Sheet> page) {
    return page.stream().map(PrintedSheet::seen).flatMap(List::stream).toList();
  }

  /** Returns the logs of a wall that are not cut yet, with their butts' corners. */
  private List<String> logs(Plan plan, Wall wall) {
    return uncut()
        .filter(round -> round <= plan.rounds())
        .mapToObj(round -> plan.round(round).stream())
        .flatMap(pieces -> pieces)
        .filter(piece -> piece.placed().wall().name().equals(wall.name()))
        .map(ChangedPages::lies)
        .toList();
  }

  private static String lies(PiecePlan piece) {
    return piece.placed().round() + " " + piece.placed().tags() + " " + piece.buttAt();
  }

  /**
   * Returns the tags of logs that are not cut that changed, each by the place that stands on it.
   */
  private Optional<String> tags() {
    Map<Integer, Map<String, List<String>>> old = ListSheets.tags(before);
    List<String> changed = new ArrayList<>();
    ListSheets.tags(context)
        .forEach(
            (round, tags) -> {
              Map<String, List<String>> then = old.getOrDefault(round, Map.of());
              if (!now.job().built().isCut(round)) {
                tags.keySet().stream()
                    .filter(place -> !tags.get(place).equals(then.get(place)))
                    .forEach(changed::add);
              }
            });
    String tab = Tab.TAGS.in(context.words());
    return Optional.of(tab + " " + String.join(" ", changed)).filter(name -> !changed.isEmpty());
  }
}
