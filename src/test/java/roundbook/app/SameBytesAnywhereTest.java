package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same input gives the same bytes, whatever machine it is planned on. */
@Tag("long")
class SameBytesAnywhereTest {
  private static final List<String> HERE = List.of("-XX:TieredStopAtLevel=1");
  private static final String[] SAMPLES = {"hill-cabin.xlsx", "metric-hut.xlsx"};

  @TempDir Path folder;
  private Path expected;

  @BeforeEach
  void planHere() throws IOException {
    expected = planned("here", javaHome(), HERE, "1");
  }

  @Test
  void inOtherLanguagesTimeZonesAndEncodings() throws IOException {
    assertSame(
        planned(
            "turkish",
            javaHome(),
            List.of(
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Pacific/Chatham",
                "-Dfile.encoding=ISO-8859-9"),
            "1"));
    assertSame(
        planned(
            "arabic",
            javaHome(),
            List.of(
                "-Duser.language=ar",
                "-Duser.country=EG",
                "-Duser.timezone=America/St_Johns",
                "-Dfile.encoding=UTF-16"),
            "1"));
  }

  @Test
  void withSeveralFilesAtOnce() throws IOException {
    assertSame(planned("two", javaHome(), HERE, "2"));
  }

  /** A file alone is planned with the help of a second thread, one among others is not. */
  @Test
  void withEachFileAlone() throws IOException {
    Path out = Files.createDirectories(folder.resolve("alone"));
    for (String sample : SAMPLES) {
      String file = Path.of("samples", sample).toString();
      OwnProcess run = OwnProcess.run(javaHome(), folder, HERE, "plan", "-o", out.toString(), file);
      assertEquals(0, run.exit(), run.said());
    }
    assertSame(out);
  }

  /** Every other Java that lies beside this one; a machine with a single one tests nothing here. */
  @Test
  void onOtherJavas() throws IOException {
    for (Path home : otherJavas()) {
      assertSame(planned("on " + home.getFileName(), home, HERE, "1"));
    }
  }

  private static Path javaHome() {
    return Path.of(System.getProperty("java.home"));
  }

  private static List<Path> otherJavas() throws IOException {
    Path own = javaHome().toRealPath();
    try (Stream<Path> homes = Files.list(own.getParent())) {
      return homes
          .filter(home -> !Files.isSymbolicLink(home))
          .filter(home -> !home.equals(own) && Files.isExecutable(home.resolve("bin/java")))
          .sorted()
          .toList();
    }
  }

  private Path planned(String name, Path home, List<String> machine, String jobs)
      throws IOException {
    Path out = Files.createDirectories(folder.resolve(name));
    OwnProcess run =
        OwnProcess.run(
            home,
            folder,
            machine,
            "plan",
            "-j",
            jobs,
            "-o",
            out.toString(),
            Path.of("samples", SAMPLES[0]).toString(),
            Path.of("samples", SAMPLES[1]).toString());
    assertEquals(0, run.exit(), run.said());
    return out;
  }

  private void assertSame(Path other) throws IOException {
    for (String sample : SAMPLES) {
      String book = sample.replace(".xlsx", " - rounds rev1.xlsx");
      byte[] own = Files.readAllBytes(expected.resolve(book));
      assertArrayEquals(own, Files.readAllBytes(other.resolve(book)), other + " " + book);
    }
  }
}
