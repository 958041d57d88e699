package roundbook.rounds;

import java.util.List;
import java.util.Optional;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * What the wood that falls off a log weighs against gaps.
 *
 * <p>An inch of offcut counts a thousandth of a square inch. A log that is long enough for a longer
 * wall, where there are shorter ones for its own, counts more: {@code Waste_price} for each inch
 * that the longer wall wants more, by how scarce such logs are, which is the share of them that the
 * longer walls need. So it goes to a shorter wall only where no shorter log does nearly as well,
 * and a yard of one length is dealt as if there were no price.
 */
public final class WoodPrice {
  private static final double OFFCUT = 0.001;

  private final Fit fit;
  private final List<Wall> walls;
  private final List<Length> lengths;
  private final int rounds;
  private final Length allowance;
  private final double price;

  /** Prices the wood of a job of so many rounds. */
  public WoodPrice(Job job, int rounds) {
    this.fit = new Fit(job);
    this.walls = job.building().walls();
    this.lengths =
        job.logs().stream()
            .filter(log -> fit.refused(log).isEmpty())
            .map(Log::length)
            .sorted()
            .toList();
    this.rounds = rounds;
    this.allowance = job.rules().length(Setting.SQUARING_ALLOWANCE);
    this.price = job.rules().number(Setting.WASTE_PRICE).doubleValue();
  }

  /** Returns what the wood of a place weighs, in square inches. */
  public double of(FilledPlace place) {
    double longer =
        longer(place)
            .map(least -> least.minus(fit.least(place.wall())).inches() * scarcity(least))
            .orElse(0.0);
    return OFFCUT * place.offcut(allowance).inches() + price * longer;
  }

  /**
   * Returns the length that the longest wall wants that the log of a place could fill; empty where
   * none is longer than its own, where all logs of its own wall are so long, or where two short
   * logs lie.
   */
  public Optional<Length> longer(FilledPlace place) {
    Length own = fit.least(place.wall());
    Length log = place.first().piece().log().length();
    return place.isShared()
        ? Optional.empty()
        : walls.stream()
            .map(fit::least)
            .filter(least -> least.isMoreThan(own) && !log.isLessThan(least))
            .filter(least -> count(own) > count(least))
            .max(Length::compareTo);
  }

  private double scarcity(Length least) {
    long needed =
        rounds * walls.stream().filter(wall -> !fit.least(wall).isLessThan(least)).count();
    return Math.min(1, (double) needed / Math.max(1, count(least)));
  }

  /** Asked for every way that any log may be cut, so the lengths are sorted once and halved. */
  private int count(Length least) {
    int low = 0;
    int high = lengths.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (lengths.get(middle).isLessThan(least)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return lengths.size() - low;
  }
}
