package roundbook.balance;

import java.util.Arrays;
import java.util.List;
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
 */
public final class Bound {
  /** Steps that the graph of a side may have. */
  private static final long MOST_STEPS = 20_000_000;

  private Bound() {}

  /**
   * Returns a score that no choice for all places of a task is under, in unit²: zero where nothing
   * better was found, and at most the known score.
   *
   * @param task the task; the fourth power of errors is left out
   * @param known the score of a choice that is known
   * @param effort what may stop it, with the bound that was reached, and how many threads it may
   *     use
   */
  public static double of(BalanceTask task, double known, Effort effort) {
    Aims aims = task.aims();
    if (aims.sizeStep() == 0 || known <= 0 || task.places() == 0) {
      return 0;
    }
    Model model = new Model(task.withAims(aims.plain()));
    BoundCosts costs = new BoundCosts(model, new BoundSizes(model, known), known);
    List<BoundSide> sides = BoundSide.of(model);
    BoundGraphs maker = new BoundGraphs(costs, MOST_STEPS);
    List<BoundGraph> graphs = sides.stream().map(maker::of).toList();
    if (graphs.stream().anyMatch(graph -> graph.steps() > MOST_STEPS)) {
      return 0;
    }
    BoundSearch search = new BoundSearch(costs, sides, needed(model, graphs), effort);
    double found = search.bound(graphs) / BoundCosts.KNOWN;
    return known * Math.max(0, found > 1 - BoundSearch.NOTHING_LEFT ? 1 : found);
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
