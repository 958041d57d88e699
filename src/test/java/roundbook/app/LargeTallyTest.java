package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tally far larger than any yard's is checked in little memory. */
class LargeTallyTest {
  private static final int LOGS = 300_000;
  private static final List<String> LITTLE = List.of("-Xmx96m");

  @TempDir Path folder;
  private Path tally;

  @BeforeEach
  void writeTally() throws IOException {
    tally = folder.resolve("tally.csv");
    try (BufferedWriter out = Files.newBufferedWriter(tally)) {
      out.write("Log,Length (ft),Butt (in),Mid (in),Tip (in)\n");
      for (int i = 0; i < LOGS; i++) {
        double mid = 9 + i % 37 / 8.0;
        out.write(i + "," + (14 + i % 17) + "," + (mid + 1) + "," + mid + "," + (mid - 1) + "\n");
      }
    }
  }

  @Test
  void holdsNoLogs() {
    OwnProcess run = OwnProcess.run(folder, LITTLE, "check", tally.toString());
    assertEquals(0, run.exit(), run.said());
    assertTrue(run.said().contains(LOGS + " logs read, 0 errors, 0 warnings"), run.said());
  }

  @Test
  void writesItsTablesAsItReads() throws IOException {
    Path tables = folder.resolve("tables");
    String[] check = {"check", tally.toString(), "--tables", tables.toString()};
    OwnProcess run = OwnProcess.run(folder, LITTLE, check);
    assertEquals(0, run.exit(), run.said());
    try (Stream<String> lines = Files.lines(tables.resolve("logs.csv"))) {
      assertEquals(LOGS + 1, lines.count());
    }
  }

  @Test
  void saysWhenMemoryIsShort() {
    OwnProcess run = OwnProcess.run(folder, List.of("-Xmx24m"), "check", tally.toString());
    assertEquals(5, run.exit(), run.said());
    assertTrue(run.said().contains("tally.csv: error too-large: it needs more memory"), run.said());
    assertEquals(1, run.said().lines().count(), run.said());
  }
}
