package roundbook.balance;

import java.lang.management.ManagementFactory;

/** Processor time of this thread, which a loaded machine lengthens less than what a clock tells. */
final class Clock {
  private final long start = now();

  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** Returns the seconds since the start. */
  double seconds() {
    return (now() - start) / 1e9;
  }
}
