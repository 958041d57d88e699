package roundbook.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import roundbook.buying.Line;
import roundbook.job.DiameterProfile;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Log;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Logs cut from the shapes of 28 measured spruce and pine stems, as a yard would send them.
 *
 * <p>The stems are those of harvester files (StanForD 2010) of the open package sf2010r (MIT
 * licence), a diameter without bark every 10 cm. A stem is made thicker or thinner as a whole, so
 * that its log has the middle that is drawn; its shape is what was measured.
 */
final class StemShapes {
  private static final Path FILE = Path.of("src/test/resources/stems/measured-stems28.csv");
  private static final double LEAST_SCALE = 0.65;
  private static final double MOST_SCALE = 1.5;
  private static final int TRIES = 2_000;
  private static final double FLARE = 24;
  private static final double LITTLE = 0.15;

  private final List<List<double[]>> stems;
  private final SplittableRandom random;

  StemShapes(long seed) throws IOException {
    Map<String, List<double[]>> read = new TreeMap<>();
    for (String row : Files.readAllLines(FILE).subList(1, lines())) {
      String[] cells = row.split(",");
      read.computeIfAbsent(cells[0], stem -> new ArrayList<>())
          .add(new double[] {Double.parseDouble(cells[3]), Double.parseDouble(cells[4])});
    }
    this.stems = List.copyOf(read.values());
    this.random = new SplittableRandom(seed);
  }

  private static int lines() throws IOException {
    return Files.readAllLines(FILE).size();
  }

  /**
   * Returns every log of a line, its middle anywhere in the line's band and its tip no thinner than
   * the line asks, the flare of butt logs sawn off.
   */
  List<Log> logs(Line line, int first, Length flare) {
    List<Log> logs = new ArrayList<>();
    while (logs.size() < line.count().all()) {
      logs.add(log(line, first + logs.size(), flare));
    }
    return logs;
  }

  /**
   * Returns a yard of so many logs, long and short by turns, half of them butt logs with two feet
   * of flare off and half second logs, their middles from 10 1/2 to 13 1/2 in, of stems of about
   * that size.
   */
  List<Log> yard(int count, double longLog, double shortLog) {
    List<Log> logs = new ArrayList<>();
    while (logs.size() < count) {
      List<double[]> stem = stems.get(random.nextInt(stems.size()));
      double length = logs.size() % 2 == 0 ? longLog : shortLog;
      double begin = random.nextBoolean() ? FLARE : FLARE + longLog;
      double scale = (10.5 + 3 * random.nextDouble()) / at(stem, begin + length / 2);
      boolean ends = stem.get(stem.size() - 1)[0] < begin + length;
      if (!ends && Math.abs(scale - 1) <= LITTLE) {
        logs.add(log("" + (logs.size() + 1), stem, begin, begin + length, scale));
      }
    }
    return logs;
  }

  private static Log log(String tag, List<double[]> stem, double begin, double end, double scale) {
    List<Station> stations = new ArrayList<>();
    for (double x = begin; x < end; x += 12) {
      stations.add(station(stem, x, begin, scale));
    }
    stations.add(station(stem, end, begin, scale));
    return Jobs.log(tag, Length.of(end - begin, LengthUnit.INCH), new DiameterProfile(stations));
  }

  private Log log(Line line, int number, Length flare) {
    for (int tries = 0; tries < TRIES; tries++) {
      Optional<Log> log = drawn(line, number, flare);
      if (log.isPresent()) {
        return log.get();
      }
    }
    throw new IllegalStateException("no stem gives a log of line " + line.number());
  }

  private Optional<Log> drawn(Line line, int number, Length flare) {
    List<double[]> stem = stems.get(random.nextInt(stems.size()));
    double band = line.band().to().inches() - line.band().from().inches();
    double mid = line.band().from().inches() + random.nextDouble() * band;
    boolean second = line.from() == Line.From.SECOND;
    double length = line.lengths().delivered().inches();
    double from = second ? length + flare.inches() : 0;
    double middle = from + line.lengths().midAt().inches();
    double end = from + length;
    if (stem.get(stem.size() - 1)[0] < end) {
      return Optional.empty();
    }
    double scale = mid / at(stem, middle);
    double tip = scale * at(stem, middle + line.lengths().trimmed().inches() / 2);
    if (scale < LEAST_SCALE || scale > MOST_SCALE || tip < line.tips().least().inches()) {
      return Optional.empty();
    }
    return Optional.of(log("" + number, stem, second ? from : flare.inches(), end, scale));
  }

  private static Station station(List<double[]> stem, double x, double begin, double scale) {
    return new Station(
        Length.of(x - begin, LengthUnit.INCH), Length.of(scale * at(stem, x), LengthUnit.INCH));
  }

  private static double at(List<double[]> stem, double x) {
    int upper = 1;
    while (upper < stem.size() - 1 && stem.get(upper)[0] < x) {
      upper++;
    }
    double[] low = stem.get(upper - 1);
    double[] high = stem.get(upper);
    return low[1] + (high[1] - low[1]) * (x - low[0]) / (high[0] - low[0]);
  }
}
