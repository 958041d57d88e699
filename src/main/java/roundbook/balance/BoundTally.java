package roundbook.balance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How often sizes and variants stood on the cheapest ways of late, which tells where a part of all
 * choices is best parted.
 */
final class BoundTally {
  /** Share of the earlier counts that stays, a turn. */
  private static final double STAYS = 0.9;

  private final BoundCosts costs;
  private final double[][] sizes;
  private final Map<BoundNode.Place, Double> places = new HashMap<>();
  private double each = 1;
  private double weight;

  BoundTally(BoundCosts costs) {
    this.costs = costs;
    sizes = new double[costs.model.slots.courses()][];
    Arrays.setAll(sizes, course -> new double[costs.sizes.count(course)]);
  }

  /** Counts the cheapest ways of a turn. */
  void add(List<BoundGraph> graphs, List<BoundWay.Pick> picks) {
    each /= STAYS;
    weight += each;
    int at = 0;
    for (int g = 0; g < graphs.size(); g++) {
      BoundGraph graph = graphs.get(g);
      for (int i = 0; i < graph.rounds() * graph.width(); i++) {
        BoundWay.Pick pick = picks.get(at++);
        sizes[pick.side().course(costs.model, pick.round())][pick.size()] += each;
        places.merge(new BoundNode.Place(g, pick.round(), pick.variant(), true), each, Double::sum);
      }
    }
  }

  /**
   * Returns the course whose sizes differ most among the cheapest ways, cut at their mean; or where
   * no course has two sizes left the variant in a place that stands there in nearest to half of
   * them; or null where nothing is left to part.
   *
   * @param graphs the graphs of the part
   */
  BoundNode.Cut cut(List<BoundGraph> graphs, boolean places) {
    BoundNode.Cut cut = sizeCut(graphs);
    return cut != null || !places ? cut : placeCut(graphs);
  }

  private BoundNode.Cut sizeCut(List<BoundGraph> graphs) {
    BoundNode.Cut cut = null;
    double widest = -1;
    for (BoundGraph graph : graphs) {
      for (int r = 0; r < graph.rounds(); r++) {
        int low = Arrays.stream(graph.size[r]).min().orElseThrow();
        int high = Arrays.stream(graph.size[r]).max().orElseThrow();
        int course = graph.one.course(costs.model, r);
        double[] moments = moments(sizes[course]);
        if (low < high && moments[1] > widest) {
          widest = moments[1];
          int at = (int) Math.max(low, Math.min(high - 1, Math.floor(moments[0])));
          cut = new BoundNode.Cut(null, course, at);
        }
      }
    }
    return cut;
  }

  /** Returns the mean and the variance of numbers that were counted so often each. */
  private static double[] moments(double... counts) {
    double all = 0;
    double sum = 0;
    double squares = 0;
    for (int k = 0; k < counts.length; k++) {
      all += counts[k];
      sum += k * counts[k];
      squares += k * k * counts[k];
    }
    double mean = sum / all;
    return new double[] {mean, squares / all - mean * mean};
  }

  private BoundNode.Cut placeCut(List<BoundGraph> graphs) {
    BoundNode.Cut cut = null;
    double nearest = Double.POSITIVE_INFINITY;
    for (Map.Entry<BoundNode.Place, Double> each : places.entrySet()) {
      BoundNode.Place place = each.getKey();
      BoundGraph graph = graphs.get(place.graph());
      double off = Math.abs(each.getValue() / weight - 0.5);
      if (off < nearest && isOpen(graph, place)) {
        nearest = off;
        cut = new BoundNode.Cut(place, 0, 0);
      }
    }
    return cut;
  }

  /** Returns whether some state of a round has a variant in it and some has not. */
  private static boolean isOpen(BoundGraph graph, BoundNode.Place place) {
    int r = place.round();
    int with = 0;
    for (int s = 0; s < graph.size[r].length; s++) {
      with += graph.has(r, s, place.variant()) ? 1 : 0;
    }
    return with > 0 && with < graph.size[r].length;
  }
}
