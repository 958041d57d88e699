package roundbook.balance;

import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * How hard to look, counted in moves and never in time.
 *
 * @param moves moves that the search may try; zero asks for its usual number
 * @param seed seed of the search: the same seed gives the same choice on any machine
 * @param stop asked now and then, by any of the search's threads; true ends the search, which keeps
 *     the best choice so far
 * @param progress told the share of the work done, from 0 to 1, now and then by the calling thread;
 *     a search that ends early never gets to 1
 * @param anyThreads whether the search may use all the machine's processors instead of one; the
 *     choice is the same
 */
public record Effort(
    long moves, long seed, BooleanSupplier stop, DoubleConsumer progress, boolean anyThreads) {
  /** Checks the count. */
  public Effort {
    if (moves < 0) {
      throw new IllegalArgumentException("moves must not be below 0");
    }
  }

  /** Makes an effort of one thread. */
  public Effort(long moves, long seed, BooleanSupplier stop, DoubleConsumer progress) {
    this(moves, seed, stop, progress, false);
  }

  /** Returns the usual effort with a seed, never stopped early. */
  public static Effort usual(long seed) {
    return new Effort(0, seed, () -> false, done -> {});
  }

  /** Returns this effort with another number of moves. */
  public Effort withMoves(long count) {
    return new Effort(count, seed, stop, progress, anyThreads);
  }

  /** Returns this effort, ended when a question is answered with true. */
  public Effort until(BooleanSupplier asked) {
    return new Effort(moves, seed, asked, progress, anyThreads);
  }

  /** Returns this effort, telling somebody how far it is. */
  public Effort telling(DoubleConsumer told) {
    return new Effort(moves, seed, stop, told, anyThreads);
  }

  /** Returns this effort on all the machine's processors. */
  public Effort onAnyThreads() {
    return new Effort(moves, seed, stop, progress, true);
  }
}
