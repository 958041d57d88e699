package roundbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Times whole runs on the sample job, as multiples of "java -version"; those of an app image too
 * where {@code -Droundbook.image} names its launcher.
 */
class StartUpBenchmark {
  private static final int ROUNDS = 5;

  @TempDir private Path folder;

  @Test
  void wholeRunsOfTheSampleJob() throws IOException, InterruptedException {
    String jar = System.getProperty("roundbook.jar");
    assertTrue(Files.isRegularFile(Path.of(jar)), "package the program first");
    String job = Path.of("samples", "hill-cabin.xlsx").toAbsolutePath().toString();
    String out = folder.toString();
    ProcessRace race =
        new ProcessRace(folder, ROUNDS)
            .java("java -version", "-version")
            .java("jar --version", "-jar", jar, "--version")
            .java("jar check", "-jar", jar, "check", job)
            .java("jar plan", "-jar", jar, "plan", "-o", out, job)
            .java("jar plan, with its options", options(jar), "plan", "-o", out, job);
    String image = System.getProperty("roundbook.image", "");
    if (!image.isEmpty()) {
      race.add("image --version", List.of(image, "--version"))
          .add("image plan", List.of(image, "plan", "-o", out, job));
    }
    System.out.print(ProcessRace.table(race.ratios()));
  }

  /** Returns the file of options that is started with, but for the folder of its jar. */
  private String options(String jar) throws IOException {
    String options =
        Files.readString(Path.of("src", "launch", "roundbook"))
            .replace("target/roundbook.jar", jar);
    return "@" + Files.writeString(folder.resolve("options"), options);
  }
}
