package roundbook.balance;

import java.util.List;

/**
 * The score of a choice in binary inches, summed straight from its definition and sharing nothing
 * with the search: squares of the gaps' errors at both trimmed ends and the middle, 20 times the
 * squares of what gaps lack of half an inch and of what middles of a round spread over an inch, 10
 * times the square of what a round is larger than the one below, a thousandth an inch of offcut.
 */
final class PlainScore {
  private static final double GAP = 1;
  private static final int WALLS = 4;

  private final YardFile yard;
  private final boolean exact;
  private final List<Integer> chosen;

  /**
   * Takes a choice.
   *
   * @param yard the yard
   * @param exact whether sizes are exact means instead of half inches
   * @param chosen the numbers of the logs, from 1, building by building, round by round from the
   *     lowest, wall by wall
   */
  PlainScore(YardFile yard, boolean exact, List<Integer> chosen) {
    this.yard = yard;
    this.exact = exact;
    this.chosen = chosen;
  }

  /** Returns the score. */
  double total() {
    double total = 0;
    int from = 0;
    for (double[] building : yard.buildings()) {
      int rounds = (int) building[2];
      for (int round = 0; round < rounds; round++) {
        total += round(building, from + WALLS * round);
        if (round + 1 < rounds) {
          total += joints(building, round, from + WALLS * round);
        }
      }
      from += WALLS * rounds;
    }
    return total;
  }

  private double round(double[] building, int from) {
    double least = Double.MAX_VALUE;
    double most = 0;
    double waste = 0;
    for (int wall = 0; wall < WALLS; wall++) {
      double mid = diameter(building, from, wall, 1);
      least = Math.min(least, mid);
      most = Math.max(most, mid);
      waste += 0.001 * (log(from + wall)[2] - building[3 + wall] - 4);
    }
    return 20 * excess(most - least - 1) + waste;
  }

  private double joints(double[] building, int round, int from) {
    double low = size(building, from);
    double high = size(building, from + WALLS);
    double sum = 10 * excess(high - low);
    for (int wall = 0; wall < WALLS; wall++) {
      double spacing = (wall % 2 == 0 ? 3 * low + high : low + 3 * high) / 4 + GAP;
      for (int station = 0; station < 3; station++) {
        // Butts turn round from one round to the next: a butt lies over a tip.
        double under = diameter(building, from, wall, station);
        double over = diameter(building, from + WALLS, wall, 2 - station);
        double gap = spacing - (under + over) / 2;
        sum += (gap - GAP) * (gap - GAP) + 20 * excess(0.5 - gap);
      }
    }
    return sum;
  }

  private double size(double[] building, int from) {
    double sum = 0;
    for (int wall = 0; wall < WALLS; wall++) {
      sum += diameter(building, from, wall, 1);
    }
    double mean = sum / WALLS;
    return exact ? mean : Math.floor(Math.round(2e6 * mean) / 1e6 + 0.5) / 2;
  }

  /** Returns a diameter of a trimmed log at its butt, middle or tip, cut from the butt squared. */
  private double diameter(double[] building, int from, int wall, int station) {
    double[] log = log(from + wall);
    double share = building[3 + wall] * station / log[2];
    return share <= 1
        ? log[3] + (log[4] - log[3]) * share
        : log[4] + (log[5] - log[4]) * (share - 1);
  }

  private double[] log(int place) {
    return yard.logs().get(chosen.get(place) - 1);
  }

  private static double excess(double number) {
    return number > 0 ? number * number : 0;
  }
}
