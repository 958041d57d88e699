package roundbook.balance;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A score that no choice of a task can be under, by Lagrangian relaxation and by parting choices.
 *
 * <p>Each side of a building is laid by itself at the least cost, then like sides in twos, no log
 * twice within three rounds. Prices make the sides agree: one for every log that several sides
 * want; one for each size of a round, so that its sides are reckoned with the same; and one for the
 * sum of middle diameters that makes a size. Whatever the prices, what the sides cost together,
 * less what is paid for logs that there are, is no more than any choice of the task costs. What
 * that leaves open is closed by parting all choices by the sizes of their rounds ({@link
 * BoundTree}).
 *
 * <p>It holds for choices that keep every tip that is refused, with sizes that go by steps.
 *
 * @param score the score, in unit²: zero where nothing was found out, at most that of the best
 *     choice that is known
 * @param better the best choice that was come upon, where it is better than the one that was known
 */
public record Bound(double score, Optional<BalanceResult> better) {
  /** Steps that the graph of a side may have. */
  private static final long MOST_STEPS = 20_000_000;

  /** Cuts of all logs for one length of wall of which what any two cost is kept. */
  private static final int MOST_VARIANTS = 1_000;

  /** What of the known score a target is at least, where graphs for a higher one are too large. */
  private static final double LEAST = 0.1;

  private static final Bound NONE = new Bound(0, Optional.empty());

  /**
   * Reckons a score that no choice for all places of a task is under.
   *
   * @param task the task; the fourth power of errors is left out
   * @param known the score of a choice that is known
   * @param effort what may stop it, with the bound that was reached, and how many threads it may
   *     use
   */
  public static Bound of(BalanceTask task, double known, Effort effort) {
    Aims aims = task.aims();
    if (aims.sizeStep() == 0 || known <= 0 || task.places() == 0) {
      return NONE;
    }
    Model model = new Model(task.withAims(aims.plain()));
    if (model.mostVariants() > MOST_VARIANTS) {
      return NONE;
    }
    Bound found = under(model, known, effort);
    for (double low = known / 2; found == NONE && low > LEAST * known; low /= 2) {
      found = under(model, low, effort);
    }
    return found;
  }

  /** Reckons a score of a target at most; none where graphs would be too large for that. */
  private static Bound under(Model model, double target, Effort effort) {
    BoundCosts costs = new BoundCosts(model, new BoundSizes(model, target), target);
    List<BoundSide> sides = BoundSide.of(model);
    BoundGraphs maker = new BoundGraphs(costs, MOST_STEPS, effort.stop());
    List<BoundGraph> graphs =
        sides.stream()
            .map(maker::of)
            .takeWhile(Optional::isPresent)
            .flatMap(Optional::stream)
            .toList();
    if (graphs.size() < sides.size()) {
      return NONE;
    }
    BoundFinder finder = new BoundFinder(model, target, effort);
    double found =
        new BoundSearch(costs, sides, needed(model, graphs), finder, effort).bound(graphs);
    return finder.bound(found / BoundCosts.KNOWN * target);
  }

  /** Returns whether each log lies somewhere in every choice. */
  private static boolean[] needed(Model model, List<BoundGraph> graphs) {
    boolean[] needed = new boolean[model.logs];
    for (BoundGraph graph : graphs) {
      Arrays.stream(graph.left)
          .flatMapToInt(Arrays::stream)
          .forEach(v -> needed[model.variantLog[v]] = true);
    }
    if (IntStream.range(0, model.logs).filter(i -> needed[i]).count() > model.slots.count) {
      Arrays.fill(needed, false);
    }
    return needed;
  }
}
