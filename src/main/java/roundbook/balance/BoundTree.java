package roundbook.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.Stream;

/**
 * Parts all choices by the sizes of their rounds, and then by what stands in places, and bounds
 * each part by itself: what the parts cost at least is no less than what all of them do.
 */
final class BoundTree {
  /** How prices are bettered in one part. */
  private static final BoundAscent.Pace PACE = new BoundAscent.Pace(0.25, 0.05, 8, 0.15, 40);

  /** Steps of graphs that open parts hold. */
  private static final long MOST_HELD = 20_000_000;

  /** Parts that are parted at once, whatever the number of threads. */
  private static final int AT_ONCE = 2;

  private final BoundSearch search;
  private final double target;
  private final boolean paired;
  private final PriorityQueue<BoundNode> open =
      new PriorityQueue<>(Comparator.comparingDouble((BoundNode node) -> node.bound));
  private double closed = Double.POSITIVE_INFINITY;
  private long held;

  /**
   * @param target what a choice costs that needs not be looked at, in units
   * @param paired whether like sides are laid in twos
   */
  BoundTree(BoundSearch search, double target, boolean paired) {
    this.search = search;
    this.target = target;
    this.paired = paired;
  }

  /** Returns what no choice of a part costs less than, in units: the target at most. */
  double bound(BoundNode root) {
    List<BoundNode> next = List.of(root);
    while (!next.isEmpty()) {
      Stream<BoundNode> all = search.anyThreads() ? next.parallelStream() : next.stream();
      List<BoundNode> left = all.map(this::left).flatMap(Optional::stream).toList();
      left.forEach(this::open);
      next = next();
    }
    double least = open.isEmpty() ? target : open.peek().bound;
    return Math.min(target, Math.min(closed, least));
  }

  private void open(BoundNode node) {
    boolean room = held + node.steps() <= MOST_HELD;
    BoundNode kept = room ? node : node.released();
    held += kept.steps();
    open.add(kept);
  }

  /** Returns the parts of those open parts that bound all least, none once it is to end. */
  private List<BoundNode> next() {
    List<BoundNode> next = new ArrayList<>();
    while (next.size() < 2 * AT_ONCE && !open.isEmpty() && !search.stops()) {
      BoundNode node = open.poll();
      held -= node.steps();
      if (node.cut == null) {
        closed = Math.min(closed, node.bound);
      } else {
        next.addAll(node.parts());
      }
    }
    return next;
  }

  /** Bounds a part; returns it unless nothing in it is better than the target. */
  private Optional<BoundNode> left(BoundNode node) {
    BoundAscent ascent = search.ascent(target, node.own(), node.prices);
    if (ascent.reaches(PACE)) {
      return Optional.empty();
    }
    BoundNode.Cut cut = ascent.tally().cut(ascent.graphs(), paired);
    if (!paired && !search.stops()) {
      long most = cut == null ? BoundSearch.MANY_STEPS : BoundSearch.FEW_STEPS;
      Optional<List<BoundGraph>> pairs = search.paired(ascent, target, most);
      if (pairs.isPresent()) {
        BoundNode root = node.bounded(ascent.best(), pairs.get(), ascent.prices(), null);
        double found = new BoundTree(search, target, true).bound(root);
        return Optional.of(node.bounded(found, List.of(), node.prices, null))
            .filter(part -> found < target);
      }
    }
    return Optional.of(bounded(node, ascent, cut)).filter(bounded -> bounded.bound < target);
  }

  private BoundNode bounded(BoundNode node, BoundAscent ascent, BoundNode.Cut cut) {
    double bound = ascent.best();
    if (cut == null && paired && BoundLeaf.isOne(ascent.graphs())) {
      bound = Math.max(bound, BoundLeaf.cost(search.costs(), ascent.graphs()));
    }
    return node.bounded(bound, ascent.graphs(), ascent.prices(), cut);
  }
}
