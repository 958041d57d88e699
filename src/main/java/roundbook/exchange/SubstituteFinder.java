package roundbook.exchange;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;

/**
 * Finds the best spare for each placed log that is not cut.
 *
 * <p>Each spare is cut as the score likes best; of the six that it likes best the one with the
 * fewest flags wins, and among those the one with the least score.
 *
 * @param trials tries logs in places
 */
record SubstituteFinder(Trials trials) {
  private static final int WEIGHED = 6;

  private static final Comparator<Substitute> BETTER =
      Comparator.<Substitute>comparingInt(each -> each.effect().flagsAfter())
          .thenComparingDouble(each -> each.effect().change());

  List<Substitute> best() {
    return trials.uncutPlaces().stream()
        .flatMap(place -> Stream.concat(best(place).stream(), shortLogs(place)))
        .toList();
  }

  private Optional<Substitute> best(FilledPlace place) {
    return best(
        place,
        trials.nearest(place).stream()
            .flatMap(log -> cut(log, place).stream())
            .map(tried -> new Tried(tried, Optional.empty(), tried.first().piece())));
  }

  /** Returns the best spare for each of two short logs of a place, the other one staying. */
  private Stream<Substitute> shortLogs(FilledPlace place) {
    return place.isShared()
        ? place.logs().stream().flatMap(old -> best(place, shortLogs(place, old)).stream())
        : Stream.empty();
  }

  private Stream<Tried> shortLogs(FilledPlace place, PlacedLog old) {
    return trials.nearest(old).stream()
        .flatMap(log -> trials.shortLogs(log, old).stream())
        .map(log -> new Tried(place.with(log, old), Optional.of(old), log.piece()))
        .filter(tried -> trials.tipsHold(tried.filled));
  }

  /**
   * What is tried in a place.
   *
   * @param filled what would lie there
   * @param instead the short log that is replaced, where it is one of two
   * @param in what is new
   */
  private record Tried(FilledPlace filled, Optional<PlacedLog> instead, Piece in) {}

  /** Returns the best of what is tried; after one without a flag none that costs more is better. */
  private Optional<Substitute> best(FilledPlace place, Stream<Tried> tried) {
    List<Tried> least =
        tried
            .sorted(Comparator.comparingDouble(each -> trials.change(each.filled)))
            .limit(WEIGHED)
            .toList();
    Substitute best = null;
    for (Tried each : least) {
      Effect effect = trials.effect(each.filled);
      Substitute other = new Substitute(place, each.instead, each.in, effect);
      best = best == null || BETTER.compare(other, best) < 0 ? other : best;
      if (effect.flagsAfter() == 0) {
        break;
      }
    }
    return Optional.ofNullable(best);
  }

  private Optional<FilledPlace> cut(Log log, FilledPlace place) {
    return trials.pieces(log, place).stream()
        .filter(trials::tipsHold)
        .min(Comparator.comparingDouble(trials::change));
  }
}
