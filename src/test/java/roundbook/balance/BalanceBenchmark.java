package roundbook.balance;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import roundbook.balance.BalanceTask.RingPlace;

/**
 * How good the choice of logs is, yard by yard, against the best scores known and against sorting
 * by size and dealing off. {@code -Dbalance.yards=real060,t3_0} measures those only, {@code
 * -Dbalance.share=0.25} with so much of the usual moves.
 */
class BalanceBenchmark {
  private static final int SEEDS = 9;
  private static final double GOAL = 1.01;
  private static final double SHARE = Double.parseDouble(System.getProperty("balance.share", "1"));
  private static final Optional<String> YARDS =
      Optional.ofNullable(System.getProperty("balance.yards"));
  private static final Balancer SEARCH = Balancer.search();
  private static final Balancer DEAL = Balancer.sortAndDeal();

  @Test
  void halfInches() {
    print("Sizes to the half inch, as multiples of the best score known", false);
  }

  @Test
  void exactMeans() {
    print("Sizes the exact mean, as multiples of the best score known", true);
  }

  @Test
  void roundingAndCutting() {
    System.out.println("Half inches, seed 1, as multiples of rounding within and cutting the tip");
    System.out.println("| yard | cut at either end | rounded after |");
    System.out.println("|---|--:|--:|");
    for (YardFile.Best best : measured()) {
      YardFile yard = YardFile.read(best.name());
      double usual = score(yard.task(false, false), 1);
      double free = score(yard.task(false, true), 1);
      System.out.println(
          line("| %s | %.3f | %.2f |", best.name(), free / usual, after(yard) / usual));
    }
  }

  /** Chooses with the exact mean, and takes the score of that choice with half inches. */
  private static double after(YardFile yard) {
    BalanceResult exact = SEARCH.solve(yard.task(true, false), Effort.usual(1));
    BalanceTask.Builder same = yard.builder(false, false);
    for (int building = 0; building < exact.task().buildings(); building++) {
      for (int round = 0; round < exact.task().rounds(building); round++) {
        for (int side = 0; side < exact.task().sides(building); side++) {
          RingPlace place = new RingPlace(building, round, side);
          same.pin(place, exact.log(place));
        }
      }
    }
    return score(same.build(), 1);
  }

  private static void print(String title, boolean exact) {
    System.out.println(line("%s; %d seeds, %s of the usual moves", title, SEEDS, SHARE));
    System.out.println(
        "| yard | places | least | median | most | seeds over 1.01 | bound |"
            + " dealt by size, of the worst seed | s a run |");
    System.out.println("|---|--:|--:|--:|--:|--:|--:|--:|--:|");
    measured().forEach(best -> print(best, exact));
  }

  private static void print(YardFile.Best best, boolean exact) {
    BalanceTask task = YardFile.read(best.name()).task(exact, false);
    double known = exact ? best.exact() : best.rounded();
    Clock clock = new Clock();
    double[] ratios =
        LongStream.rangeClosed(1, SEEDS)
            .mapToDouble(seed -> score(task, seed) / known)
            .sorted()
            .toArray();
    double seconds = clock.seconds() / SEEDS;
    double deal = DEAL.solve(task, Effort.usual(1)).score().total() / known;
    long over = Arrays.stream(ratios).filter(ratio -> ratio > GOAL).count();
    String bound = exact ? line("%.2f", best.bound() / known) : "–";
    System.out.println(
        line("| %s | %d | %.3f ", best.name(), task.places(), ratios[0])
            + line("| %.3f | %.3f ", ratios[SEEDS / 2], ratios[SEEDS - 1])
            + line("| %d | %s | %.1f | %.2f |", over, bound, deal / ratios[SEEDS - 1], seconds));
  }

  private static double score(BalanceTask task, long seed) {
    long moves = Math.round(SHARE * Search.usualMoves(task.places()));
    return SEARCH.solve(task, Effort.usual(seed).withMoves(moves)).score().total();
  }

  private static List<YardFile.Best> measured() {
    return YARDS
        .map(names -> YardFile.all().stream().filter(best -> names.contains(best.name())).toList())
        .orElseGet(YardFile::all);
  }

  private static String line(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }
}
