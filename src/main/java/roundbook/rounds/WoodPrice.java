package roundbook.rounds;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
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
  private final NavigableMap<Length, Supply> supplies = new TreeMap<>();
  private final Length allowance;
  private final double price;

  /**
   * The logs that are long enough for a wall.
   *
   * @param logs how many they are
   * @param scarcity the share of them that walls so long need, at most 1
   */
  private record Supply(long logs, double scarcity) {}

  /** Prices the wood of a job of so many rounds. */
  public WoodPrice(Job job, int rounds) {
    this.fit = new Fit(job);
    List<Length> lengths =
        job.logs().stream().filter(log -> fit.refused(log).isEmpty()).map(Log::length).toList();
    List<Length> wanted = job.building().walls().stream().map(fit::least).toList();
    for (Length least : wanted) {
      supplies.computeIfAbsent(
          least,
          key -> {
            long logs = reaching(lengths, key);
            double needed = rounds * reaching(wanted, key);
            return new Supply(logs, Math.min(1, needed / Math.max(1, logs)));
          });
    }
    this.allowance = job.rules().length(Setting.SQUARING_ALLOWANCE);
    this.price = job.rules().number(Setting.WASTE_PRICE).doubleValue();
  }

  private static long reaching(List<Length> lengths, Length least) {
    return lengths.stream().filter(length -> !length.isLessThan(least)).count();
  }

  /** Returns what the wood of a place weighs, in square inches. */
  public double of(FilledPlace place) {
    Optional<Length> longer = longer(place);
    double offcut = OFFCUT * place.offcut(allowance).inches();
    if (longer.isEmpty()) {
      return offcut;
    }
    Length more = longer.get().minus(fit.least(place.wall()));
    return offcut + price * (more.inches() * supplies.get(longer.get()).scarcity);
  }

  /**
   * Returns the length that the longest wall wants that the log of a place could fill; empty where
   * none is longer than its own, where all logs of its own wall are so long, or where two short
   * logs lie.
   */
  public Optional<Length> longer(FilledPlace place) {
    if (place.isShared()) {
      return Optional.empty();
    }
    Length own = fit.least(place.wall());
    long logs = supplies.get(own).logs;
    Length log = place.first().piece().log().length();
    for (Map.Entry<Length, Supply> each : supplies.tailMap(own, false).descendingMap().entrySet()) {
      if (!log.isLessThan(each.getKey()) && each.getValue().logs < logs) {
        return Optional.of(each.getKey());
      }
    }
    return Optional.empty();
  }
}
