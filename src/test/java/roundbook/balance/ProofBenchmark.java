package roundbook.balance;

import com.google.ortools.Loader;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * CP-SAT of Google OR-Tools, a general exact solver, on whole small yards: how long it takes to
 * prove that nothing is better than what the search found. {@code -Dproof.seconds=600} gives it so
 * long for each.
 */
class ProofBenchmark {
  private static final double SECONDS =
      Double.parseDouble(System.getProperty("proof.seconds", "600"));
  private static final String[] YARDS = System.getProperty("proof.yards", "t3_0").split(",");

  @Test
  void wholeYards() {
    Loader.loadNativeLibraries();
    System.out.println("| yard | sizes | found | bound | proven | s |");
    System.out.println("|---|---|--:|--:|---|--:|");
    for (String name : YARDS) {
      prove(name, false);
      prove(name, true);
    }
  }

  private static void prove(String name, boolean exact) {
    BalanceTask task = YardFile.read(name).builder(exact, false, 64, 1).build();
    BalanceResult found = Balancer.search().solve(task, Effort.usual(1));
    long start = System.nanoTime();
    ExactSolver.Proof proof = ExactSolver.prove(found, SECONDS);
    System.out.println(
        String.format(
            Locale.ROOT,
            "| %s | %s | %.4f | %.4f | %s | %.0f |",
            name,
            exact ? "exact mean" : "half inch",
            found.score().total(),
            proof.bound(),
            proof.optimal() ? String.format(Locale.ROOT, "%.4f", proof.best()) : "no",
            (System.nanoTime() - start) / 1e9));
  }
}
