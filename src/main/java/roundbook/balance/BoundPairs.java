package roundbook.balance;

import java.util.Optional;

/**
 * Makes the graph of two sides of a building that are laid together, from those of each by itself.
 *
 * <p>What both cost together above the least is no less than what each does by itself, so a state
 * or a step over which that is too much is left out before it is made.
 */
final class BoundPairs {
  private final BoundCosts costs;
  private final BoundPaths one;
  private final BoundPaths other;
  private final double gap;
  private final boolean alike;
  private final Model model;
  private final BoundGraph.Parts parts;

  /**
   * @param one the cheapest ways of a side, found from both ends
   * @param other those of another, or the same again for two that are alike
   * @param gap by how much more than the cheapest ways both may cost together, in units
   */
  private BoundPairs(BoundCosts costs, BoundPaths one, BoundPaths other, double gap) {
    this.costs = costs;
    this.one = one;
    this.other = other;
    this.gap = gap;
    alike = one == other;
    model = costs.model;
    parts = BoundGraph.Parts.of(one.graph.rounds());
  }

  /**
   * Returns the graph of two sides.
   *
   * @param most how many steps it may have
   * @return the graph, if it has no more
   */
  static Optional<BoundGraph> of(
      BoundCosts costs, BoundPaths one, BoundPaths other, double gap, long most) {
    return new BoundPairs(costs, one, other, gap).made(most);
  }

  private Optional<BoundGraph> made(long most) {
    int rounds = one.graph.rounds();
    for (int r = 0; r < rounds; r++) {
      states(r);
    }
    BoundGraph.Steps steps = BoundGraph.Steps.of(rounds);
    long left = most;
    for (int r = 0; r + 1 < rounds; r++) {
      BoundPairSteps made = new BoundPairSteps(costs, one, other, gap, parts, r);
      left -= made.make(steps, left);
      if (left < 0) {
        return Optional.empty();
      }
    }
    BoundGraph.Sides sides = new BoundGraph.Sides(one.graph.one, other.graph.one, true, 1);
    return Optional.of(new BoundGraph(model, sides, parts, steps).of((r, s) -> true));
  }

  private void states(int r) {
    IntRow size = new IntRow();
    IntRow left = new IntRow();
    IntRow right = new IntRow();
    IntRow own = new IntRow();
    int course = one.graph.one.course(model, r);
    for (int i = 0; i < one.graph.size[r].length; i++) {
      int k = one.graph.size[r][i];
      int v = one.graph.left[r][i];
      for (int j = alike ? i + 1 : 0; j < other.graph.size[r].length; j++) {
        int w = other.graph.left[r][j];
        if (other.graph.size[r][j] == k && model.variantLog[v] != model.variantLog[w]) {
          int spread = costs.spread(course, v, w);
          if (one.excess(r, i) + other.excess(r, j) + spread <= gap
              && costs.sizes.isNear(course, costs.sizes.size(course, k), v, w)) {
            size.add(k);
            left.add(v);
            right.add(w);
            own.add(one.graph.own[r][i] + other.graph.own[r][j] + spread);
          }
        }
      }
    }
    parts.size()[r] = size.toArray();
    parts.left()[r] = left.toArray();
    parts.right()[r] = right.toArray();
    parts.own()[r] = own.toArray();
  }
}
