package roundbook.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.exchange.Reason.Exchange;
import roundbook.job.Log;
import roundbook.rounds.Fit;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * Finds why each round that is not cut has its logs: what was on hand, and what the next best
 * choice costs.
 */
final class ReasonFinder {
  /** The least cost that is told, in square inches. */
  private static final double LEAST_COST = 0.0005;

  private final Trials trials;
  private final Fit fit;
  private final List<Length> onHand;

  ReasonFinder(Trials trials) {
    this.trials = trials;
    this.fit = new Fit(trials.job());
    this.onHand =
        trials.job().logs().stream()
            .filter(log -> fit.refused(log).isEmpty())
            .map(Log::mid)
            .sorted()
            .toList();
  }

  List<Reason> reasons() {
    return trials.uncut().stream().map(this::reason).toList();
  }

  private Reason reason(Course course) {
    List<Length> mids = course.places().stream().map(FilledPlace::mid).sorted().toList();
    Length thick = mids.get(mids.size() - 1);
    return new Reason(
        course.round(),
        mids.get(0),
        thick,
        onHand.get(0).least(mids.get(0)),
        onHand.get(onHand.size() - 1).most(thick),
        thickerAbove(course.round(), thick),
        (int) course.places().stream().filter(this::longOnShort).count(),
        next(course));
  }

  private int thickerAbove(int round, Length thick) {
    return (int)
        trials.placed().stream()
            .filter(place -> place.round() > round && place.mid().isMoreThan(thick))
            .count();
  }

  private boolean longOnShort(FilledPlace place) {
    Length own = fit.least(place.wall());
    Length longest =
        place.logs().stream().map(log -> log.piece().log().length()).reduce(Length::most).get();
    return trials.job().building().walls().stream()
        .map(fit::least)
        .anyMatch(least -> least.isMoreThan(own) && !longest.isLessThan(least));
  }

  /**
   * Returns the exchange that costs least of those that cost something: what seems to cost nothing
   * would lose something that the score does not count.
   */
  private Optional<Exchange> next(Course course) {
    return course.places().stream()
        .filter(ReasonFinder::isLeftToTheChoice)
        .flatMap(out -> Stream.concat(withSpares(out), withPlaced(out)))
        .filter(exchange -> exchange.cost() >= LEAST_COST)
        .min(Comparator.comparingDouble(Exchange::cost));
  }

  /** Returns whether no wish of the tally lays a log of a place there. */
  private static boolean isLeftToTheChoice(FilledPlace place) {
    return place.logs().stream()
        .map(each -> each.piece().log())
        .allMatch(
            log ->
                log.traits().keep() == Log.Keep.ANY
                    && log.place().wall().isEmpty()
                    && log.place().round().isEmpty());
  }

  private Stream<Exchange> withSpares(FilledPlace out) {
    List<Exchange> found = new ArrayList<>();
    for (Log log : trials.nearest(out)) {
      if (log.traits().keep() != Log.Keep.ANY) {
        continue;
      }
      for (FilledPlace in : trials.pieces(log, out)) {
        if (trials.tipsHold(in)) {
          double cost = trials.change(in);
          found.add(new Exchange(out, log.tag(), Optional.empty(), cost));
        }
      }
    }
    return found.stream();
  }

  private Stream<Exchange> withPlaced(FilledPlace out) {
    return Stream.of(out)
        .filter(trials::free)
        .flatMap(free -> trials.nearestPlaced(free).stream())
        .filter(ReasonFinder::isLeftToTheChoice)
        .flatMap(other -> withPlaced(out, other).stream());
  }

  private Optional<Exchange> withPlaced(FilledPlace out, FilledPlace other) {
    double least = Double.MAX_VALUE;
    List<FilledPlace> ways = trials.pieces(out, other);
    for (FilledPlace in : ways.isEmpty() ? ways : trials.pieces(other, out)) {
      for (FilledPlace back : ways) {
        if (trials.tipsHold(in) && trials.tipsHold(back)) {
          least = Math.min(least, trials.change(in, back));
        }
      }
    }
    return least == Double.MAX_VALUE
        ? Optional.empty()
        : Optional.of(new Exchange(out, other.tags(), Optional.of(other), least));
  }
}
