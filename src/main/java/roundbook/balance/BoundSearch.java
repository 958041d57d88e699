package roundbook.balance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The search for a bound: sides by themselves first, then like sides in twos, then part by part,
 * for one target after the other.
 *
 * <p>A target is a score: whether some choice is better than that. The nearer it is to what is told
 * already, the fewer steps need to be looked at, so the first is as high as graphs allow.
 *
 * @param costs what states and steps cost
 * @param sides all sides
 * @param needed whether each log lies somewhere in every choice
 * @param finder finds choices on the way
 * @param effort what may stop it, and whether it may use more than one thread
 */
record BoundSearch(
    BoundCosts costs, List<BoundSide> sides, boolean[] needed, BoundFinder finder, Effort effort) {
  /** By what share of the known score a choice may be better to be told as no better. */
  static final double NOTHING_LEFT = 2e-5;

  /** How prices are bettered of sides by themselves, and of pairs. */
  private static final BoundAscent.Pace SINGLE = new BoundAscent.Pace(1, 1e-3, 20, 0.3, 3_000);

  /** The same before choices are looked for, so that one is found where time runs out early. */
  private static final BoundAscent.Pace FIRST = new BoundAscent.Pace(1, 1e-3, 20, 0.3, 50);

  private static final BoundAscent.Pace PAIRED = new BoundAscent.Pace(0.5, 0.05, 15, 0.3, 3_000);

  /**
   * Steps that the graph of a pair should have at most, for sides by themselves are parted sooner
   * than pairs; and may have where nothing is left to part.
   */
  static final long FEW_STEPS = 150_000;

  static final long MANY_STEPS = 10_000_000;

  /** What of the way from a bound to a target is left to the next when graphs are too large. */
  private static final double NEARER = 0.8;

  /** How much of what is left the next target asks for. */
  private static final double NEXT = 0.42;

  /** What of the known score is not worth a target of its own. */
  private static final double LAST = 0.05;

  private static final int TRIES = 6;

  /** Returns whether it is to end. */
  boolean stops() {
    return effort.stop().getAsBoolean();
  }

  /** Returns whether it may use all the machine's processors. */
  boolean anyThreads() {
    return effort.anyThreads();
  }

  /** Returns a way of prices that begins. */
  BoundWay way() {
    return new BoundWay(costs, sides, needed);
  }

  /** Returns an ascent that begins. */
  BoundAscent ascent(double target, List<BoundGraph> graphs, BoundPrices prices) {
    return new BoundAscent(this, target, graphs, prices);
  }

  /** Returns graphs in which like sides are laid in twos, unless one had more steps than most. */
  Optional<List<BoundGraph>> paired(BoundAscent ascent, double target, long most) {
    double gap = target - ascent.best() + 1;
    List<BoundPaths> open = new ArrayList<>();
    for (BoundPaths paths : ascent.paths()) {
      paths.findBack();
      open.addAll(Collections.nCopies(paths.graph.times, paths));
    }
    List<BoundGraph> graphs = new ArrayList<>();
    while (!open.isEmpty()) {
      BoundPaths one = open.remove(0);
      int mate =
          IntStream.range(0, open.size())
              .filter(i -> one.graph.one.pairs(open.get(i).graph.one, costs.model))
              .findFirst()
              .orElse(-1);
      Optional<BoundGraph> graph =
          mate < 0
              ? Optional.of(one.graph.once())
              : BoundPairs.of(costs, one, open.remove(mate), gap, most);
      if (graph.isEmpty()) {
        return Optional.empty();
      }
      graphs.add(graph.get());
    }
    return Optional.of(graphs);
  }

  /** Returns a bound, in units: that of the best score, nearly, where nothing is better. */
  double bound(List<BoundGraph> graphs) {
    BoundAscent alone = ascent(finder.all(), graphs, BoundPrices.none(costs, sides));
    for (BoundAscent.Pace pace : List.of(FIRST, SINGLE)) {
      if (alone.reaches(pace)) {
        return finder.all();
      }
      finder.look(alone.picks());
    }
    double told = alone.best();
    double target = finder.all();
    Optional<List<BoundGraph>> pairs = paired(alone, target, FEW_STEPS);
    for (int i = 1; i < TRIES && pairs.isEmpty(); i++) {
      target = told + NEARER * (target - told);
      pairs = paired(alone, target, FEW_STEPS);
    }
    while (!stops()) {
      told = Math.max(told, bound(alone, pairs, target));
      double all = finder.all();
      if (told < target || target >= all) {
        return told;
      }
      target += NEXT * (all - target);
      target = all - target < LAST * BoundCosts.KNOWN ? all : target;
      pairs = paired(alone, target, FEW_STEPS);
    }
    return told;
  }

  /** Returns a bound, the target at most, with sides in twos from the beginning or later. */
  private double bound(BoundAscent alone, Optional<List<BoundGraph>> pairs, double target) {
    if (pairs.isEmpty()) {
      BoundNode root = BoundNode.all(costs, alone.graphs(), alone.prices(), alone.best());
      return new BoundTree(this, target, false).bound(root, finder);
    }
    BoundAscent ascent = ascent(target, pairs.get(), alone.prices());
    if (ascent.reaches(PAIRED)) {
      return target;
    }
    finder.look(ascent.picks());
    BoundNode root = BoundNode.all(costs, ascent.graphs(), ascent.prices(), ascent.best());
    return new BoundTree(this, target, true).bound(root, finder);
  }
}
