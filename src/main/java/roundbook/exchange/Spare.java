package roundbook.exchange;

import java.util.List;
import roundbook.job.Log;
import roundbook.stack.FilledPlace;

/**
 * A log without a place, and where it could stand.
 *
 * @param log the log
 * @param places the placed logs that it could stand in for, by round, then wall
 * @param bestFor those for which no other spare is better
 */
public record Spare(Log log, List<FilledPlace> places, List<Substitute> bestFor) {
  /** Copies the lists. */
  public Spare {
    places = List.copyOf(places);
    bestFor = List.copyOf(bestFor);
  }
}
