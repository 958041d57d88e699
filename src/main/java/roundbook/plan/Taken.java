package roundbook.plan;

import roundbook.job.Log;
import roundbook.problem.Phrase;

/**
 * A log of a shared yard that another job has in a wall.
 *
 * @param log the log, as this job reads it
 * @param job the other job
 * @param round its round there
 * @param wall its wall there
 */
public record Taken(Log log, String job, int round, String wall) {
  /** Returns what a log list says of it, such as {@code sauna.xlsx: round 3 wall N}. */
  Phrase phrase() {
    return Phrase.of("use.taken").with("job", job).with("round", round).with("wall", wall);
  }
}
