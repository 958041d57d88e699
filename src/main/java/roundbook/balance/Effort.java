package roundbook.balance;

import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * How hard to look, counted in moves and never in time.
 *
 * @param moves moves that the search may try; zero asks for its usual number
 * @param seed seed of the search: the same seed gives the same choice on any machine
 * @param stop asked now and then; true ends the search, which keeps the best choice so far
 * @param progress told the share of the work done, from 0 to 1, every thousand moves or so
 */
public record Effort(long moves, long seed, BooleanSupplier stop, DoubleConsumer progress) {
  /** Checks the count. */
  public Effort {
    if (moves < 0) {
      throw new IllegalArgumentException("moves must not be below 0");
    }
  }

  /** Returns the usual effort with a seed, never stopped early. */
  public static Effort usual(long seed) {
    return new Effort(0, seed, () -> false, done -> {});
  }

  /** Returns this effort with another number of moves. */
  public Effort withMoves(long count) {
    return new Effort(count, seed, stop, progress);
  }

  /** Returns this effort, ended when a question is answered with true. */
  public Effort until(BooleanSupplier asked) {
    return new Effort(moves, seed, asked, progress);
  }

  /** Returns this effort, telling somebody how far it is. */
  public Effort telling(DoubleConsumer told) {
    return new Effort(moves, seed, stop, told);
  }
}
