package roundbook.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Logs and places sorted into kinds, so that one small table says what may stand where.
 *
 * <p>Logs under the same restrictions share a kind, and so do places; kind 0 of either is without
 * any. Lengths are not looked at here, pins are not either.
 */
final class Kinds {
  /** The kind of each log. */
  final int[] ofLog;

  /** The kind of each slot. */
  final int[] ofSlot;

  /** Whether a kind of log, first index, may stand in a kind of slot. */
  final boolean[][] allowed;

  Kinds(BalanceTask task, Slots slots) {
    List<BitSet> keeps = new ArrayList<>();
    List<BitSet> onlys = new ArrayList<>();
    int[] keepOf = new int[task.logs()];
    int[] onlyOf = new int[slots.count];
    Arrays.fill(keepOf, -1);
    Arrays.fill(onlyOf, -1);
    task.kept().forEach((log, places) -> keepOf[log] = index(keeps, slots.setOf(places)));
    task.only().forEach((place, logs) -> onlyOf[slots.of(place)] = index(onlys, logs));
    Map<List<Object>, Integer> logKinds = new HashMap<>();
    Map<List<Object>, Integer> slotKinds = new HashMap<>();
    ofLog = kinds(logKinds, keepOf, onlys);
    ofSlot = kinds(slotKinds, onlyOf, keeps);
    allowed = new boolean[logKinds.size()][slotKinds.size()];
    logKinds.forEach((log, l) -> slotKinds.forEach((slot, s) -> allowed[l][s] = agree(log, slot)));
  }

  private static int index(List<BitSet> sets, BitSet set) {
    if (!sets.contains(set)) {
      sets.add(set);
    }
    return sets.indexOf(set);
  }

  private static int[] kinds(Map<List<Object>, Integer> known, int[] own, List<BitSet> others) {
    known.put(List.of(-1, new BitSet()), 0);
    int[] kinds = new int[own.length];
    for (int i = 0; i < own.length; i++) {
      List<Object> key = List.of(own[i], members(others, i));
      known.putIfAbsent(key, known.size());
      kinds[i] = known.get(key);
    }
    return kinds;
  }

  private static BitSet members(List<BitSet> sets, int element) {
    BitSet in = new BitSet();
    for (int i = 0; i < sets.size(); i++) {
      in.set(i, sets.get(i).get(element));
    }
    return in;
  }

  private static boolean agree(List<Object> log, List<Object> slot) {
    int keep = (Integer) log.get(0);
    int only = (Integer) slot.get(0);
    return (keep < 0 || ((BitSet) slot.get(1)).get(keep))
        && (only < 0 || ((BitSet) log.get(1)).get(only));
  }
}
