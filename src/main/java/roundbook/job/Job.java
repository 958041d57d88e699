package roundbook.job;

import java.util.List;
import java.util.Optional;

/**
 * Everything that a plan is made from.
 *
 * @param rules the settings
 * @param building the ring of walls
 * @param logs every usable log of the tally, in the order it was read
 * @param openings doors and windows
 * @param pins places that the builder has settled
 */
public record Job(
    BuildRules rules, Building building, List<Log> logs, List<Opening> openings, List<Pin> pins) {
  /** Copies the lists. */
  public Job {
    logs = List.copyOf(logs);
    openings = List.copyOf(openings);
    pins = List.copyOf(pins);
  }

  /** Returns the same job under other rules. */
  public Job with(BuildRules other) {
    return new Job(other, building, logs, openings, pins);
  }

  /** Returns the same job with other logs. */
  public Job withLogs(List<Log> other) {
    return new Job(rules, building, other, openings, pins);
  }

  /** Returns the log of a tag; empty when there is none. */
  public Optional<Log> log(String tag) {
    return logs.stream().filter(log -> log.tag().equals(tag)).findFirst();
  }
}
