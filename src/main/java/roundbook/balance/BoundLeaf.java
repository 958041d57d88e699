package roundbook.balance;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Tells what the one choice costs that is left of a part. */
final class BoundLeaf {
  private BoundLeaf() {}

  /** Returns whether graphs have one state in every round. */
  static boolean isOne(List<BoundGraph> graphs) {
    return graphs.stream()
        .allMatch(graph -> Arrays.stream(graph.size).allMatch(states -> states.length == 1));
  }

  /**
   * Returns what it costs, in units rounded down; infinite where it is none: where a log lies
   * twice, sides of a round have other sizes, or its middle diameters make another.
   *
   * @param graphs graphs of one way each
   */
  static double cost(BoundCosts costs, List<BoundGraph> graphs) {
    Model model = costs.model;
    int courses = model.slots.courses();
    long[] sum = new long[courses];
    int[] least = new int[courses];
    int[] most = new int[courses];
    int[] size = new int[courses];
    Arrays.fill(size, -1);
    Arrays.fill(least, Integer.MAX_VALUE);
    BitSet used = new BitSet();
    long cost = 0;
    boolean none = false;
    for (BoundGraph graph : graphs) {
      for (int r = 0; r < graph.rounds(); r++) {
        int c = graph.one.course(model, r);
        none |= size[c] >= 0 && size[c] != graph.size[r][0];
        size[c] = graph.size[r][0];
        cost += graph.own[r][0] + (r + 1 < graph.rounds() ? graph.cost[r][0] : 0);
        cost -= graph.two ? costs.spread(c, graph.left[r][0], graph.right[r][0]) : 0;
        int[] both = {graph.left[r][0], graph.two ? graph.right[r][0] : -1};
        for (int i = 0; i < graph.width(); i++) {
          none |= used.get(model.variantLog[both[i]]);
          used.set(model.variantLog[both[i]]);
          sum[c] += model.fineMids[both[i]];
          least[c] = Math.min(least[c], model.mids[both[i]]);
          most[c] = Math.max(most[c], model.mids[both[i]]);
        }
      }
    }
    for (int c = 0; c < courses; c++) {
      cost += costs.spread((long) most[c] - least[c]);
      none |= !costs.sizes.makes(c, size[c], sum[c]);
    }
    return none ? Double.POSITIVE_INFINITY : cost - graphs.size() - courses;
  }
}
