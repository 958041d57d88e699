package roundbook.sheet.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.sheet.SampleBook;

class SameBytesTest {
  @TempDir Path folder;

  /** Writes the sample book to the path given; run as a process of its own. */
  public static void main(String[] arguments) throws IOException {
    Files.write(Path.of(arguments[0]), BookWriterTest.written(SampleBook.book()));
  }

  @ParameterizedTest
  @CsvSource({
    "en-US, America/Vancouver",
    "de-DE, Europe/Berlin",
    "tr-TR, Asia/Kolkata",
    "ar-EG-u-nu-arab, Pacific/Kiritimati"
  })
  void aPlaceOnEarthLeavesNoTrace(String language, String zone) throws IOException {
    byte[] here = BookWriterTest.written(SampleBook.book());
    Locale locale = Locale.getDefault();
    TimeZone timeZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertArrayEquals(here, BookWriterTest.written(SampleBook.book()));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(timeZone);
    }
  }

  @Test
  void booksWrittenSideBySideAreTheSame() throws IOException {
    byte[] alone = BookWriterTest.written(SampleBook.book());
    List<byte[]> together =
        IntStream.range(0, 12).parallel().mapToObj(index -> sampleBytes()).toList();
    together.forEach(bytes -> assertArrayEquals(alone, bytes));
  }

  private static byte[] sampleBytes() {
    try {
      return BookWriterTest.written(SampleBook.book());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Test
  void everyJavaOfThisMachineWritesTheSame() throws IOException, InterruptedException {
    List<Path> javas = javas();
    assumeTrue(javas.size() > 1, "SKIPPED: only one Java of 17 or later is installed");
    byte[] here = BookWriterTest.written(SampleBook.book());
    for (Path java : javas) {
      Path out = folder.resolve("out.xlsx");
      Process process =
          new ProcessBuilder(
                  java.toString(),
                  "-Duser.timezone=Asia/Tokyo",
                  "-Duser.language=fr",
                  "-cp",
                  System.getProperty("java.class.path"),
                  SameBytesTest.class.getName(),
                  out.toString())
              .inheritIO()
              .start();
      assertEquals(0, process.waitFor(), java.toString());
      assertArrayEquals(here, Files.readAllBytes(out), java.toString());
    }
  }

  /** Returns this Java and those beside it whose version is 17 or later. */
  private static List<Path> javas() throws IOException {
    Path home = Path.of(System.getProperty("java.home")).toRealPath();
    List<Path> javas = new ArrayList<>();
    try (Stream<Path> beside = Files.list(home.getParent())) {
      for (Path other : beside.sorted().toList()) {
        Path release = other.resolve("release");
        boolean whole = Files.isExecutable(other.resolve("bin/java")) && Files.exists(release);
        if (whole && !Files.isSymbolicLink(other) && version(release) >= 17) {
          javas.add(other.resolve("bin/java"));
        }
      }
    }
    return javas;
  }

  private static int version(Path release) throws IOException {
    return Files.readAllLines(release).stream()
        .filter(line -> line.startsWith("JAVA_VERSION="))
        .map(line -> line.replaceAll("\\D+(\\d+).*", "$1"))
        .mapToInt(Integer::parseInt)
        .findFirst()
        .orElse(0);
  }
}
