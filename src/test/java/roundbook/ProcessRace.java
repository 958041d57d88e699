package roundbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Whole processes timed in turn, so that a busy machine slows all of them alike.
 *
 * <p>Only ratios of medians are worth keeping: they carry over from machine to machine, times do
 * not. The first round warms the file cache and is not counted.
 */
final class ProcessRace {
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  private final Path folder;
  private final int rounds;
  private final Map<String, List<String>> runners = new LinkedHashMap<>();

  /** Starts a race whose processes run in a folder, each as often as there are rounds. */
  ProcessRace(Path folder, int rounds) {
    this.folder = folder;
    this.rounds = rounds;
  }

  /** Adds a process by its whole command. */
  ProcessRace add(String name, List<String> command) {
    runners.put(name, command);
    return this;
  }

  /** Adds a run of Java with some arguments. */
  ProcessRace java(String name, String... arguments) {
    return add(name, Stream.concat(Stream.of(JAVA), Stream.of(arguments)).toList());
  }

  /**
   * Runs all processes and returns the median of each, as a multiple of the first one's.
   *
   * @throws IllegalStateException if a process ends with anything but 0
   */
  Map<String, Double> ratios() throws IOException, InterruptedException {
    Map<String, List<Long>> times = new LinkedHashMap<>();
    for (int round = 0; round <= rounds; round++) {
      for (Map.Entry<String, List<String>> runner : runners.entrySet()) {
        long time = time(runner.getValue());
        if (round > 0) {
          times.computeIfAbsent(runner.getKey(), key -> new ArrayList<>()).add(time);
        }
      }
    }
    double first = median(times.values().iterator().next());
    Map<String, Double> ratios = new LinkedHashMap<>();
    times.forEach((name, all) -> ratios.put(name, median(all) / first));
    return ratios;
  }

  /** Returns the ratios as lines of a table. */
  static String table(Map<String, Double> ratios) {
    StringBuilder lines = new StringBuilder();
    ratios.forEach(
        (name, ratio) -> lines.append(String.format(Locale.ROOT, "%-44s %7.2f%n", name, ratio)));
    return lines.toString();
  }

  private long time(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    int code = process.waitFor();
    if (code != 0) {
      throw new IllegalStateException(command + " ended with " + code);
    }
    return System.nanoTime() - start;
  }

  private static double median(List<Long> times) {
    List<Long> sorted = times.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2.0;
  }
}
