package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan of few moves gives way to a better one while it is proved, and the proof is of that. */
class ProvedPlanTest {
  /** Moves after which a choice is poor for sure. */
  private static final long MOVES = 10;

  @TempDir Path folder;

  @Test
  void theBetterPlanIsWritten() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream told = new PrintStream(out, true);
    String[] args = {
      "plan",
      "samples/hill-cabin.xlsx",
      "--rounds",
      "1",
      "--prove=60s",
      "--no-pictures",
      "-o",
      folder.toString()
    };
    assertEquals(0, Main.run(args, told, told, MOVES), out.toString());
    String said = out.toString();
    assertTrue(said.contains("came upon a choice that is better by "), said);
    assertTrue(said.contains("proved: no choice of these logs for these rounds is better"), said);
    String start = start();
    assertTrue(start.contains("Proved: no choice of these logs for these rounds"), start);
  }

  private String start() throws IOException {
    try (InputStream in = Files.newInputStream(folder.resolve("hill-cabin - rounds rev1.xlsx"));
        ReadableWorkbook book = new ReadableWorkbook(in)) {
      return book.getFirstSheet().read().stream().map(Row::toString).collect(Collectors.joining());
    }
  }
}
