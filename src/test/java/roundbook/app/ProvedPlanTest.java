package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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
    String start = start(folder.resolve("hill-cabin - rounds rev1.xlsx"));
    assertTrue(start.contains("Proved: no choice of these logs for these rounds"), start);
  }

  /** The figure stands where other programs read, and a batch that goes on has it too. */
  @Test
  void reportAndTablesHaveTheFigure() throws IOException {
    Path report = folder.resolve("report.csv");
    CrewFolder site = new CrewFolder(folder).tally(5, 1, 1);
    String tables = folder.resolve("tables").toString();
    for (String more : List.of("--tables=" + tables, "--resume")) {
      site.plan("--rounds=1", "--prove", "--report=" + report, more);
      List<String> lines = Files.readAllLines(report);
      int column = List.of(lines.get(0).split(",")).indexOf("better_at_most_percent");
      assertEquals("0", lines.get(1).split(",")[column], lines.toString());
    }
    assertTrue(site.said().contains("planned before"), site.said());
    Path table = folder.resolve("tables").resolve("nearness.csv");
    assertEquals("0,0,0,itself", Files.readAllLines(table).get(1));
  }

  /** A job that is always proved is proved when it is planned anew; what is cut stays. */
  @Test
  void aReplanIsProvedToo() throws Exception {
    CrewFolder site = new CrewFolder(folder).tally(5, 2, 1).plan("--rounds=2", "--set=Prove=yes");
    assertTrue(site.said().contains("csv: proved: no choice"), site.said());
    TypedBook.type(site.book(1), Map.of("Cut_1", "x"));
    assertEquals(0, site.replan(1), site.said());
    String proved = "roved: no choice of these logs for these rounds is better. What is cut stays.";
    assertTrue(site.said().contains("xlsx: p" + proved), site.said());
    assertTrue(start(site.book(2)).contains("P" + proved));
  }

  private static String start(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file);
        ReadableWorkbook book = new ReadableWorkbook(in)) {
      return book.getFirstSheet().read().stream().map(Row::toString).collect(Collectors.joining());
    }
  }
}
