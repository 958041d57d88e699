package roundbook.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.units.Length;

/**
 * Reads a profile written as one text: {@code 0mm=372mm 100mm=365mm}, places from the butt end and
 * the diameters there.
 */
final class Stations {
  private static final int FEWEST = 3;
  private static final Pattern STATION =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?mm)=(\\d{1,4}(?:\\.\\d{1,6})?mm)");

  private Stations() {}

  /** Returns the profile; empty when the text holds fewer than three places on the log. */
  static Optional<DiameterProfile> read(String text, Length length) {
    if (text.isEmpty()) {
      return Optional.empty();
    }
    TreeMap<Length, Length> diameters = new TreeMap<>();
    Matcher matcher = STATION.matcher(text);
    while (matcher.find()) {
      Length at = Length.parse(matcher.group(1));
      if (!at.isMoreThan(length)) {
        diameters.put(at, Length.parse(matcher.group(2)));
      }
    }
    List<Station> stations = new ArrayList<>();
    diameters.forEach((at, diameter) -> stations.add(new Station(at, diameter)));
    return stations.size() < FEWEST ? Optional.empty() : Optional.of(new DiameterProfile(stations));
  }
}
