package roundbook.balance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import java.util.stream.Stream;
import roundbook.balance.BoundWay.Pick;

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
  private double target;
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

  /**
   * Returns what no choice of a part costs less than, in units: the target at most.
   *
   * @param finder finds better choices on the way
   */
  double bound(BoundNode root, BoundFinder finder) {
    List<BoundNode> next = List.of(root);
    while (!next.isEmpty()) {
      Stream<BoundNode> all = search.anyThreads() ? next.parallelStream() : next.stream();
      for (Left part : all.map(this::left).flatMap(Optional::stream).toList()) {
        part.look.accept(finder);
        target = Math.min(target, finder.all());
        open(part.node);
      }
      next = next();
    }
    double least = open.isEmpty() ? target : open.peek().bound;
    return Math.min(target, Math.min(closed, least));
  }

  /**
   * A part that is left.
   *
   * @param look has a finder look for a better choice in it, which may lower the target
   */
  private record Left(BoundNode node, Consumer<BoundFinder> look) {}

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
      if (node.bound >= target) {
        open.clear();
      } else if (node.cut == null) {
        closed = Math.min(closed, node.bound);
      } else {
        next.addAll(node.parts());
      }
    }
    return next;
  }

  /** Bounds a part; returns it unless nothing in it is better than the target. */
  private Optional<Left> left(BoundNode node) {
    BoundAscent ascent = search.ascent(target, node.own(), node.prices);
    if (ascent.reaches(PACE)) {
      return Optional.empty();
    }
    if (search.stops()) {
      return Optional.of(new Left(node, finder -> {}));
    }
    BoundNode.Cut cut = ascent.tally().cut(ascent.graphs(), paired);
    if (!paired) {
      long most = cut == null ? BoundSearch.MANY_STEPS : BoundSearch.FEW_STEPS;
      Optional<List<BoundGraph>> pairs = search.paired(ascent, target, most);
      if (pairs.isPresent()) {
        BoundNode root = node.bounded(ascent.best(), pairs.get(), ascent.prices(), null);
        BoundTree inner = new BoundTree(search, target, true);
        BoundFinder own = search.finder().another();
        double found = inner.bound(root, own);
        BoundNode part = node.bounded(found, List.of(), node.prices, null);
        return Optional.of(new Left(part, finder -> finder.join(own)));
      }
    }
    List<Pick> picks = ascent.picks();
    long followed = ascent.followed();
    Consumer<BoundFinder> look =
        paired && cut == null
            ? finder -> finder.look(picks)
            : finder -> finder.pass(picks, followed);
    return Optional.of(bounded(node, ascent, cut))
        .filter(bounded -> bounded.bound < target)
        .map(bounded -> new Left(bounded, look));
  }

  private BoundNode bounded(BoundNode node, BoundAscent ascent, BoundNode.Cut cut) {
    double bound = ascent.best();
    if (cut == null && paired && BoundLeaf.isOne(ascent.graphs())) {
      bound = Math.max(bound, BoundLeaf.cost(search.costs(), ascent.graphs()));
    }
    return node.bounded(bound, ascent.graphs(), ascent.prices(), cut);
  }
}
