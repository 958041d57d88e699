package roundbook.app;

import roundbook.balance.Effort;

/**
 * One run of the program: what it is asked, the files that are run together, and how hard it looks.
 *
 * @param options what the command asks
 * @param files the files that are run together
 * @param stop whether the run is to end early
 * @param moves how many moves a search may try; zero is its usual number
 */
record Run(Options options, Together files, Stop stop, long moves) {
  /** Returns how hard to look, with a seed. */
  Effort effort(long seed) {
    return Effort.usual(seed).withMoves(moves).until(stop::asked);
  }
}
