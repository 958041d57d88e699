package roundbook.balance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A yard of the test resources as a task: each log cut from its butt, four inches left for squaring
 * both ends, the rest waste.
 *
 * @param name the file's name
 * @param buildings rounds and the trimmed lengths of the walls of each building, in inches
 * @param logs length, butt, middle and tip diameters of each log, in inches
 */
record YardFile(String name, List<double[]> buildings, List<double[]> logs) {
  private static final Path FOLDER = Path.of("src", "test", "resources", "balance");
  private static final long INCH = 16_000;
  private static final long TICKS = 2000;
  private static final double SQUARING = 4;
  private static final double WASTE = 0.001;

  /** Best scores known of a yard, and a bound. */
  record Best(String name, double rounded, double exact, double bound) {
    boolean isProven() {
      return exact == bound;
    }
  }

  /** Returns every yard with its best scores. */
  static List<Best> all() {
    return lines("best").stream()
        .skip(1)
        .map(line -> line.split(","))
        .map(
            words ->
                new Best(
                    words[0],
                    Double.parseDouble(words[1]),
                    Double.parseDouble(words[2]),
                    Double.parseDouble(words[3])))
        .toList();
  }

  /** Returns the best scores of a yard. */
  static Best best(String name) {
    return all().stream().filter(best -> best.name().equals(name)).findFirst().orElseThrow();
  }

  /** Returns choices that were found: yard, half or exact, score, the log of each place from 1. */
  static List<String[]> found() {
    return lines("found").stream().skip(1).map(line -> line.split(",")).toList();
  }

  static YardFile read(String name) {
    List<double[]> buildings = new ArrayList<>();
    List<double[]> logs = new ArrayList<>();
    for (String line : lines(name)) {
      if (line.startsWith("#")) {
        continue;
      }
      String[] words = line.split(",");
      double[] numbers = new double[words.length];
      for (int i = 2; i < words.length; i++) {
        numbers[i] = Double.parseDouble(words[i]);
      }
      if (words[0].equals("building")) {
        buildings.add(numbers);
      } else if (words[0].equals("log")) {
        logs.add(numbers);
      }
    }
    return new YardFile(name, buildings, logs);
  }

  private static List<String> lines(String name) {
    try {
      return Files.readAllLines(FOLDER.resolve(name + ".csv"));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /**
   * Returns the task.
   *
   * @param exact whether sizes are exact means instead of half inches
   * @param free whether what a log is too long may come off either end instead of the tip
   */
  BalanceTask task(boolean exact, boolean free) {
    return builder(exact, free).build();
  }

  /** Returns the task, not yet ended. */
  BalanceTask.Builder builder(boolean exact, boolean free) {
    return builder(exact, free, INCH, INCH / TICKS);
  }

  /** Returns the task in units of which so many make an inch and a tick, not yet ended. */
  BalanceTask.Builder builder(boolean exact, boolean free, long inch, long tick) {
    Aims usual = Aims.usual(inch);
    BalanceTask.Builder task =
        BalanceTask.builder(inch, tick, exact ? usual.withSizeStep(0) : usual);
    List<Double> lengths = new ArrayList<>();
    for (double[] building : buildings) {
      task.building((int) building[2]);
      for (int wall = 0; wall < 4; wall++) {
        double length = building[3 + wall];
        if (!lengths.contains(length)) {
          lengths.add(length);
          task.lengthClass(fine(length, inch));
        }
        task.side(lengths.indexOf(length), wall % 2 == 0);
      }
    }
    logs.forEach(
        log -> task.log(lengths.stream().map(length -> cuts(log, length, free, inch)).toList()));
    return task;
  }

  private static List<Cut> cuts(double[] log, double length, boolean free, long inch) {
    double excess = log[2] - length - SQUARING;
    if (excess < 0) {
      return List.of();
    }
    List<Cut> cuts = new ArrayList<>();
    for (double off : free && excess > 0 ? new double[] {0, excess / 2, excess} : new double[1]) {
      cuts.add(
          Cut.of(
                  fine(through(log, off), inch),
                  fine(through(log, off + length / 2), inch),
                  fine(through(log, off + length), inch))
              .wasting(fine(excess, inch), WASTE * excess));
    }
    return cuts;
  }

  private static double through(double[] log, double at) {
    double half = log[2] / 2;
    return at <= half
        ? log[3] + (log[4] - log[3]) * at / half
        : log[4] + (log[5] - log[4]) * (at - half) / half;
  }

  private static long fine(double inches, long inch) {
    return Math.round(inches * inch);
  }
}
