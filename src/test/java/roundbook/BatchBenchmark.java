package roundbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Jobs one after the other and two at once: a dozen, which take two minutes, or as many as {@code
 * -Droundbook.jobs} says; by an app image too where {@code -Droundbook.image} names its launcher.
 */
class BatchBenchmark {
  private static final int JOBS = Integer.getInteger("roundbook.jobs", 12);

  @TempDir private Path folder;

  @Test
  void twoAtOnce() throws IOException, InterruptedException {
    String jar = System.getProperty("roundbook.jar");
    assertTrue(Files.isRegularFile(Path.of(jar)), "package the program first");
    Path jobs = Files.createDirectories(folder.resolve("jobs"));
    for (int i = 0; i < JOBS; i++) {
      Files.copy(Path.of("samples", "hill-cabin.xlsx"), jobs.resolve("job " + i + ".xlsx"));
    }
    String out = Files.createDirectories(folder.resolve("out")).toString();
    String[] plan = {"-jar", jar, "plan", "-q", jobs.toString(), "-o", out, "-j"};
    ProcessRace race =
        new ProcessRace(folder, 2)
            .java(JOBS + " jobs, two at once", with(plan, "2"))
            .java(JOBS + " jobs, one at a time", with(plan, "1"));
    String image = System.getProperty("roundbook.image", "");
    if (!image.isEmpty()) {
      List<String> run = List.of(image, "plan", "-q", jobs.toString(), "-o", out, "-j");
      race.add("image, two at once", with(run, "2")).add("image, one at a time", with(run, "1"));
    }
    System.out.print(ProcessRace.table(race.ratios()));
  }

  private static List<String> with(List<String> command, String last) {
    return Stream.concat(command.stream(), Stream.of(last)).toList();
  }

  private static String[] with(String[] arguments, String last) {
    String[] all = java.util.Arrays.copyOf(arguments, arguments.length + 1);
    all[arguments.length] = last;
    return all;
  }
}
