package roundbook.picture.face;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import roundbook.picture.words.Wording;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * By how much the lower marks of logs that share a drawing differ from the chart's, end by end.
 *
 * @param butt what they are changed by at the butt, a wall each
 * @param tip what they are changed by at the tip
 */
public record LowerChanges(List<Change> butt, List<Change> tip) {
  /** No mark differs from the chart's. */
  public static final LowerChanges NONE = new LowerChanges(List.of(), List.of());

  /** Copies the lists. */
  public LowerChanges {
    butt = List.copyOf(butt);
    tip = List.copyOf(tip);
  }

  /**
   * What the mark of one log's end is changed by.
   *
   * @param wall the log's wall
   * @param by what is added to the chart's mark
   */
  public record Change(String wall, Length by) {}

  /** Returns what the marks of logs of one round are changed by, as corners are put right. */
  public static LowerChanges of(Stack stack, List<FilledPlace> logs) {
    List<Change> butts = new ArrayList<>();
    List<Change> tips = new ArrayList<>();
    for (FilledPlace log : logs) {
      String start = stack.building().startCorner(log.wall());
      String end = stack.building().endCorner(log.wall());
      butts.add(change(stack, log, log.buttAtStart() ? start : end));
      tips.add(change(stack, log, log.buttAtStart() ? end : start));
    }
    return new LowerChanges(butts, tips);
  }

  private static Change change(Stack stack, FilledPlace log, String corner) {
    boolean first = log.wall().laidFirst();
    return new Change(log.wall().name(), stack.corners().change(log.round(), first, corner));
  }

  /** Returns whether some end has more marks than one, so that each names its walls. */
  boolean differ() {
    return Stream.of(butt, tip)
        .anyMatch(end -> end.stream().map(Change::by).distinct().count() > 1);
  }

  /** Returns the marks at an end: one, or one for each group of walls with its names before it. */
  List<String> marks(boolean atButt, Length chart, Wording wording) {
    Map<Length, String> walls = new LinkedHashMap<>();
    for (Change change : atButt ? butt : tip) {
      walls.merge(change.by(), change.wall() + " ", String::concat);
    }
    if (walls.size() < 2) {
      Length by = walls.keySet().stream().findFirst().orElse(Length.ZERO);
      return List.of(wording.mark(chart.plus(by)));
    }
    return walls.entrySet().stream()
        .map(each -> each.getValue() + wording.mark(chart.plus(each.getKey())))
        .toList();
  }
}
