package roundbook.balance;

import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * How hard to look, counted in moves and never in time.
 *
 * @param moves moves that the search may try; zero asks for its usual number
 * @param seed seed of the search: the same seed gives the same choice on any machine
 * @param threads threads that may work; the choice does not depend on it
 * @param stop asked now and then; true ends the search, which keeps the best choice so far
 * @param progress told the share of the work done, from 0 to 1, from the calling thread
 */
public record Effort(
    long moves, long seed, int threads, BooleanSupplier stop, DoubleConsumer progress) {
  /** Checks the counts. */
  public Effort {
    if (moves < 0 || threads < 1) {
      throw new IllegalArgumentException("moves must not be below 0 nor threads below 1");
    }
  }

  /** Returns the usual effort with a seed, on one thread, never stopped early. */
  public static Effort usual(long seed) {
    return new Effort(0, seed, 1, () -> false, done -> {});
  }

  /** Returns this effort with another number of moves. */
  public Effort withMoves(long count) {
    return new Effort(count, seed, threads, stop, progress);
  }

  /** Returns this effort with another number of threads. */
  public Effort withThreads(int count) {
    return new Effort(moves, seed, count, stop, progress);
  }

  /** Returns this effort, ended when a question is answered with true. */
  public Effort until(BooleanSupplier asked) {
    return new Effort(moves, seed, threads, asked, progress);
  }
}
