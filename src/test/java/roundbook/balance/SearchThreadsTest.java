package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How many threads there are changes nothing but the time; the search ends when it is done. */
class SearchThreadsTest {
  private static final Effort EFFORT = Effort.usual(3).withMoves(1_600_000);

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void anyNumberOfThreadsGivesTheSame(boolean exact)
      throws InterruptedException, ExecutionException {
    BalanceTask task = YardFile.read("r12_x125_U").task(exact, false);
    int[] alone = solved(task, 1);
    assertArrayEquals(Balancer.search().solve(task, EFFORT).state().variant, alone);
    assertArrayEquals(alone, solved(task, 2));
    assertArrayEquals(alone, solved(task, 5));
  }

  private static int[] solved(BalanceTask task, int threads)
      throws InterruptedException, ExecutionException {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(() -> Balancer.search().solve(task, EFFORT.onAnyThreads()).state().variant)
          .get();
    } finally {
      pool.shutdown();
    }
  }

  /** The share done never falls; where two beginnings agree, the search ends before its moves. */
  @Test
  void tellsHowFarItIs() {
    BalanceTask task = YardFile.read("t3_0").task(false, false);
    AtomicLong last = new AtomicLong();
    Effort told =
        Effort.usual(3)
            .telling(
                share -> {
                  long done = Math.round(share * 1e6);
                  assertTrue(share <= 1, "no more than all: " + share);
                  assertTrue(done >= last.getAndSet(done), "falls to " + share);
                });
    Balancer.search().solve(task, told);
    assertTrue(last.get() > 100_000, "ends at " + last);
    assertTrue(last.get() < 400_000, "a small task, whose best is found soon, ends early: " + last);
  }

  /** A search that is stopped at once gives a whole choice all the same. */
  @Test
  void stoppedAtOnceIsWhole() {
    BalanceTask task = YardFile.read("t3_0").task(false, false);
    BalanceResult stopped = Balancer.search().solve(task, EFFORT.until(() -> true));
    assertTrue(stopped.isComplete());
    assertEquals(task.logs() - task.places(), stopped.unused().length);
  }
}
