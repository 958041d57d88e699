package roundbook.exchange;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import roundbook.job.Log;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * A log that could fill a longer wall than its own, and the best shorter one without a place.
 *
 * @param shorter the shorter log that suits its place best; empty where none is left over
 * @param worse by how much that one would make the gaps worse, in square inches of the score
 */
public record LongLog(Optional<Log> shorter, double worse) {
  /** Returns the logs of the rounds that are not cut that are longer than they need to be. */
  static Map<String, LongLog> all(Trials trials) {
    Map<String, LongLog> found = new HashMap<>();
    for (FilledPlace place : trials.uncutPlaces()) {
      trials.longer(place).ifPresent(least -> found.put(place.tags(), of(trials, place, least)));
    }
    return found;
  }

  private static LongLog of(Trials trials, FilledPlace place, Length least) {
    return trials.unused().stream()
        .filter(log -> log.length().isLessThan(least))
        .flatMap(log -> trials.pieces(log, place).stream())
        .filter(trials::tipsHold)
        .map(
            other ->
                new LongLog(Optional.of(other.first().piece().log()), trials.worse(other, place)))
        .min(Comparator.comparingDouble(LongLog::worse))
        .orElse(new LongLog(Optional.empty(), 0));
  }
}
