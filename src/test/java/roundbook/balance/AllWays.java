package roundbook.balance;

/**
 * Tries every way to build two rounds of four logs, with a score of its own.
 *
 * <p>It sums the definition in binary inches: squares of the gaps' errors at both ends and the
 * middle, 20 times the squares of what gaps lack of half an inch and of what middles spread over an
 * inch, 10 times the square of what the upper round is larger, and the waste.
 */
final class AllWays {
  private static final double INCH = 16_000;
  private static final double GAP = 1;

  private final double[][] logs;
  private final double[] waste;
  private final boolean exact;
  private final int[] chosen = new int[8];
  private double best = Double.MAX_VALUE;

  AllWays(BalanceTask task, boolean exact) {
    this.exact = exact;
    logs = new double[task.logs()][];
    waste = new double[task.logs()];
    for (int log = 0; log < logs.length; log++) {
      Cut cut = task.cuts(log, 0).get(0);
      logs[log] = new double[] {cut.butt() / INCH, cut.mid() / INCH, cut.tip() / INCH};
      waste[log] = cut.cost();
    }
  }

  /** Returns the least score. */
  double best() {
    place(0, 0);
    return best;
  }

  private void place(int next, int taken) {
    if (next == chosen.length) {
      best = Math.min(best, score());
      return;
    }
    for (int log = 0; log < logs.length; log++) {
      if ((taken & 1 << log) == 0) {
        chosen[next] = log;
        place(next + 1, taken | 1 << log);
      }
    }
  }

  private double score() {
    double low = size(0);
    double high = size(4);
    double score = spread(0) + spread(4) + 10 * square(Math.max(0, high - low));
    for (int side = 0; side < 4; side++) {
      double spacing = (side % 2 == 0 ? 3 * low + high : low + 3 * high) / 4 + GAP;
      double[] under = logs[chosen[side]];
      double[] over = logs[chosen[4 + side]];
      for (int station = 0; station < 3; station++) {
        // Butts turn round from one round to the next: a butt lies over a tip.
        double gap = spacing - (under[station] + over[2 - station]) / 2;
        score += square(gap - GAP) + 20 * square(Math.max(0, 0.5 - gap));
      }
    }
    for (int log : chosen) {
      score += waste[log];
    }
    return score;
  }

  private double size(int from) {
    double sum = 0;
    for (int side = 0; side < 4; side++) {
      sum += logs[chosen[from + side]][1];
    }
    return exact ? sum / 4 : Math.floor(sum / 2 + 0.5) / 2;
  }

  private double spread(int from) {
    double most = 0;
    double least = Double.MAX_VALUE;
    for (int side = 0; side < 4; side++) {
      most = Math.max(most, logs[chosen[from + side]][1]);
      least = Math.min(least, logs[chosen[from + side]][1]);
    }
    return 20 * square(Math.max(0, most - least - 1));
  }

  private static double square(double number) {
    return number * number;
  }
}
