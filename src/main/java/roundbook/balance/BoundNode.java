package roundbook.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Part of all choices: those whose rounds have some sizes, and whose places some variants. */
final class BoundNode {
  /** Number of the least and the largest size of each course. */
  private final int[] low;

  private final int[] high;

  /** What stands in places, and what does not. */
  private final List<Place> places;

  /** Graphs that have all ways of this part, and others; and those of the part it is of. */
  private final List<BoundGraph> graphs;

  private final List<BoundGraph> wider;

  /** The prices that its bound was found at. */
  final BoundPrices prices;

  /** No choice of this part costs less, in units. */
  final double bound;

  /** Where it is to be parted next, if anywhere. */
  final Cut cut;

  /** A variant in a round of a graph, whichever side of the two, and whether it stands there. */
  record Place(int graph, int round, int variant, boolean stands) {}

  /** A place where a part is parted, or a course and the size that the lower part ends with. */
  record Cut(Place place, int course, int size) {}

  private BoundNode(
      int[] low,
      int[] high,
      List<Place> places,
      List<BoundGraph> graphs,
      List<BoundGraph> wider,
      BoundPrices prices,
      double bound,
      Cut cut) {
    this.low = low;
    this.high = high;
    this.places = places;
    this.graphs = graphs;
    this.wider = wider;
    this.prices = prices;
    this.bound = bound;
    this.cut = cut;
  }

  /** Returns all choices as one part. */
  static BoundNode all(
      BoundCosts costs, List<BoundGraph> graphs, BoundPrices prices, double bound) {
    int[] high =
        IntStream.range(0, costs.model.slots.courses())
            .map(course -> costs.sizes.count(course) - 1)
            .toArray();
    return new BoundNode(
        new int[high.length], high, List.of(), graphs, graphs, prices, bound, null);
  }

  /** Returns the same part with another bound, found at prices, to be parted somewhere. */
  BoundNode bounded(double found, List<BoundGraph> left, BoundPrices at, Cut next) {
    return new BoundNode(low, high, places, left, graphs, at, Math.max(bound, found), next);
  }

  /** Returns the two parts of this one. */
  List<BoundNode> parts() {
    if (cut.place != null) {
      Place place = cut.place;
      return List.of(
          with(place), with(new Place(place.graph, place.round, place.variant, !place.stands)));
    }
    int[] under = high.clone();
    int[] over = low.clone();
    under[cut.course] = cut.size;
    over[cut.course] = cut.size + 1;
    return List.of(
        new BoundNode(low, under, places, graphs, graphs, prices, bound, null),
        new BoundNode(over, high, places, graphs, graphs, prices, bound, null));
  }

  private BoundNode with(Place place) {
    List<Place> more = new ArrayList<>(places);
    more.add(place);
    return new BoundNode(low, high, more, graphs, graphs, prices, bound, null);
  }

  /** Returns the graphs of this part and of nothing else. */
  List<BoundGraph> own() {
    List<BoundGraph> own = new ArrayList<>();
    for (int g = 0; g < graphs.size(); g++) {
      BoundGraph graph = graphs.get(g);
      int number = g;
      own.add(graph.of((r, s) -> stands(graph, number, r, s)));
    }
    return own;
  }

  /** Returns the same part with the graphs of the part that it is of, which others hold too. */
  BoundNode released() {
    return new BoundNode(low, high, places, wider, wider, prices, bound, cut);
  }

  /** Returns how many steps it holds that no wider part does. */
  long steps() {
    return graphs == wider ? 0 : graphs.stream().mapToLong(BoundGraph::steps).sum();
  }

  private boolean stands(BoundGraph graph, int number, int r, int s) {
    int course = graph.one.course(graph.model, r);
    int k = graph.size[r][s];
    return k >= low[course]
        && k <= high[course]
        && places.stream().allMatch(place -> agrees(place, graph, number, r, s));
  }

  private static boolean agrees(Place place, BoundGraph graph, int number, int r, int s) {
    boolean here = place.graph == number && place.round == r;
    boolean has = graph.has(r, s, place.variant);
    if (place.stands) {
      return here ? has : !graph.holds(r, s, graph.model.variantLog[place.variant]);
    }
    return !here || !has;
  }
}
