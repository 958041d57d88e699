package roundbook.app;

import java.util.concurrent.CountDownLatch;

/**
 * Whether the user wants the run to come to an end.
 *
 * <p>An interrupt only asks: a search that runs ends, and the best plan so far is written before
 * the process ends. A second one ends the process at once; what it leaves is cleared away by the
 * next run, as after any other kill.
 */
final class Stop {
  private final CountDownLatch finished = new CountDownLatch(1);
  private volatile boolean asked;

  /** Returns whether the run was asked to end. */
  boolean asked() {
    return asked;
  }

  /** Takes interrupts from now on, and holds the end of the process until the run has ended. */
  void listen() {
    Runtime.getRuntime().addShutdownHook(new Thread(this::end, "stop"));
  }

  private void end() {
    if (finished.getCount() == 0) {
      return;
    }
    asked = true;
    tell(SecondInterrupt.ends());
    try {
      finished.await();
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
  }

  /** Says what happens now, on a line of its own: the terminal's may show how far the run is. */
  private static void tell(boolean endsAtOnce) {
    Progress.breakLine();
    String again = endsAtOnce ? "; interrupt again to end at once without it" : "";
    System.err.println("stopping when what was begun is whole" + again);
  }

  /** Tells that the run has ended. */
  void finish() {
    finished.countDown();
  }
}
