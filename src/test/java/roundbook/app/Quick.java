package roundbook.app;

import java.io.PrintStream;

/** The whole program with searches of few moves, for tests that ask nothing of the choice. */
final class Quick {
  /** Moves that fill every place with a log that may lie there, and better it a little. */
  static final long MOVES = 100_000;

  private Quick() {}

  /** Runs the program and returns its exit code. */
  static int run(String[] args, PrintStream out, PrintStream err) {
    return Main.run(args, out, err, MOVES);
  }
}
