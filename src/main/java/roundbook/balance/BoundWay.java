package roundbook.balance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** The way that prices go: where the sides disagree, or want a log more often than it is there. */
final class BoundWay {
  /** Share of the last direction that goes on. */
  private static final double GOES_ON = 0.6;

  private final BoundPrices prices;
  private final double[] log;
  private final double[][] sum;
  private double square;

  BoundWay(BoundPrices prices) {
    this.prices = prices;
    log = new double[prices.log.length];
    sum = Arrays.stream(prices.sum).map(at -> new double[at.length]).toArray(double[][]::new);
  }

  /** Forgets the last direction. */
  void halt() {
    Arrays.fill(log, 0);
    Arrays.stream(sum).forEach(at -> Arrays.fill(at, 0));
  }

  /**
   * Changes prices the way that the cheapest sides show.
   *
   * @param rise what the bound is to rise by
   */
  void follow(double rise) {
    square = 0;
    logs();
    sums();
    sizes();
    if (square > 0) {
      move(rise / square);
    }
  }

  private double turned(double before, double slope) {
    double way = slope + GOES_ON * before;
    return way;
  }

  private void logs() {
    double[] use = new double[log.length];
    Arrays.fill(use, -1);
    for (BoundPrices.Laid laid : prices.laid()) {
      for (WallPaths.Stop stop : laid.path()) {
        use[laid.side().paths.logs[stop.variant()]] += laid.count();
      }
    }
    for (int i = 0; i < log.length; i++) {
      boolean rests = !prices.needed[i] && prices.log[i] == 0 && use[i] < 0;
      log[i] = turned(log[i], rests ? 0 : use[i]);
      square += log[i] * log[i];
    }
  }

  private void sums() {
    double[][] most = Arrays.stream(sum).map(at -> new double[at.length]).toArray(double[][]::new);
    double[][] least = Arrays.stream(most).map(double[]::clone).toArray(double[][]::new);
    for (BoundPrices.Laid laid : prices.laid()) {
      for (int r = 0; r < laid.path().length; r++) {
        int c = laid.side().first + r;
        int k = laid.path()[r].size();
        double share = (double) laid.count() / prices.sidesOf(c);
        double all = laid.count() * prices.mid(laid.side(), laid.path()[r].variant());
        if (prices.sizes.isFree(c)) {
          most[c][k] += all - share * prices.sizes.most(c, k);
          least[c][k] += all - share * prices.sizes.least(c, k);
        }
      }
    }
    for (int c = 0; c < sum.length; c++) {
      for (int k = 0; k < sum[c].length; k++) {
        double slope = prices.sum[c][k] < 0 ? least[c][k] : most[c][k];
        if (prices.sum[c][k] == 0) {
          slope = most[c][k] > 0 ? most[c][k] : Math.min(0, least[c][k]);
        }
        sum[c][k] = turned(sum[c][k], slope);
        square += sum[c][k] * sum[c][k];
      }
    }
  }

  private void sizes() {
    double[][] mean = Arrays.stream(sum).map(at -> new double[at.length]).toArray(double[][]::new);
    Map<BoundSide, double[][]> taken = new HashMap<>();
    for (BoundPrices.Laid laid : prices.laid()) {
      double[][] here = taken.computeIfAbsent(laid.side(), BoundSide::empty);
      for (int r = 0; r < laid.path().length; r++) {
        int c = laid.side().first + r;
        int k = laid.path()[r].size();
        here[r][k] += (double) laid.count() / laid.side().count;
        mean[c][k] += (double) laid.count() / prices.sidesOf(c);
      }
    }
    for (BoundSide side : prices.sides) {
      double[][] here = taken.get(side);
      for (int r = 0; r < here.length; r++) {
        for (int k = 0; k < here[r].length; k++) {
          side.way[r][k] = turned(side.way[r][k], here[r][k] - mean[side.first + r][k]);
          square += side.count * side.way[r][k] * side.way[r][k];
        }
      }
    }
  }

  private void move(double step) {
    for (int i = 0; i < log.length; i++) {
      double next = prices.log[i] + step * log[i];
      prices.log[i] = prices.needed[i] ? next : Math.max(0, next);
    }
    for (int c = 0; c < sum.length; c++) {
      for (int k = 0; k < sum[c].length; k++) {
        double next = prices.sum[c][k] + step * sum[c][k];
        prices.sum[c][k] = prices.sum[c][k] * next < 0 ? 0 : next;
      }
    }
    for (BoundSide side : prices.sides) {
      for (int r = 0; r < side.size.length; r++) {
        for (int k = 0; k < side.size[r].length; k++) {
          side.size[r][k] += step * side.way[r][k];
        }
      }
    }
  }
}
