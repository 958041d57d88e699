package roundbook.bucking;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import roundbook.balance.Aims;
import roundbook.bucking.BuckingTask.Settled;
import roundbook.bucking.BuckingTask.Side;

/**
 * 28 measured spruce and pine stems, a diameter without bark every 10 cm, as boles in quarter
 * inches and ten thousandths of an inch.
 *
 * <p>Source: the open package sf2010r (StanForD 2010 files of three machines; MIT licence, see
 * src/test/resources/harvester/LICENSE.txt).
 */
final class MeasuredStems {
  static final int INCH = 10_000;
  static final int STEPS = 4;
  private static final Path FILE = Path.of("src/test/resources/stems/measured-stems28.csv");

  /** Walls of 18 by 13 ft: trimmed 222 and 162 in, two inches squared off each end. */
  static final List<Side> SIDES =
      List.of(
          new Side(226 * STEPS, 2 * STEPS, true),
          new Side(166 * STEPS, 2 * STEPS, false),
          new Side(226 * STEPS, 2 * STEPS, true),
          new Side(166 * STEPS, 2 * STEPS, false));

  private MeasuredStems() {}

  /** Returns distances and diameters in inches of each stem. */
  static List<double[][]> stations() throws IOException {
    Map<Integer, List<double[]>> read = new TreeMap<>();
    List<String> rows = Files.readAllLines(FILE);
    for (String row : rows.subList(1, rows.size())) {
      String[] cells = row.split(",");
      read.computeIfAbsent(Integer.parseInt(cells[0]), stem -> new ArrayList<>())
          .add(new double[] {Double.parseDouble(cells[3]), Double.parseDouble(cells[4])});
    }
    return read.values().stream().map(each -> each.toArray(double[][]::new)).toList();
  }

  /**
   * Returns the diameter of a stem in inches at a distance in inches, straight between stations.
   */
  static double at(double[][] stem, double inches) {
    int i = 1;
    while (i < stem.length - 1 && inches > stem[i][0]) {
      i++;
    }
    double along = (inches - stem[i - 1][0]) / (stem[i][0] - stem[i - 1][0]);
    return stem[i - 1][1] + along * (stem[i][1] - stem[i - 1][1]);
  }

  static int[] diameters(double[][] stem) {
    int length = (int) Math.floor(stem[stem.length - 1][0] * STEPS + 1e-9);
    int[] ticks = new int[length + 1];
    for (int step = 0; step <= length; step++) {
      ticks[step] = (int) Math.round(at(stem, (double) step / STEPS) * INCH);
    }
    return ticks;
  }

  /** Returns the stems as boles whose pieces are 8 in thick at the least. */
  static List<Bole> boles(List<double[][]> stems) {
    return stems.stream().map(stem -> Bole.of(diameters(stem), List.of(), 8 * INCH)).toList();
  }

  static BuckingTask task(List<Bole> boles, double wastePriceAnInch) {
    return new BuckingTask(
        Aims.usual(INCH),
        INCH,
        boles,
        SIDES,
        8,
        0,
        wastePriceAnInch / STEPS,
        Settled.NOTHING,
        Parting.NONE);
  }

  /** Returns 28 of as many stems, drawn with a seed, some of them twice. */
  static List<double[][]> drawn(List<double[][]> stems, int seed) {
    List<double[][]> all = new ArrayList<>(stems);
    Collections.shuffle(all, new Random(seed));
    return all;
  }
}
