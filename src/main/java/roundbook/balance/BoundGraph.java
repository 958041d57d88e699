package roundbook.balance;

import java.util.Arrays;

/**
 * The ways to lay one side of a building, or two of them together: a state is a round, a size of it
 * and the variant on each side; steps lead to states of the next round. Immutable.
 */
final class BoundGraph {
  /** Says whether a state may stand. */
  interface StateTest {
    /** Returns whether a state of a round may stand. */
    boolean stands(int round, int state);
  }

  /** Says how bad a step is. */
  interface StepCost {
    /** Returns by how much more than the cheapest way one costs that goes over a step. */
    long excess(int round, int state, int step);
  }

  private static final long GONE = Long.MAX_VALUE;

  final Model model;

  /** The side that is laid, and the one that is laid with it; the same for two that are alike. */
  final BoundSide one;

  final BoundSide other;

  /** Whether two sides are laid together. */
  final boolean two;

  /** How often the cheapest way counts, for as many like sides that are laid by themselves. */
  final int times;

  /** Size of each state by its number, in each round. */
  final int[][] size;

  /** Variant of each state on the one side and on the other; the latter empty for a lone side. */
  final int[][] left;

  final int[][] right;

  /** What each state costs. */
  final int[][] own;

  /** First step from each state; one more than there are states. */
  final int[][] first;

  /** The state of the next round that a step leads to, and what it costs. */
  final int[][] to;

  final int[][] cost;
  private final long[][] logs;

  /** Parts of a graph, in the order of its fields. */
  record Parts(int[][] size, int[][] left, int[][] right, int[][] own) {
    /** Makes empty parts for so many rounds. */
    static Parts of(int rounds) {
      return new Parts(new int[rounds][], new int[rounds][], new int[rounds][], new int[rounds][]);
    }
  }

  /** Steps of a graph, in the order of its fields. */
  record Steps(int[][] first, int[][] to, int[][] cost) {
    /** Makes steps between so many rounds, all empty. */
    static Steps of(int rounds) {
      return new Steps(new int[rounds - 1][], new int[rounds - 1][], new int[rounds - 1][]);
    }
  }

  /** Which sides a graph is of. */
  record Sides(BoundSide one, BoundSide other, boolean two, int times) {}

  BoundGraph(Model model, Sides sides, Parts parts, Steps steps) {
    this.model = model;
    one = sides.one;
    other = sides.other;
    two = sides.two;
    times = sides.times;
    size = parts.size;
    left = parts.left;
    right = parts.right;
    own = parts.own;
    first = steps.first;
    to = steps.to;
    cost = steps.cost;
    logs = new long[size.length][];
    for (int r = 0; r < logs.length; r++) {
      logs[r] = new long[size[r].length];
      for (int s = 0; s < logs[r].length; s++) {
        logs[r][s] = bit(left[r][s]) | (two ? bit(right[r][s]) : 0);
      }
    }
  }

  private long bit(int variant) {
    return 1L << model.variantLog[variant];
  }

  int rounds() {
    return size.length;
  }

  /** Returns the same for a side that stands for itself alone. */
  BoundGraph once() {
    return new BoundGraph(
        model,
        new Sides(one, other, two, 1),
        new Parts(size, left, right, own),
        new Steps(first, to, cost));
  }

  /** Returns how many sides lie on a way. */
  int width() {
    return two ? 2 : 1;
  }

  /** Returns whether no way is left. */
  boolean isEmpty() {
    return size[0].length == 0;
  }

  /** Returns how many steps there are. */
  long steps() {
    return Arrays.stream(to).mapToLong(steps -> steps.length).sum();
  }

  /** Returns whether some log stands in both of two states. */
  boolean meet(int r, int s, int q, int t) {
    return (logs[r][s] & logs[q][t]) != 0 && (model.logs <= Long.SIZE || meetSure(r, s, q, t));
  }

  private boolean meetSure(int r, int s, int q, int t) {
    return holds(q, t, log(left[r][s])) || two && holds(q, t, log(right[r][s]));
  }

  private int log(int variant) {
    return model.variantLog[variant];
  }

  /** Returns whether a log stands in a state. */
  boolean holds(int r, int s, int log) {
    return log(left[r][s]) == log || two && log(right[r][s]) == log;
  }

  /** Returns whether a variant stands in a state. */
  boolean has(int r, int s, int variant) {
    return left[r][s] == variant || two && right[r][s] == variant;
  }

  /** Returns the graph of some of its states. */
  BoundGraph of(StateTest test) {
    boolean[][] stands = new boolean[rounds()][];
    for (int r = 0; r < stands.length; r++) {
      stands[r] = new boolean[size[r].length];
      for (int s = 0; s < stands[r].length; s++) {
        stands[r][s] = test.stands(r, s);
      }
    }
    return of(stands, (r, s, step) -> stands[r + 1][to[r][step]] ? 0 : 1, 0);
  }

  /**
   * Returns the graph of some of its steps, from each state the better ones first.
   *
   * @param gap how bad a step may be
   */
  BoundGraph ofSteps(StepCost cost, double gap) {
    boolean[][] stands = new boolean[rounds()][];
    for (int r = 0; r < stands.length; r++) {
      stands[r] = new boolean[size[r].length];
      Arrays.fill(stands[r], true);
    }
    return of(stands, cost, gap);
  }

  /** Keeps steps, and the states that lie on a way from the lowest round to the top. */
  private BoundGraph of(boolean[][] stands, StepCost test, double gap) {
    int top = rounds() - 1;
    long[][] goes = new long[top][];
    boolean[][] reached = new boolean[top + 1][];
    reached[0] = stands[0];
    for (int r = 0; r < top; r++) {
      goes[r] = new long[to[r].length];
      Arrays.fill(goes[r], GONE);
      reached[r + 1] = new boolean[size[r + 1].length];
      for (int s = 0; s < reached[r].length; s++) {
        for (int step = first[r][s]; reached[r][s] && step < first[r][s + 1]; step++) {
          long excess = Math.max(0, test.excess(r, s, step));
          if (excess <= gap) {
            goes[r][step] = excess << Integer.SIZE | step - first[r][s];
            reached[r + 1][to[r][step]] = true;
          }
        }
      }
    }
    for (int r = top - 1; r >= 0; r--) {
      for (int s = 0; s < reached[r].length; s++) {
        boolean on = false;
        for (int step = first[r][s]; step < first[r][s + 1]; step++) {
          goes[r][step] = reached[r + 1][to[r][step]] ? goes[r][step] : GONE;
          on |= goes[r][step] != GONE;
        }
        reached[r][s] &= on;
      }
    }
    return cut(reached, goes);
  }

  private BoundGraph cut(boolean[][] states, long[]... steps) {
    int rounds = rounds();
    Parts parts = Parts.of(rounds);
    int[][] moved = new int[rounds][];
    for (int r = 0; r < rounds; r++) {
      moved[r] = numbered(states[r]);
      parts.size[r] = picked(size[r], states[r]);
      parts.left[r] = picked(left[r], states[r]);
      parts.right[r] = two ? picked(right[r], states[r]) : right[r];
      parts.own[r] = picked(own[r], states[r]);
    }
    Steps made = Steps.of(rounds);
    for (int r = 0; r + 1 < rounds; r++) {
      cut(made, r, states[r], moved[r + 1], steps[r]);
    }
    return new BoundGraph(model, new Sides(one, other, two, times), parts, made);
  }

  private void cut(Steps made, int r, boolean[] states, int[] moved, long... steps) {
    int[] begin = new int[states.length + 1];
    int[] nextTo = new int[steps.length];
    int[] nextCost = new int[steps.length];
    int from = 0;
    int count = 0;
    for (int s = 0; s < states.length; s++) {
      if (states[s]) {
        Arrays.sort(steps, first[r][s], first[r][s + 1]);
        for (int i = first[r][s]; i < first[r][s + 1] && steps[i] != GONE; i++) {
          int step = first[r][s] + (int) steps[i];
          nextTo[count] = moved[to[r][step]];
          nextCost[count++] = cost[r][step];
        }
        begin[++from] = count;
      }
    }
    made.first[r] = Arrays.copyOf(begin, from + 1);
    made.to[r] = Arrays.copyOf(nextTo, count);
    made.cost[r] = Arrays.copyOf(nextCost, count);
  }

  private static int[] numbered(boolean... kept) {
    int[] numbers = new int[kept.length];
    int next = 0;
    for (int i = 0; i < kept.length; i++) {
      numbers[i] = kept[i] ? next++ : -1;
    }
    return numbers;
  }

  private static int[] picked(int[] from, boolean... kept) {
    int[] picked = new int[from.length];
    int count = 0;
    for (int i = 0; i < from.length; i++) {
      if (kept[i]) {
        picked[count++] = from[i];
      }
    }
    return Arrays.copyOf(picked, count);
  }
}
