package roundbook.balance;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** How the choice grows with the yard: exact mean sizes, processor time of one thread. */
class LargeBenchmark {
  /** Best score known of b35_2000 with exact means, and a bound from its waste alone. */
  private static final double KNOWN = 67.0030;

  private static final double BOUND = 37.5470;
  private static final int[] LOGS = {250, 500, 1000, 2000, 4000, 8000};
  private static final int MOST = 20_000;

  @Test
  void twoThousandLogs() {
    BalanceTask task = YardFile.read("b35_2000").task(true, false);
    System.out.println("2,000 logs for 35 buildings; bound " + line("%.2f", BOUND / KNOWN));
    System.out.println("| million moves | s | of the best known |");
    System.out.println("|--:|--:|--:|");
    solve(task, Search.usualMoves(task.places()) / 10);
    for (double share : new double[] {0.25, 0.5, 1, 2}) {
      long moves = Math.round(share * Search.usualMoves(task.places()));
      Clock clock = new Clock();
      double score = solve(task, moves);
      System.out.println(
          line("| %.1f | %.1f | %.3f |", moves / 1e6, clock.seconds(), score / KNOWN));
    }
  }

  @Test
  void growth() throws Exception {
    System.out.println("| logs | places | million moves | s | ns a move | F a place |");
    System.out.println("|--:|--:|--:|--:|--:|--:|");
    for (int logs : LOGS) {
      measure(logs);
    }
    Process process =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx512m",
                    "-XX:+UseSerialGC",
                    "-cp",
                    System.getProperty("java.class.path"),
                    LargeBenchmark.class.getName()))
            .inheritIO()
            .start();
    if (process.waitFor() != 0) {
      throw new IllegalStateException("ended with " + process.exitValue());
    }
  }

  /** Measures the largest yard, in a process of its own with little memory. */
  public static void main(String[] none) {
    measure(MOST);
    long peak =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == java.lang.management.MemoryType.HEAP)
            .mapToLong(LargeBenchmark::peak)
            .sum();
    System.out.println("most heap in use, " + peak / (1 << 20) + " MB of 512");
  }

  private static long peak(MemoryPoolMXBean pool) {
    return pool.getPeakUsage().getUsed();
  }

  private static void measure(int logs) {
    Clock clock = new Clock();
    BalanceTask task = ManyWalls.yard(logs).task(true, false);
    long moves = Math.min(10_000L * task.places(), Search.usualMoves(task.places()));
    double score = solve(task, moves);
    double seconds = clock.seconds();
    System.out.println(
        line("| %d | %d | %.1f | %.1f ", logs, task.places(), moves / 1e6, seconds)
            + line("| %.0f | %.3f |", 1e9 * seconds / moves, score / task.places()));
  }

  private static double solve(BalanceTask task, long moves) {
    return Balancer.search().solve(task, Effort.usual(1).withMoves(moves)).score().total();
  }

  private static String line(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }
}
