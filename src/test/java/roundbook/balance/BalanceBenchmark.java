package roundbook.balance;

import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import roundbook.balance.BalanceTask.Place;

/**
 * How good the choice of logs is, yard by yard, against the best scores known and against sorting
 * by size and dealing off.
 */
class BalanceBenchmark {
  private static final int SEEDS = 9;
  private static final Balancer SEARCH = Balancer.search();
  private static final Balancer DEAL = Balancer.sortAndDeal();

  @Test
  void halfInches() {
    print("sizes to the half inch, as multiples of the best score known", false);
  }

  @Test
  void exactMeans() {
    print("sizes the exact mean, as multiples of the best score known", true);
  }

  @Test
  void roundingAndCutting() {
    System.out.println("yard          free cut   rounded after, as multiples of the usual");
    for (YardFile.Best best : YardFile.all()) {
      YardFile yard = YardFile.read(best.name());
      double usual = score(yard.task(false, false), 1);
      double free = score(yard.task(false, true), 1);
      System.out.println(line("%-12s %9.3f %9.2f", best.name(), free / usual, after(yard) / usual));
    }
  }

  /** Chooses with the exact mean, and takes the score of that choice with half inches. */
  private static double after(YardFile yard) {
    BalanceResult exact = SEARCH.solve(yard.task(true, false), Effort.usual(1));
    BalanceTask.Builder same = yard.builder(false, false);
    for (int building = 0; building < exact.task().buildings(); building++) {
      for (int round = 0; round < exact.task().rounds(building); round++) {
        for (int side = 0; side < exact.task().sides(building); side++) {
          Place place = new Place(building, round, side);
          same.pin(place, exact.log(place));
        }
      }
    }
    return score(same.build(), 1);
  }

  private static void print(String title, boolean exact) {
    System.out.println(title);
    System.out.println("yard          places  least median   most   bound   deal");
    for (YardFile.Best best : YardFile.all()) {
      BalanceTask task = YardFile.read(best.name()).task(exact, false);
      double known = exact ? best.exact() : best.rounded();
      double[] ratios = new double[SEEDS];
      long start = System.nanoTime();
      for (int seed = 1; seed <= SEEDS; seed++) {
        ratios[seed - 1] = score(task, seed) / known;
      }
      double seconds = (System.nanoTime() - start) / 1e9 / SEEDS;
      Arrays.sort(ratios);
      double deal = DEAL.solve(task, Effort.usual(1)).score().total() / known;
      String bound = exact ? line("%7.2f", best.bound() / known) : "      -";
      System.out.println(
          line(
                  "%-12s %6d %7.3f %6.3f %6.3f",
                  best.name(), task.places(), ratios[0], ratios[SEEDS / 2], ratios[SEEDS - 1])
              + bound
              + line(" %6.1f   %.2f s a run", deal, seconds));
    }
  }

  private static double score(BalanceTask task, long seed) {
    return SEARCH.solve(task, Effort.usual(seed)).score().total();
  }

  private static String line(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }
}
