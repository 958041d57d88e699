package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/** Gives a file that may do harm to every command that opens files, and checks what is said. */
final class HostileRun {
  private static final Duration MOST = Duration.ofSeconds(15);

  private final Path folder;

  HostileRun(Path folder) {
    this.folder = folder;
  }

  /** What is to become of a file. */
  enum Wanted {
    /** All 24 logs are read. */
    READ,
    /** It is refused in one line. */
    REFUSED,
    /** Either of the two. */
    EITHER
  }

  /** One run: its exit code and what it said. */
  private record Said(int exit, String text) {}

  /** Checks a file, plans it anew and compares it, and where it is refused plans it too. */
  void all(String name, byte[] bytes, Wanted wanted) {
    Path own = write(name, bytes);
    Said check = check(own, wanted);
    refused(own, "replan", "--no-pictures", own.toString());
    refused(own, "compare", own.toString(), own.toString());
    if (check.exit() != 0 && errors(check) == 1 && !check.text().contains("left out")) {
      refused(own, "plan", "--walls", "16x16", "--no-pictures", own.toString());
    }
  }

  private static void refused(Path file, String... command) {
    Said said = run(command);
    isClear(file, said, command[0]);
    assertTrue(said.exit() == 3 || said.exit() == 5, command[0] + ": " + said);
  }

  /** Checks a file. */
  void check(String name, byte[] bytes, Wanted wanted) {
    check(write(name, bytes), wanted);
  }

  private Said check(Path file, Wanted wanted) {
    Said said = run("check", file.toString());
    isClear(file, said, "check");
    if (wanted == Wanted.READ) {
      assertEquals(0, said.exit(), said.text());
      assertTrue(said.text().contains(": 24 logs read, 0 errors"), said.text());
    } else if (wanted == Wanted.REFUSED) {
      assertTrue(said.exit() == 3 || said.exit() == 5, said.toString());
      assertEquals(1, errors(said), said.text());
    }
    return said;
  }

  /** Every line names the file; a failure has its line, and nothing is the program's fault. */
  private static void isClear(Path file, Said said, String command) {
    String name = file.getFileName().toString();
    String whole = command + " " + name + ": " + said;
    assertTrue(List.of(0, 3, 4, 5).contains(said.exit()), whole);
    assertFalse(said.text().contains("Exception") || said.text().contains("fault"), whole);
    assertFalse(said.text().contains("\tat "), whole);
    boolean located =
        said.text().lines().allMatch(line -> line.startsWith(name) || line.startsWith("… and "));
    assertTrue(located || said.exit() == 0, whole);
    assertEquals(said.exit() == 3 || said.exit() == 5, errors(said) > 0, whole);
  }

  private static long errors(Said said) {
    return said.text().lines().filter(line -> line.contains(": error ")).count();
  }

  private static Said run(String... command) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    int exit = assertTimeoutPreemptively(MOST, () -> Quick.run(command, stream, stream));
    return new Said(exit, bytes.toString(StandardCharsets.UTF_8));
  }

  private Path write(String name, byte[] bytes) {
    try {
      Path own = Files.createDirectories(folder.resolve(name + ".d"));
      return Files.write(own.resolve(name), bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
