package roundbook.balance;

import java.util.Arrays;

/**
 * The cheapest ways to each of some states, with the logs on each, and of those that were dropped
 * the least cost, as a way of unknown logs.
 *
 * <p>Way {@code l} to state {@code s} stands at index {@code s × ENTRIES + l}, cheapest first; a
 * way is kept unless one that is no dearer leaves as many logs; what was dropped stands last.
 */
final class Ways {
  /** Ways that a state keeps. */
  static final int KEPT = 4;

  /** Entries of a state. */
  static final int ENTRIES = KEPT + 1;

  /** What a way costs that there is not. */
  static final double NEVER = Double.POSITIVE_INFINITY;

  final double[] cost;
  final long[] used;
  final int[] from;
  final int[] count;
  final double[] least;

  Ways(int states) {
    cost = new double[states * ENTRIES];
    used = new long[states * ENTRIES];
    from = new int[states * ENTRIES];
    count = new int[states];
    least = new double[states];
  }

  /** Returns the least cost of any state. */
  double least() {
    return Arrays.stream(least).min().orElse(NEVER);
  }

  /** Returns the state of the least cost. */
  int cheapest() {
    int found = 0;
    for (int state = 1; state < least.length; state++) {
      found = least[state] < least[found] ? state : found;
    }
    return found;
  }

  /** Returns the entry of the cheapest way to a state. */
  int entry(int state) {
    int base = state * ENTRIES;
    return count[state] > 0 && cost[base] <= cost[base + KEPT] ? base : base + KEPT;
  }

  /** Begins a state without a way to it. */
  void begin(int state) {
    count[state] = 0;
    least[state] = NEVER;
    cost[state * ENTRIES + KEPT] = NEVER;
    used[state * ENTRIES + KEPT] = 0;
  }

  /** Returns what the dearest way costs that is kept, infinite while there is room. */
  private double worst(int state) {
    return count[state] < KEPT ? NEVER : cost[state * ENTRIES + KEPT - 1];
  }

  /** Returns the cost from which on a way to a state changes nothing any more. */
  double limit(int state) {
    return Math.max(worst(state), dropped(state));
  }

  private double dropped(int state) {
    return cost[state * ENTRIES + KEPT];
  }

  /** Returns the number of the cheapest way that may be without some logs. */
  int first(int state, long without) {
    int base = state * ENTRIES;
    for (int l = 0; l < count[state]; l++) {
      if ((used[base + l] & without) == 0 && cost[base + l] <= cost[base + KEPT]) {
        return l;
      }
    }
    return KEPT;
  }

  /** Drops a way. */
  void drop(int state, double value, int origin) {
    int at = state * ENTRIES + KEPT;
    if (value < cost[at]) {
      cost[at] = value;
      from[at] = origin;
    }
  }

  /** Takes in a way unless one that is no dearer leaves as many logs. */
  void offer(int state, double value, long logs, int origin) {
    if (value >= worst(state)) {
      drop(state, value, origin);
      return;
    }
    int base = state * ENTRIES;
    int n = count[state];
    int to = 0;
    while (to < n && cost[base + to] <= value) {
      if ((used[base + to] & ~logs) == 0) {
        return;
      }
      to++;
    }
    int end = to;
    for (int i = to; i < n; i++) {
      if ((logs & ~used[base + i]) != 0) {
        move(base + i, base + end++);
      }
    }
    if (end == KEPT) {
      drop(state, cost[base + KEPT - 1], from[base + KEPT - 1]);
      end--;
    }
    for (int i = end; i > to; i--) {
      move(base + i - 1, base + i);
    }
    cost[base + to] = value;
    used[base + to] = logs;
    from[base + to] = origin;
    count[state] = end + 1;
  }

  private void move(int at, int to) {
    cost[to] = cost[at];
    used[to] = used[at];
    from[to] = from[at];
  }

  /** Ends a state, all of whose ways cost so much more. */
  void add(int state, double more) {
    int base = state * ENTRIES;
    for (int i = 0; i <= KEPT; i++) {
      cost[base + i] += more;
    }
    double first = count[state] == 0 ? NEVER : cost[base];
    least[state] = Math.min(first, cost[base + KEPT]);
  }

  /**
   * Extends the ways to a state of an earlier row to a state of this one; it pays where the least
   * of them stays under the limit of this state.
   *
   * @param state the state here
   * @param from the earlier row
   * @param before the state there
   * @param more what the step costs
   * @param own the log that is laid by it, as a bit
   * @param origin what to note for entry 0 of the state there; below zero to note what it notes
   */
  void extend(int state, Ways from, int before, double more, long own, int origin) {
    int base = before * ENTRIES;
    if (from.least[before] + more >= worst(state)) {
      int l = from.first(before, own);
      drop(state, from.cost[base + l] + more, from.noted(base, l, origin));
      return;
    }
    for (int l = 0; l < from.count[before]; l++) {
      if ((from.used[base + l] & own) == 0) {
        double value = from.cost[base + l] + more;
        offer(state, value, from.used[base + l] | own, from.noted(base, l, origin));
      }
    }
    drop(state, from.cost[base + KEPT] + more, from.noted(base, KEPT, origin));
  }

  private int noted(int base, int entry, int origin) {
    return origin < 0 ? from[base + entry] : origin + entry;
  }
}
