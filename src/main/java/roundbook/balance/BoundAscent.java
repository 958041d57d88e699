package roundbook.balance;

import java.util.ArrayList;
import java.util.List;
import roundbook.balance.BoundWay.Pick;

/**
 * Betters prices step by step, by the subgradient and Polyak's steps, and leaves out the steps of
 * graphs over which no choice is as good as is asked for.
 */
final class BoundAscent {
  /** Units by which rounded prices of all places may be off. */
  private static final int ROUNDING = 2;

  /** What of the gap must have closed for graphs to be pruned again. */
  private static final double CLOSED = 0.05;

  /** What a bound must rise by to count, in units. */
  private static final double RISE = BoundCosts.KNOWN / 2_000.0;

  private final BoundSearch search;
  private final BoundCosts costs;
  private final double target;
  private final BoundTally tally;
  private List<BoundGraph> graphs;
  private List<BoundPaths> paths = new ArrayList<>();
  private BoundPrices prices;
  private BoundPrices kept;
  private double best = Double.NEGATIVE_INFINITY;
  private double pruned = Double.NEGATIVE_INFINITY;
  private long followed;
  private final List<Pick> picks = new ArrayList<>();

  /**
   * How prices are bettered.
   *
   * @param step first share of what is hoped for that a step rises by, and the least
   * @param least the share under which it ends
   * @param patience turns without a rise after which the share is halved
   * @param hope what is hoped for, as a share of the known score
   * @param turns how many there are at most
   */
  record Pace(double step, double least, int patience, double hope, int turns) {}

  /**
   * @param target what a choice costs that needs not be looked at, in units
   * @param prices what to begin with
   */
  BoundAscent(BoundSearch search, double target, List<BoundGraph> graphs, BoundPrices prices) {
    this.search = search;
    costs = search.costs();
    this.target = target;
    this.graphs = graphs;
    this.prices = prices.copy();
    kept = prices;
    tally = new BoundTally(costs);
  }

  /** Returns the best bound, in units; infinite where there is no choice. */
  double best() {
    return best;
  }

  /** Returns the prices of the best bound. */
  BoundPrices prices() {
    return kept;
  }

  /** Returns what is left of the graphs. */
  List<BoundGraph> graphs() {
    return graphs;
  }

  /** Returns the cheapest ways at the prices of the best bound. */
  List<BoundPaths> paths() {
    prices = kept.copy();
    value();
    return paths;
  }

  /** Returns what lies on the cheapest ways at the last prices. */
  List<Pick> picks() {
    return picks;
  }

  /** Returns how many steps were followed. */
  long followed() {
    return followed;
  }

  /** Returns what the cheapest ways had in them. */
  BoundTally tally() {
    return tally;
  }

  /** Betters prices; returns whether no choice is left that costs less than the target. */
  boolean reaches(Pace pace) {
    double step = pace.step;
    int idle = 0;
    BoundWay way = search.way();
    for (int turn = 0; turn < pace.turns && step > pace.least && !search.stops(); turn++) {
      double value = value();
      idle = value > best + RISE ? 0 : idle + 1;
      if (value > best) {
        best = value;
        kept = prices.copy();
        if (best >= target) {
          return true;
        }
        pruneFrom(value);
      }
      tally.add(graphs, picks);
      if (idle >= pace.patience) {
        step /= 2;
        idle = 0;
        prices = kept.copy();
        value = value();
        way = search.way();
      }
      way.follow(prices, picks, step * (best + pace.hope * BoundCosts.KNOWN - value));
    }
    return false;
  }

  private void pruneFrom(double value) {
    if (value > pruned + CLOSED * (target - value)) {
      pruned = value;
      prune();
    }
  }

  /** Leaves out what no better choice has in it, at the prices of the last value. */
  private void prune() {
    double gap = target - pruned + 1;
    graphs = paths.stream().map(path -> path.pruned(gap)).toList();
    paths = new ArrayList<>();
  }

  /** Returns what all sides cost at least at these prices, less what is paid for the logs. */
  private double value() {
    if (paths.isEmpty()) {
      graphs.forEach(graph -> paths.add(new BoundPaths(graph)));
    }
    picks.clear();
    long value = -prices.given() - (long) ROUNDING * costs.model.slots.count;
    for (BoundPaths each : paths) {
      followed += each.graph.steps();
      int least = each.graph.isEmpty() ? Shortlists.NEVER : each.find(prices);
      if (least >= Shortlists.NEVER / 2) {
        return Double.POSITIVE_INFINITY;
      }
      value += (long) each.graph.times * least;
      pick(each.graph, each.cheapest());
    }
    return value;
  }

  private void pick(BoundGraph graph, int... path) {
    for (int r = 0; r < path.length; r++) {
      int k = graph.size[r][path[r]];
      picks.add(new Pick(graph.one, r, k, graph.left[r][path[r]], graph.times));
      if (graph.two) {
        picks.add(new Pick(graph.other, r, k, graph.right[r][path[r]], 1));
      }
    }
  }
}
