package roundbook.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Whether there is a log for every place, by a bipartite matching of kinds of logs and places.
 *
 * <p>Places of one length class and kind are alike, and so are logs that fit the same of those, so
 * the matching is a flow in a small table. Pinned places are settled and take no part.
 */
final class Supply {
  final Model model;

  /** Sort of each slot, -1 when pinned. */
  final int[] slotSort;

  /** Sort of each log, -1 when pinned or left out. */
  final int[] logSort;

  /** Sorts of slots that a sort of logs fits. */
  final List<BitSet> fits = new ArrayList<>();

  /** Length class of each sort of slots. */
  final List<Integer> sortClass = new ArrayList<>();

  private final int[][] flow;
  private final int[] spare;

  Supply(Model model) {
    this.model = model;
    slotSort = new int[model.slots.count];
    logSort = new int[model.logs];
    List<Integer> samples = new ArrayList<>();
    Map<List<Integer>, Integer> slotSorts = new HashMap<>();
    for (int s = 0; s < slotSort.length; s++) {
      slotSort[s] = model.slotPin[s] >= 0 ? -1 : sortOf(s, slotSorts, samples);
    }
    Map<BitSet, Integer> logSorts = new HashMap<>();
    for (int log = 0; log < logSort.length; log++) {
      logSort[log] = model.logPin[log] != -1 ? -1 : sortOf(fitting(log, samples), logSorts);
    }
    flow = new int[fits.size()][samples.size()];
    spare = new int[fits.size()];
    Arrays.stream(logSort).filter(sort -> sort >= 0).forEach(sort -> spare[sort]++);
  }

  private int sortOf(int s, Map<List<Integer>, Integer> sorts, List<Integer> samples) {
    List<Integer> key = List.of(model.slotClass[s], model.kinds.ofSlot[s]);
    Integer known = sorts.putIfAbsent(key, sorts.size());
    if (known == null) {
      samples.add(s);
      sortClass.add(model.slotClass[s]);
    }
    return sorts.get(key);
  }

  private int sortOf(BitSet fitting, Map<BitSet, Integer> sorts) {
    if (sorts.putIfAbsent(fitting, sorts.size()) == null) {
      fits.add(fitting);
    }
    return sorts.get(fitting);
  }

  private BitSet fitting(int log, List<Integer> samples) {
    BitSet set = new BitSet();
    for (int i = 0; i < samples.size(); i++) {
      set.set(i, model.fits(log, samples.get(i)));
    }
    return set;
  }

  /** Returns the sorts of slots, those of the longest class first. */
  List<Integer> longestFirst() {
    Comparator<Integer> byLength =
        Comparator.comparingLong(sort -> -model.task.classLength(sortClass.get(sort)));
    return IntStream.range(0, sortClass.size()).boxed().sorted(byLength).toList();
  }

  /** Claims one log for a slot of a sort; false when there is none left. */
  boolean claim(int slotSort) {
    int[] parentLog = new int[sortClass.size()];
    Arrays.fill(parentLog, -1);
    int[] parentSlot = new int[sortClass.size()];
    int[] queue = new int[sortClass.size()];
    int head = 0;
    int tail = 0;
    queue[tail++] = slotSort;
    BitSet seen = new BitSet();
    seen.set(slotSort);
    while (head < tail) {
      int at = queue[head++];
      for (int l = 0; l < spare.length; l++) {
        if (!fits.get(l).get(at)) {
          continue;
        }
        if (spare[l] > 0) {
          spare[l]--;
          hand(l, at, parentLog, parentSlot);
          return true;
        }
        for (int next = 0; next < flow[l].length; next++) {
          if (flow[l][next] > 0 && !seen.get(next)) {
            seen.set(next);
            parentLog[next] = l;
            parentSlot[next] = at;
            queue[tail++] = next;
          }
        }
      }
    }
    return false;
  }

  private void hand(int log, int slot, int[] parentLog, int[] parentSlot) {
    flow[log][slot]++;
    int at = slot;
    while (parentLog[at] >= 0) {
      flow[parentLog[at]][at]--;
      flow[parentLog[at]][parentSlot[at]]++;
      at = parentSlot[at];
    }
  }

  /** Gives back the log of one slot of a sort. */
  void release(int slotSort) {
    for (int l = 0; l < spare.length; l++) {
      if (flow[l][slotSort] > 0) {
        flow[l][slotSort]--;
        spare[l]++;
        return;
      }
    }
    throw new IllegalStateException("nothing claimed for " + slotSort);
  }

  /**
   * Uses a log of one sort up for a claimed slot of another; false, with nothing changed, when the
   * other claims could then no longer be met.
   */
  boolean use(int logSort, int slotSort) {
    if (flow[logSort][slotSort] > 0) {
      flow[logSort][slotSort]--;
      return true;
    }
    release(slotSort);
    if (spare[logSort] > 0) {
      spare[logSort]--;
      return true;
    }
    for (int other = 0; other < sortClass.size(); other++) {
      if (flow[logSort][other] > 0) {
        flow[logSort][other]--;
        if (claim(other)) {
          return true;
        }
        flow[logSort][other]++;
      }
    }
    claim(slotSort);
    return false;
  }

  /** Returns how many slots of each length class find no log when the longest are served first. */
  int[] missing() {
    int[] wanted = new int[sortClass.size()];
    Arrays.stream(slotSort).filter(sort -> sort >= 0).forEach(sort -> wanted[sort]++);
    int[] missing = new int[model.classes];
    for (int sort : longestFirst()) {
      for (int i = 0; i < wanted[sort]; i++) {
        if (!claim(sort)) {
          missing[sortClass.get(sort)]++;
        }
      }
    }
    return missing;
  }

  /** Returns the greatest numbers of rounds that can be filled, the first building served first. */
  int[] rounds() {
    Slots slots = model.slots;
    int[] rounds = new int[model.task.buildings()];
    for (int b = 0; b < rounds.length; b++) {
      int course = slots.buildingCourse[b];
      while (course < slots.buildingCourse[b + 1] && claimCourse(course)) {
        course++;
        rounds[b]++;
      }
    }
    return rounds;
  }

  private boolean claimCourse(int course) {
    List<Integer> claimed = new ArrayList<>();
    for (int s = model.slots.courseSlot[course]; s < model.slots.courseSlot[course + 1]; s++) {
      if (slotSort[s] >= 0) {
        if (!claim(slotSort[s])) {
          claimed.forEach(this::release);
          return false;
        }
        claimed.add(slotSort[s]);
      }
    }
    return true;
  }
}
