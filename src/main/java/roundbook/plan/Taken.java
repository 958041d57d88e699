package roundbook.plan;

import roundbook.job.Log;

/**
 * A log of a shared yard that another job has in a wall.
 *
 * @param log the log, as this job reads it
 * @param job the other job
 * @param round its round there
 * @param wall its wall there
 */
public record Taken(Log log, String job, int round, String wall) {
  /** Returns the words of a log list, such as {@code sauna.xlsx: round 3 wall N}. */
  String words() {
    return job + ": round " + round + " wall " + wall;
  }
}
