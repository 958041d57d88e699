package roundbook.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import roundbook.units.Length;

/**
 * The natural diameter of a log along its length, straight between measured stations.
 *
 * @param stations two or more stations by rising distance from the tally's butt end
 */
public record DiameterProfile(List<Station> stations) {
  /**
   * One measured diameter.
   *
   * @param fromButt distance from the butt end of the log as tallied
   * @param diameter the natural diameter there
   */
  public record Station(Length fromButt, Length diameter) {}

  /** Sorts the stations and checks that there are two at the least, no two in one place. */
  public DiameterProfile {
    boolean rising = isRising(stations);
    stations =
        rising
            ? List.copyOf(stations)
            : stations.stream().sorted(Comparator.comparing(Station::fromButt)).toList();
    if (stations.size() < 2 || !rising && !isRising(stations)) {
      throw new IllegalArgumentException("a profile needs two stations or more, each apart");
    }
  }

  private static boolean isRising(List<Station> stations) {
    for (int i = 1; i < stations.size(); i++) {
      if (!stations.get(i).fromButt().isMoreThan(stations.get(i - 1).fromButt())) {
        return false;
      }
    }
    return true;
  }

  /** Returns the profile of a butt, middle and tip diameter, the middle at half the length. */
  public static DiameterProfile of(Length length, Length butt, Length mid, Length tip) {
    return new DiameterProfile(
        List.of(
            new Station(Length.ZERO, butt),
            new Station(length.dividedBy(2), mid),
            new Station(length, tip)));
  }

  /**
   * Returns the diameter at a distance from the butt, by straight lines between the stations.
   *
   * <p>Beyond the outermost stations their straight line goes on.
   */
  public Length at(Length fromButt) {
    int upper = 1;
    while (upper < stations.size() - 1 && fromButt.isMoreThan(stations.get(upper).fromButt())) {
      upper++;
    }
    Station low = stations.get(upper - 1);
    Station high = stations.get(upper);
    Length rise = high.diameter().minus(low.diameter());
    long along = fromButt.minus(low.fromButt()).nanometres();
    long span = high.fromButt().minus(low.fromButt()).nanometres();
    return low.diameter().plus(rise.timesRatio(along, span));
  }

  /** Returns the same profile with every diameter made smaller, as when the bark comes off. */
  public DiameterProfile thinnedBy(Length both) {
    return new DiameterProfile(
        stations.stream()
            .map(station -> new Station(station.fromButt(), station.diameter().minus(both)))
            .toList());
  }

  /** Returns the profile of a part, by its own distances; it has a station at each end. */
  public DiameterProfile cut(Length from, Length length) {
    Length end = from.plus(length);
    List<Station> part = new ArrayList<>();
    part.add(new Station(Length.ZERO, at(from)));
    stations.stream()
        .filter(each -> each.fromButt().isMoreThan(from) && each.fromButt().isLessThan(end))
        .map(each -> new Station(each.fromButt().minus(from), each.diameter()))
        .forEach(part::add);
    part.add(new Station(length, at(end)));
    return new DiameterProfile(part);
  }
}
