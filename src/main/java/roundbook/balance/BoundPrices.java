package roundbook.balance;

import java.util.Arrays;
import java.util.List;

/** The prices of a bound, in units of {@link BoundCosts}. */
final class BoundPrices {
  /** The price of each log. */
  final double[] log;

  /** The price of the sum of middle diameters that makes a size, by course and size. */
  final double[][] sum;

  /** The price of a size on a side, by side, round and size. */
  final double[][][] size;

  /**
   * The price of an inch of middle diameter, or whatever the unit is, by side and round: above zero
   * on sides that lie higher than the others of their round, below it on the others, so that those
   * of a round add up to nothing.
   */
  final double[][] mid;

  private final BoundCosts costs;
  private final List<BoundSide> sides;

  private BoundPrices(BoundCosts costs, List<BoundSide> sides) {
    this.costs = costs;
    this.sides = sides;
    Model model = costs.model;
    log = new double[model.logs];
    sum = new double[model.slots.courses()][];
    Arrays.setAll(sum, course -> new double[costs.sizes.count(course)]);
    size = new double[sides.size()][][];
    mid = new double[sides.size()][];
    for (BoundSide side : sides) {
      mid[side.number] = new double[side.rounds()];
      size[side.number] = new double[side.rounds()][];
      Arrays.setAll(size[side.number], r -> new double[costs.sizes.count(side.course(model, r))]);
    }
  }

  /** Makes prices that are zero. */
  static BoundPrices none(BoundCosts costs, List<BoundSide> sides) {
    return new BoundPrices(costs, sides);
  }

  /** Returns the same prices, to be changed. */
  BoundPrices copy() {
    BoundPrices copy = new BoundPrices(costs, sides);
    System.arraycopy(log, 0, copy.log, 0, log.length);
    copy(sum, copy.sum);
    copy(mid, copy.mid);
    for (int side = 0; side < size.length; side++) {
      copy(size[side], copy.size[side]);
    }
    return copy;
  }

  private static void copy(double[][] from, double[]... to) {
    for (int i = 0; i < to.length; i++) {
      System.arraycopy(from[i], 0, to[i], 0, to[i].length);
    }
  }

  private static int units(double price) {
    return (int) Math.rint(price);
  }

  /**
   * Returns what is given back of the prices in any choice: that of every log, and what the spread
   * of a round may save at most by what is paid for it.
   */
  long given() {
    double[] paid = paid();
    double spread = Arrays.stream(paid).map(costs::saved).sum();
    return Arrays.stream(log).mapToLong(BoundPrices::units).sum() + (long) Math.ceil(spread);
  }

  /** Returns what is paid for an inch of spread in each course. */
  double[] paid() {
    double[] paid = new double[sum.length];
    for (BoundSide side : sides) {
      for (int r = 0; r < side.rounds(); r++) {
        paid[side.course(costs.model, r)] += Math.abs(mid[side.number][r]) * side.count / 2;
      }
    }
    return paid;
  }

  /** Returns what each state of a round of a graph costs. */
  int[] priced(BoundGraph graph, int r) {
    int[] priced = graph.own[r].clone();
    for (int s = 0; s < priced.length; s++) {
      int k = graph.size[r][s];
      priced[s] += priced(graph.one, r, k, graph.left[r][s]);
      if (graph.two) {
        priced[s] += priced(graph.other, r, k, graph.right[r][s]);
      }
    }
    return priced;
  }

  private int priced(BoundSide side, int r, int k, int variant) {
    return units(log[costs.model.variantLog[variant]])
        + units(size[side.number][r][k])
        + (int) Math.floor(mid[side.number][r] * costs.mid(variant))
        + paid(side.course(costs.model, r), k, variant);
  }

  /** Returns what is paid for a middle diameter that is off its share of the sum of a size. */
  private int paid(int course, int k, int variant) {
    double price = sum[course][k];
    return price == 0 ? 0 : (int) Math.floor(price * over(course, k, variant, price > 0));
  }

  /**
   * Returns by how much a middle diameter is over its share of the sum of a size, in units of
   * length.
   *
   * @param most whether of the largest sum that makes the size, or of the least
   */
  double over(int course, int k, int variant, boolean most) {
    double limit = most ? costs.sizes.most(course, k) : costs.sizes.least(course, k);
    double mid = (double) costs.model.fineMids[variant] / costs.model.task.scale.unit();
    return mid - limit / costs.model.slots.sides(course);
  }
}
