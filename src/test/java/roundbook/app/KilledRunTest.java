package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.sheet.kind.Intact;

/** Runs killed at any moment: every workbook that stands is whole, and the next run goes on. */
@Tag("long")
class KilledRunTest {
  private static final int KILLS = Integer.getInteger("kills", 8);
  private static final List<String> QUICK = List.of("-XX:TieredStopAtLevel=1");

  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void leavesWholeWorkbooksOnly() throws IOException, InterruptedException {
    Path job = Files.copy(Path.of("samples", "hill-cabin.xlsx"), folder.resolve("cabin.xlsx"));
    byte[] input = Files.readAllBytes(job);
    long usual = millisecondsOf(job);
    SplittableRandom random = new SplittableRandom(20260108);
    for (int kill = 0; kill < KILLS; kill++) {
      Process run = OwnProcess.start(logs.resolve("said.log"), QUICK, "plan", job.toString());
      // Most of a run's time goes before it writes; its last third is what matters.
      long wait = usual / 2 + random.nextLong(usual * 2 / 3);
      if (!run.waitFor(wait, TimeUnit.MILLISECONDS)) {
        run.destroyForcibly().waitFor();
      }
      allWhole();
    }
    assertEquals(0, OwnProcess.run(logs, QUICK, "plan", job.toString()).exit());
    assertTrue(allWhole() >= 2, "the first run and the last");
    assertTrue(java.util.Arrays.equals(input, Files.readAllBytes(job)), "the input is as it was");
  }

  private long millisecondsOf(Path job) {
    long start = System.nanoTime();
    assertEquals(0, OwnProcess.run(logs, QUICK, "plan", job.toString()).exit());
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }

  private long allWhole() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> books =
          files.filter(file -> file.getFileName().toString().contains(" - rounds rev")).toList();
      List<Path> named = books.stream().filter(file -> !isTemporary(file)).toList();
      for (Path book : named) {
        Intact.check(book);
      }
      return named.size();
    }
  }

  private static boolean isTemporary(Path file) {
    return file.getFileName().toString().endsWith(".part");
  }
}
