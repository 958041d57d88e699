package roundbook.rounds;

import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * How hard to look for a better plan, counted in moves and never in time.
 *
 * @param moves how many moves the search may try; zero asks for its usual number
 * @param seed the seed of the search; the same seed gives the same plan on any machine
 * @param threads how many threads may be used; the plan does not depend on it
 * @param stop asked now and then; true ends the search and keeps the best plan so far
 * @param progress told the share of the work done, from 0 to 1
 */
public record Effort(
    long moves, long seed, int threads, BooleanSupplier stop, DoubleConsumer progress) {
  /** Returns the usual effort with a seed, on one thread, never stopped early. */
  public static Effort usual(long seed) {
    return new Effort(0, seed, 1, () -> false, done -> {});
  }
}
