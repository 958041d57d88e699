package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How near to the best score known the bound comes in a minute, yard by yard. */
@Tag("bench")
class BoundBenchmark {
  private static final double SECONDS = Double.parseDouble(System.getProperty("bound.s", "60"));

  @Test
  void inAMinute() {
    System.out.println("| yard | places | cuts a log | best known | bound, of it | s |");
    System.out.println("|---|--:|--:|--:|--:|--:|");
    for (YardFile.Best best : YardFile.all()) {
      BalanceTask task = YardFile.read(best.name()).task(false, false);
      if (task.places() <= 56) {
        line(best.name(), task, best.rounded(), 1);
        BalanceTask free = YardFile.read(best.name()).task(false, true);
        line(best.name(), free, known(free), 3);
      }
    }
  }

  private static double known(BalanceTask task) {
    return Balancer.search().solve(task, Effort.usual(1)).score().total();
  }

  private static void line(String name, BalanceTask task, double known, int cuts) {
    Clock clock = new Clock();
    double bound =
        Bound.of(task, known, Effort.usual(0).until(() -> clock.seconds() > SECONDS)).score();
    assertTrue(bound <= known, name);
    System.out.println(
        String.format(
            Locale.ROOT,
            "| %s | %d | %d | %.4f | %.3f | %.1f |",
            name,
            task.places(),
            cuts,
            known,
            bound / known,
            clock.seconds()));
  }
}
