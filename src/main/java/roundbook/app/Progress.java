package roundbook.app;

import java.io.PrintWriter;
import java.util.function.DoubleConsumer;

/** A line on the terminal that says how far a choice of logs is, once it takes over a second. */
final class Progress implements DoubleConsumer, AutoCloseable {
  private static final long PATIENCE = 1_000_000_000;
  private static final long PAUSE = 200_000_000;

  private static final int WIDEST_NAME = 50;

  private final PrintWriter terminal;
  private final String what;
  private long next = System.nanoTime() + PATIENCE;
  private int width;

  /**
   * Makes the line of a file.
   *
   * @param terminal where it goes
   * @param what what it is about; a long name is cut, for a line that is broken cannot be wiped
   */
  Progress(PrintWriter terminal, String what) {
    this.terminal = terminal;
    this.what = what.length() > WIDEST_NAME ? what.substring(0, WIDEST_NAME - 1) + "…" : what;
  }

  /** Makes the line of a file on the terminal itself, for messages may go into a file. */
  static Progress onTerminal(String what) {
    return new Progress(System.console().writer(), what);
  }

  /** Begins a new line on the terminal, where there is one. */
  static void breakLine() {
    if (isSeen()) {
      System.console().writer().println();
    }
  }

  /** Returns whether somebody looks on. */
  static boolean isSeen() {
    // Since Java 22 there may be a console without a terminal, but not this plain one.
    System.setProperty("jdk.console", "java.base");
    return System.console() != null;
  }

  @Override
  public void accept(double share) {
    long now = System.nanoTime();
    if (now - next >= 0) {
      next = now + PAUSE;
      String line = "%s: choosing logs, %d %%".formatted(what, Math.round(100 * share));
      width = Math.max(width, line.length());
      terminal.print("\r" + line);
      terminal.flush();
    }
  }

  /** Wipes the line away. */
  @Override
  public void close() {
    if (width > 0) {
      terminal.print("\r" + " ".repeat(width) + "\r");
      terminal.flush();
    }
  }
}
