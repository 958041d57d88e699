package roundbook.balance;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Makes the graph of a side that is laid by itself. */
final class BoundGraphs {
  private final BoundCosts costs;
  private final long most;
  private final BooleanSupplier stop;

  /**
   * @param most how many steps a graph may have
   * @param stop whether to end
   */
  BoundGraphs(BoundCosts costs, long most, BooleanSupplier stop) {
    this.costs = costs;
    this.most = most;
    this.stop = stop;
  }

  /** Returns the graph of a side, unless it would be too large or is to be stopped. */
  Optional<BoundGraph> of(BoundSide side) {
    int rounds = side.rounds();
    BoundGraph.Parts parts = BoundGraph.Parts.of(rounds);
    for (int r = 0; r < rounds; r++) {
      states(side, r, parts);
    }
    BoundGraph.Steps steps = BoundGraph.Steps.of(rounds);
    long count = 0;
    for (int r = 0; r + 1 < rounds; r++) {
      count += steps(side, r, parts, steps);
      if (count > most || stop.getAsBoolean()) {
        return Optional.empty();
      }
    }
    BoundGraph.Sides sides = new BoundGraph.Sides(side, side, false, side.count);
    return Optional.of(new BoundGraph(costs.model, sides, parts, steps).of((r, s) -> true));
  }

  private void states(BoundSide side, int r, BoundGraph.Parts parts) {
    int sizes = costs.sizes.count(side.course(costs.model, r));
    IntRow size = new IntRow();
    IntRow variant = new IntRow();
    for (int k = 0; k < sizes; k++) {
      for (int v : side.standing(costs.sizes, costs.model, r, k)) {
        size.add(k);
        variant.add(v);
      }
    }
    parts.size()[r] = size.toArray();
    parts.left()[r] = variant.toArray();
    parts.right()[r] = new int[0];
    parts.own()[r] = Arrays.stream(parts.left()[r]).map(costs::own).toArray();
  }

  private long steps(BoundSide side, int r, BoundGraph.Parts parts, BoundGraph.Steps steps) {
    int course = side.course(costs.model, r);
    int[] log = costs.model.variantLog;
    int from = costs.model.classFrom[costs.model.slotClass[side.slots[r]]];
    int[] below = parts.left()[r];
    int[] above = parts.left()[r + 1];
    IntRow to = new IntRow();
    IntRow cost = new IntRow();
    int[] first = new int[below.length + 1];
    int sizes = costs.sizes.count(course + 1);
    for (int s = 0; s < below.length && to.size() <= most; s++) {
      int k = parts.size()[r][s];
      int[][] joints = new int[sizes][];
      int[] rise = new int[sizes];
      for (int next = 0; next < sizes; next++) {
        joints[next] = costs.joints(side.slots[r], k, next)[below[s] - from];
        rise[next] = costs.rise(course, k, next, 1);
      }
      for (int t = 0; t < above.length; t++) {
        int next = parts.size()[r + 1][t];
        int more = joints[next][above[t] - from] + rise[next];
        if (more <= BoundCosts.KNOWN && log[below[s]] != log[above[t]]) {
          to.add(t);
          cost.add(more);
        }
      }
      first[s + 1] = to.size();
    }
    steps.first()[r] = first;
    steps.to()[r] = to.toArray();
    steps.cost()[r] = cost.toArray();
    return to.size();
  }
}
