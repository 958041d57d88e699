package roundbook.balance;

import java.util.Arrays;

/**
 * For each state of a round the cheapest steps from it, or to it, and where they lead: so many that
 * one of them mostly shares no log with what stands on the other side of the state.
 */
final class Shortlists {
  /** What a way costs that there is not; twice as much is a number still. */
  static final int NEVER = 1 << 29;

  /** Steps that are kept of each state. */
  private static final int KEPT = 8;

  private final int[] cost;
  private final int[] state;
  private final int[] count;

  Shortlists(int states) {
    cost = new int[KEPT * states];
    state = new int[KEPT * states];
    count = new int[states];
  }

  /** Forgets all steps. */
  void clear() {
    Arrays.fill(count, 0);
  }

  /** Returns what a step must cost less than to be kept. */
  int limit(int of) {
    return count[of] < KEPT ? NEVER : cost[KEPT * of + KEPT - 1];
  }

  /** Takes in a step that costs less than the limit. */
  void offer(int of, int value, int to) {
    int base = KEPT * of;
    int at = base + (count[of] < KEPT ? count[of]++ : KEPT - 1);
    while (at > base && cost[at - 1] > value) {
      cost[at] = cost[at - 1];
      state[at] = state[at - 1];
      at--;
    }
    cost[at] = value;
    state[at] = to;
  }

  /** Returns the least cost of a step. */
  int least(int of) {
    return count[of] == 0 ? NEVER : cost[KEPT * of];
  }

  /** Returns the state that the cheapest step leads to. */
  int nearest(int of) {
    return state[KEPT * of];
  }

  /**
   * Returns the number of the cheapest step that leads to a state without some logs, else of the
   * dearest that is kept, which costs no more than any without them, or -1 where there is none.
   *
   * @param graph the states
   * @param round the round of what the steps lead to
   * @param from the round of the state whose logs these are
   * @param with that state
   */
  int apart(int of, BoundGraph graph, int round, int from, int with) {
    int base = KEPT * of;
    int end = base + count[of];
    for (int i = base; i < end; i++) {
      if (!graph.meet(round, state[i], from, with)) {
        return i;
      }
    }
    return count[of] < KEPT ? -1 : end - 1;
  }

  /** Returns the cost of a step by its number. */
  int costAt(int number) {
    return number < 0 ? NEVER : cost[number];
  }

  /** Returns the state that a step leads to by its number. */
  int stateAt(int number) {
    return state[number];
  }
}
