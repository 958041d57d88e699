package roundbook.balance;

import java.util.Arrays;
import java.util.List;

/** The way that prices go: where the sides disagree, or want a log more often than it is there. */
final class BoundWay {
  /** Share of the last direction that goes on. */
  private static final double GOES_ON = 0.6;

  private final BoundCosts costs;
  private final List<BoundSide> sides;
  private final boolean[] needed;
  private final BoundPrices way;
  private double square;

  /**
   * @param needed whether each log lies somewhere in every choice, so that its price may be below
   *     zero
   */
  BoundWay(BoundCosts costs, List<BoundSide> sides, boolean... needed) {
    this.costs = costs;
    this.sides = sides;
    this.needed = needed;
    way = BoundPrices.none(costs, sides);
  }

  /** One state on one side of a cheapest way, which stands for so many sides. */
  record Pick(BoundSide side, int round, int size, int variant, int count) {}

  /**
   * Changes prices the way that the cheapest ways show.
   *
   * @param rise what the bound is to rise by, in units
   */
  void follow(BoundPrices prices, List<Pick> picks, double rise) {
    square = 0;
    logs(prices, picks);
    sums(prices, picks);
    sizes(picks);
    mids(prices, picks);
    if (square > 0) {
      move(prices, rise / square);
    }
  }

  private double turned(double before, double slope) {
    return slope + GOES_ON * before;
  }

  private void logs(BoundPrices prices, List<Pick> picks) {
    double[] use = new double[needed.length];
    Arrays.fill(use, -1);
    picks.forEach(pick -> use[costs.model.variantLog[pick.variant]] += pick.count);
    for (int i = 0; i < use.length; i++) {
      boolean rests = !needed[i] && prices.log[i] == 0 && use[i] < 0;
      way.log[i] = turned(way.log[i], rests ? 0 : use[i]);
      square += way.log[i] * way.log[i];
    }
  }

  private void sums(BoundPrices prices, List<Pick> picks) {
    double[][] most = zeros(way.sum);
    double[][] least = zeros(way.sum);
    for (Pick pick : picks) {
      int c = pick.side.course(costs.model, pick.round);
      if (costs.sizes.isFree(c)) {
        most[c][pick.size] += pick.count * prices.over(c, pick.size, pick.variant, true);
        least[c][pick.size] += pick.count * prices.over(c, pick.size, pick.variant, false);
      }
    }
    for (int c = 0; c < most.length; c++) {
      for (int k = 0; k < most[c].length; k++) {
        double slope = prices.sum[c][k] < 0 ? least[c][k] : most[c][k];
        if (prices.sum[c][k] == 0) {
          slope = most[c][k] > 0 ? most[c][k] : Math.min(0, least[c][k]);
        }
        way.sum[c][k] = turned(way.sum[c][k], slope);
        square += way.sum[c][k] * way.sum[c][k];
      }
    }
  }

  private static double[][] zeros(double[]... like) {
    return Arrays.stream(like).map(at -> new double[at.length]).toArray(double[][]::new);
  }

  private void sizes(List<Pick> picks) {
    double[][] mean = zeros(way.sum);
    double[][][] taken = BoundPrices.none(costs, sides).size;
    for (Pick pick : picks) {
      int c = pick.side.course(costs.model, pick.round);
      taken[pick.side.number][pick.round][pick.size] += (double) pick.count / pick.side.count;
      mean[c][pick.size] += (double) pick.count / costs.model.slots.sides(c);
    }
    for (BoundSide side : sides) {
      for (int r = 0; r < side.rounds(); r++) {
        double[] at = way.size[side.number][r];
        for (int k = 0; k < at.length; k++) {
          double slope = taken[side.number][r][k] - mean[side.course(costs.model, r)][k];
          at[k] = turned(at[k], slope);
          square += side.count * at[k] * at[k];
        }
      }
    }
  }

  /** Prices middle diameters where sides lie apart by more than a round may spread. */
  private void mids(BoundPrices prices, List<Pick> picks) {
    double[] mean = new double[way.sum.length];
    double[][] own = zeros(way.mid);
    for (Pick pick : picks) {
      double mid = costs.mid(pick.variant) * pick.count;
      int c = pick.side.course(costs.model, pick.round);
      own[pick.side.number][pick.round] += mid / pick.side.count;
      mean[c] += mid / costs.model.slots.sides(c);
    }
    double[] paid = prices.paid();
    double[] off = new double[mean.length];
    for (BoundSide side : sides) {
      for (int r = 0; r < side.rounds(); r++) {
        int c = side.course(costs.model, r);
        double free = costs.savedMore(paid[c]) / 2;
        double apart = own[side.number][r] - mean[c];
        double price = prices.mid[side.number][r];
        double slope =
            price == 0
                ? Math.signum(apart) * Math.max(0, Math.abs(apart) - free)
                : apart - Math.signum(price) * free;
        own[side.number][r] = slope;
        off[c] += slope * side.count / costs.model.slots.sides(c);
      }
    }
    for (BoundSide side : sides) {
      double[] at = way.mid[side.number];
      for (int r = 0; r < side.rounds(); r++) {
        at[r] = turned(at[r], own[side.number][r] - off[side.course(costs.model, r)]);
        square += side.count * at[r] * at[r];
      }
    }
  }

  private void move(BoundPrices prices, double step) {
    for (int i = 0; i < needed.length; i++) {
      double next = prices.log[i] + step * way.log[i];
      prices.log[i] = needed[i] ? next : Math.max(0, next);
    }
    for (int c = 0; c < way.sum.length; c++) {
      for (int k = 0; k < way.sum[c].length; k++) {
        double next = prices.sum[c][k] + step * way.sum[c][k];
        prices.sum[c][k] = prices.sum[c][k] * next < 0 ? 0 : next;
      }
    }
    for (BoundSide side : sides) {
      for (int r = 0; r < side.rounds(); r++) {
        prices.mid[side.number][r] += step * way.mid[side.number][r];
        for (int k = 0; k < way.size[side.number][r].length; k++) {
          prices.size[side.number][r][k] += step * way.size[side.number][r][k];
        }
      }
    }
  }
}
