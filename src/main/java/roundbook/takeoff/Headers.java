package roundbook.takeoff;

import java.util.List;
import roundbook.job.Job;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/** The logs that lie over openings. */
public final class Headers {
  private Headers() {}

  /** Returns the log over each opening that has one, opening by opening. */
  public static List<PlacedLog> of(Job job, Stack stack) {
    return new OpeningCutter(job, stack, Settling.of(job, stack))
        .cuts().stream().flatMap(cut -> cut.header().stream()).distinct().toList();
  }
}
