package roundbook.balance;

/**
 * The cheapest ways through a graph at prices, on which no log lies twice within three rounds.
 *
 * <p>Each state keeps the cheapest steps from it; a state below takes the first of them that leads
 * to none of its own logs. So what is found costs no more than any way that keeps the rule.
 */
final class BoundPaths {
  final BoundGraph graph;
  private final int[][] priced;
  private final Shortlists[] on;
  private final int[][] rest;
  private Shortlists[] back;
  private int least;
  private int lowest;

  BoundPaths(BoundGraph graph) {
    this.graph = graph;
    priced = new int[graph.rounds()][];
    rest = new int[graph.rounds()][];
    on = new Shortlists[graph.rounds() - 1];
    for (int r = 0; r < on.length; r++) {
      on[r] = new Shortlists(graph.size[r].length);
    }
  }

  /** Finds the cheapest way at prices; returns what it costs, {@link Shortlists#NEVER} if none. */
  int find(BoundPrices prices) {
    int top = graph.rounds() - 1;
    for (int r = top; r >= 0; r--) {
      priced[r] = prices.priced(graph, r);
      rest[r] = priced[r].clone();
      if (r < top) {
        step(r);
      }
    }
    least = Shortlists.NEVER;
    for (int s = 0; s < rest[0].length; s++) {
      if (rest[0][s] < least) {
        least = rest[0][s];
        lowest = s;
      }
    }
    return least;
  }

  private void step(int r) {
    Shortlists lists = on[r];
    lists.clear();
    boolean top = r + 2 == graph.rounds();
    int[] to = graph.to[r];
    int[] cost = graph.cost[r];
    int[] above = rest[r + 1];
    for (int s = 0; s < rest[r].length; s++) {
      int limit = Shortlists.NEVER;
      for (int step = graph.first[r][s]; step < graph.first[r][s + 1]; step++) {
        int t = to[step];
        int value = cost[step] + above[t];
        if (value < limit) {
          value = top ? value : cost[step] + priced[r + 1][t] + beyond(r, s, t);
          if (value < limit) {
            lists.offer(s, value, t);
            limit = lists.limit(s);
          }
        }
      }
      int more = lists.least(s);
      rest[r][s] = more >= Shortlists.NEVER ? Shortlists.NEVER : rest[r][s] + more;
    }
  }

  /** Returns what a way costs beyond a state of the next round, from a state of a round. */
  private int beyond(int r, int s, int t) {
    Shortlists next = on[r + 1];
    return next.costAt(next.apart(t, graph, r + 2, r, s));
  }

  /** Returns the states of the cheapest way, from the lowest round. */
  int[] cheapest() {
    int[] path = new int[graph.rounds()];
    path[0] = lowest;
    for (int r = 1; r < path.length; r++) {
      path[r] =
          r == 1
              ? on[0].nearest(lowest)
              : on[r - 1].stateAt(on[r - 1].apart(path[r - 1], graph, r, r - 2, path[r - 2]));
    }
    return path;
  }

  /** Finds the ways from below too, so that every step can be told what a way over it costs. */
  void findBack() {
    back = new Shortlists[graph.rounds()];
    for (int r = 1; r < graph.rounds(); r++) {
      back[r] = new Shortlists(graph.size[r].length);
      for (int s = 0; s < graph.size[r - 1].length; s++) {
        int optimistic = r == 1 ? 0 : back[r - 1].least(s);
        for (int step = graph.first[r - 1][s]; step < graph.first[r - 1][s + 1]; step++) {
          int t = graph.to[r - 1][step];
          int value = graph.cost[r - 1][step] + priced[r - 1][s];
          int limit = back[r].limit(t);
          if (value + optimistic < limit) {
            value += r == 1 ? 0 : before(r - 1, s, t);
            if (value < limit) {
              back[r].offer(t, value, s);
            }
          }
        }
      }
    }
  }

  private int before(int r, int s, int t) {
    return back[r].costAt(back[r].apart(s, graph, r - 1, r + 1, t));
  }

  /** Returns by how much more than the cheapest way one costs that goes over a step. */
  long excess(int r, int s, int step) {
    int t = graph.to[r][step];
    long value = (long) graph.cost[r][step] + priced[r][s] + priced[r + 1][t] - least;
    value += r == 0 ? 0 : before(r, s, t);
    return r + 2 == graph.rounds() ? value : value + beyond(r, s, t);
  }

  /** Returns by how much more than the cheapest way one costs that goes over a state. */
  long excess(int r, int s) {
    long below = r == 0 ? 0 : back[r].least(s);
    return below + rest[r][s] - least;
  }

  /**
   * Returns the graph without the steps over which a way costs too much.
   *
   * @param gap by how much more than the cheapest a way may cost
   */
  BoundGraph pruned(double gap) {
    if (graph.rounds() == 1) {
      return graph.of((r, s) -> rest[0][s] - least <= gap);
    }
    findBack();
    return graph.ofSteps(this::excess, gap);
  }
}
