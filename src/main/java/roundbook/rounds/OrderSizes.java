package roundbook.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import roundbook.balance.BalanceResult;
import roundbook.balance.BalanceTask.RingPlace;
import roundbook.balance.Balancer;
import roundbook.balance.Effort;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.rounds.Shortage.Missing;
import roundbook.units.Length;

/**
 * Finds which diameters missing logs should have.
 *
 * <p>Each missing log may take any diameter of a row, as if that were a way to cut it; the search
 * then makes the score small over the logs' places and these diameters alike.
 */
final class OrderSizes {
  private final PairedJob paired;
  private final Job job;
  private final int rounds;
  private final OrderedLogs ordered;
  private final List<Length> mids;

  OrderSizes(PairedJob paired, int rounds) {
    this.paired = paired;
    this.job = paired.job();
    this.rounds = rounds;
    this.ordered = new OrderedLogs(job);
    this.mids = ordered.mids();
  }

  /** Returns lines of a count and a length with the bands of their diameters. */
  List<Missing> sized(List<Missing> counted, Effort effort) {
    List<Missing> each = counted.stream().flatMap(OrderSizes::oneByOne).toList();
    List<Log> more = new ArrayList<>();
    for (Missing one : each) {
      more.add(ordered.log(more.size() + 1, one.least(), middle()));
    }
    Job whole = ordered.with(more);
    Places places = new Places(paired.withLogs(whole.logs()), rounds, pieces(each));
    BalanceJob balance = new BalanceJob(places);
    BalanceResult result = Balancer.search().solve(balance.task(), effort);
    List<Length> chosen = chosen(each.size(), places, balance, result);
    List<Missing> sized = new ArrayList<>();
    int from = 0;
    for (Missing line : counted) {
      sized.addAll(bands(line, chosen.subList(from, from + line.count())));
      from += line.count();
    }
    return sized;
  }

  private static java.util.stream.Stream<Missing> oneByOne(Missing line) {
    return java.util.stream.Stream.generate(() -> line.withCount(1)).limit(line.count());
  }

  private Length middle() {
    return mids.get(mids.size() / 2);
  }

  /** Returns the ways to cut every log, the ordered ones in each diameter they may have. */
  private List<List<List<Piece>>> pieces(List<Missing> each) {
    List<List<List<Piece>>> pieces = new ArrayList<>(Places.serving(job));
    for (Missing one : each) {
      int number = pieces.size() - job.logs().size() + 1;
      List<Log> sizes = mids.stream().map(mid -> ordered.log(number, one.least(), mid)).toList();
      pieces.add(job.building().walls().stream().map(wall -> pieces(sizes, wall)).toList());
    }
    return pieces;
  }

  private List<Piece> pieces(List<Log> sizes, Wall wall) {
    Fit fit = new Fit(job);
    return sizes.stream().flatMap(log -> fit.pieces(log, wall).stream()).toList();
  }

  /** Returns the diameter of each ordered log; the middle of the row for one without a place. */
  private List<Length> chosen(int count, Places places, BalanceJob balance, BalanceResult result) {
    List<Length> chosen = new ArrayList<>(java.util.Collections.nCopies(count, middle()));
    for (int at = 0; result.isComplete() && at < places.count(); at++) {
      RingPlace place = new RingPlace(0, places.round(at) - 1, at % places.walls().size());
      int number = result.log(place) - job.logs().size();
      if (number >= 0 && number < count) {
        chosen.set(number, balance.filled(result, place).first().piece().log().mid());
      }
    }
    return chosen;
  }

  /** Parts a line into bands no wider than a round may spread, half a step more at each end. */
  private List<Missing> bands(Missing line, List<Length> chosen) {
    List<Length> sorted = chosen.stream().sorted(Comparator.reverseOrder()).toList();
    Length half = OrderedLogs.step(job.rules()).dividedBy(2);
    Length widest = job.rules().length(Setting.SPREAD_MOST);
    List<Missing> bands = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      if (i == sorted.size() || sorted.get(from).minus(sorted.get(i)).isMoreThan(widest)) {
        Length thin = sorted.get(i - 1).minus(half);
        Length thick = sorted.get(from).plus(half);
        bands.add(line.withCount(i - from).withBand(thin, thick));
        from = i;
      }
    }
    return bands;
  }
}
