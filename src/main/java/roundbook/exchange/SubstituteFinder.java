package roundbook.exchange;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import roundbook.job.Log;
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
    return trials.uncutLogs().stream().flatMap(place -> best(place).stream()).toList();
  }

  private Optional<Substitute> best(PlacedLog place) {
    return trials.nearest(place).stream()
        .flatMap(log -> cut(log, place).stream())
        .sorted(Comparator.comparingDouble(piece -> trials.change(place, piece)))
        .limit(WEIGHED)
        .map(piece -> new Substitute(place, piece, trials.effect(place, piece)))
        .min(BETTER);
  }

  private Optional<Piece> cut(Log log, PlacedLog place) {
    return trials.pieces(log, place).stream()
        .filter(piece -> trials.tipsHold(place, piece))
        .min(Comparator.comparingDouble(piece -> trials.change(place, piece)));
  }
}
