package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.ortools.Loader;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * CP-SAT of Google OR-Tools, a general exact solver, proves the optima of parts of the yards, and
 * the search reaches them with any seed.
 */
@Tag("long")
class ProvenOptimaTest {
  private static final double SECONDS = 60;

  @BeforeAll
  static void loadTheSolver() {
    Loader.loadNativeLibraries();
  }

  /**
   * The bound is under the optimum that the solver proves, for one cut a log; those of several are
   * too much for it.
   */
  @ParameterizedTest(name = "{0}, {1} rounds, {2} logs")
  @CsvSource({"t4_2, 2, 12", "t6_1, 2, 10"})
  void theBoundIsUnderTheProvenOptimum(String name, int rounds, int logs) {
    YardFile whole = YardFile.read(name);
    double[] building = whole.buildings().get(0).clone();
    building[2] = rounds;
    YardFile part = new YardFile(name, List.of(building), whole.logs().subList(0, logs));
    BalanceTask task = part.builder(false, false, 64, 1).build();
    BalanceResult result = Balancer.search().solve(task, Effort.usual(1));
    ExactSolver.Proof proof = ExactSolver.prove(result, SECONDS);
    assertTrue(proof.optimal(), proof::toString);
    int[] turns = {0};
    double bound =
        Bound.of(result.task(), 1.3 * proof.best(), Effort.usual(0).until(() -> ++turns[0] > 400))
            .score();
    assertTrue(bound <= proof.best() * (1 + 1e-9), bound + " over " + proof.best());
    assertTrue(bound > 0, "bound " + bound);
  }

  @ParameterizedTest(name = "{0}, {1} rounds, {2} logs, exact mean {3}")
  @CsvSource({"t4_2, 2, 12, false", "t4_2, 2, 10, true", "t6_1, 2, 10, false"})
  void theSearchReachesTheProvenOptimum(String name, int rounds, int logs, boolean exact) {
    YardFile whole = YardFile.read(name);
    double[] building = whole.buildings().get(0).clone();
    building[2] = rounds;
    YardFile part = new YardFile(name, List.of(building), whole.logs().subList(0, logs));
    BalanceTask task = part.builder(exact, false, 64, 1).build();
    BalanceResult result = Balancer.search().solve(task, Effort.usual(1));
    ExactSolver.Proof proof = ExactSolver.prove(result, SECONDS);
    assertTrue(proof.optimal(), proof::toString);
    for (long seed = 1; seed <= 5; seed++) {
      double found = Balancer.search().solve(task, Effort.usual(seed)).score().total();
      assertEquals(proof.best(), found, 1e-9, "seed " + seed);
    }
  }
}
