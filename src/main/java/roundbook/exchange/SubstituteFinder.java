package roundbook.exchange;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.Log;
import roundbook.job.Pair.Half;
import roundbook.job.Piece;
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
    return trials.uncutLogs().stream()
        .flatMap(place -> Stream.concat(best(place).stream(), halves(place)))
        .toList();
  }

  private Optional<Substitute> best(PlacedLog place) {
    return best(
        trials.nearest(place).stream()
            .flatMap(log -> cut(log, place).stream())
            .map(piece -> new Tried(place, piece, Optional.empty())));
  }

  /** Returns the best spare for each of two short logs of a place, the other one staying. */
  private Stream<Substitute> halves(PlacedLog place) {
    return place.piece().log().pair().stream()
        .flatMap(pair -> pair.halves().stream())
        .flatMap(old -> best(shortLogs(place, old)).stream());
  }

  private Stream<Tried> shortLogs(PlacedLog place, Half old) {
    return trials.nearest(place, old).stream()
        .flatMap(log -> trials.halves(log, place, old).stream())
        .map(half -> new Tried(place, trials.withHalf(place, half), Optional.of(half)))
        .filter(tried -> trials.tipsHold(place, tried.piece));
  }

  /**
   * What is tried in a place.
   *
   * @param place the place
   * @param piece what would lie there
   * @param half the short log that is new, where it is one of two
   */
  private record Tried(PlacedLog place, Piece piece, Optional<Half> half) {}

  private Optional<Substitute> best(Stream<Tried> tried) {
    return tried
        .sorted(Comparator.comparingDouble(each -> trials.change(each.place, each.piece)))
        .limit(WEIGHED)
        .map(
            each ->
                new Substitute(
                    each.place, each.piece, each.half, trials.effect(each.place, each.piece)))
        .min(BETTER);
  }

  private Optional<Piece> cut(Log log, PlacedLog place) {
    return trials.pieces(log, place).stream()
        .filter(piece -> trials.tipsHold(place, piece))
        .min(Comparator.comparingDouble(piece -> trials.change(place, piece)));
  }
}
