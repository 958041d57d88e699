package roundbook.app;

import java.util.concurrent.CountDownLatch;

/**
 * Whether the user wants the run to come to an end.
 *
 * <p>An interrupt only asks: a search that runs ends, and the best plan so far is written before
 * the process ends. Java hears no second interrupt while it shuts down.
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
    asked = true;
    try {
      finished.await();
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
  }

  /** Tells that the run has ended. */
  void finish() {
    finished.countDown();
  }
}
