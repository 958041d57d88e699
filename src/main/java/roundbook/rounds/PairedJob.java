package roundbook.rounds;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.stack.FilledPlace;

/**
 * A job in some of whose places two short logs lie already; the rest is to be chosen.
 *
 * @param job the job, without the logs that lie there
 * @param pairs the places that short logs fill
 */
public record PairedJob(Job job, List<FilledPlace> pairs) {
  /** Copies the list. */
  public PairedJob {
    pairs = List.copyOf(pairs);
  }

  /** Returns a job of which all is to be chosen. */
  public static PairedJob of(Job job) {
    return new PairedJob(job, List.of());
  }

  /** Returns the rest of a job when short logs fill these places. */
  static PairedJob of(Job job, List<FilledPlace> pairs) {
    Set<String> used =
        pairs.stream().flatMap(pair -> pair.held().tags().stream()).collect(Collectors.toSet());
    return new PairedJob(
        job.withLogs(job.logs().stream().filter(log -> !used.contains(log.tag())).toList()), pairs);
  }

  /** Returns the same with other logs to choose from. */
  PairedJob withLogs(List<Log> logs) {
    return new PairedJob(job.withLogs(logs), pairs);
  }
}
