package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Checks that the build wrote the version in and that the program tells it. */
class VersionTest {
  @Test
  void theVersionIsANumberAndACommit() {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
    assertEquals(0, Main.run(new String[] {"--version"}, out, out));
    String line = said.toString(StandardCharsets.UTF_8).strip();
    assertTrue(
        line.matches("roundbook \\d+\\.\\d+\\.\\d+ \\(commit ([0-9a-f]{10}|unknown)\\)"), line);
  }
}
