package roundbook.exchange;

import java.util.List;
import roundbook.job.Log;

/**
 * Finds where each log without a place could stand.
 *
 * @param trials tries logs in places
 */
record SpareFinder(Trials trials) {
  List<Spare> spares(List<Substitute> best) {
    return trials.unused().stream()
        .map(log -> spare(log, best))
        .filter(spare -> !spare.places().isEmpty())
        .toList();
  }

  private Spare spare(Log log, List<Substitute> best) {
    return new Spare(
        log,
        trials.uncutPlaces().stream().filter(place -> trials.serves(log, place)).toList(),
        best.stream().filter(each -> each.in().log().equals(log)).toList());
  }
}
