package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.poi.xssf.extractor.XSSFExcelExtractor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run that is interrupted while it chooses logs keeps the best plan so far, and says so. */
@Tag("long")
class InterruptTest {
  private static final long INTERRUPT = 1 << (2 - 1);

  /** With the engine interpreted a choice takes minutes, and everything else its usual time. */
  private static final List<String> SLOW =
      List.of("-XX:CompileCommand=quiet", "-XX:CompileCommand=exclude,roundbook.balance.*::*");

  @TempDir Path folder;
  @TempDir Path logs;
  private Path tally;
  private Path said;
  private Path told;

  @BeforeEach
  void copyTheSample() throws IOException {
    assumeFalse(System.getProperty("os.name").startsWith("Windows"), "signals of POSIX");
    assumeFalse(ignoresInterrupts(), "this run was started with interrupts ignored, as in nohup");
    tally = folder.resolve("tally.csv");
    said = logs.resolve("said.log");
    told = logs.resolve("told.log");
    Files.copy(Path.of("samples", "hill-cabin-tally.csv"), tally);
  }

  @Test
  void keepsTheBestPlanSoFar() throws IOException, InterruptedException {
    Process run = choosing(tally);
    signal(run, "INT");
    assertTrue(run.waitFor(100, TimeUnit.SECONDS), "it goes on");
    String text = Files.readString(said);
    assertEquals(130, run.exitValue(), text);
    assertTrue(text.contains("tally.csv: warning search-stopped: the search was stopped"), text);
    Path book = folder.resolve("tally - rounds rev1.xlsx");
    assertTrue(text(book).contains("the search was stopped early"), "the workbook says so");
    String made = BookOrigin.read(book).orElseThrow().inputs();
    assertFalse(made.matches("[0-9a-f]{64}"), "not to be taken for a whole run: " + made);
  }

  @Test
  void beginsNoFurtherFile() throws IOException, InterruptedException {
    Path other = Files.copy(tally, folder.resolve("zweite.csv"));
    Process run = choosing(tally, other);
    signal(run, "TERM");
    assertTrue(run.waitFor(100, TimeUnit.SECONDS), "it goes on");
    String text = Files.readString(said);
    assertEquals(143, run.exitValue(), text);
    assertTrue(Files.exists(folder.resolve("tally - rounds rev1.xlsx")), text);
    assertTrue(text.contains("zweite.csv: the run was stopped before it was planned"), text);
    assertFalse(Files.exists(folder.resolve("zweite - rounds rev1.xlsx")), text);
  }

  @Test
  void aSecondInterruptEndsItAtOnce() throws IOException, InterruptedException {
    Process run = choosing(tally);
    signal(run, "INT");
    for (int waits = 0; waits < 20_000 && !saidAgain() && run.isAlive(); waits++) {
      Thread.sleep(5);
    }
    signal(run, "INT");
    assertTrue(run.waitFor(100, TimeUnit.SECONDS), "it goes on");
    assertEquals(130, run.exitValue(), Files.readString(said));
    assertFalse(Files.exists(folder.resolve("tally - rounds rev1.xlsx")), "it went on to write");
  }

  /** What was chosen before a proof is whole: nothing better is promised for letting it run. */
  @Test
  void aProofThatIsStoppedLeavesNoDoubtOfThePlan() throws IOException, InterruptedException {
    Process run =
        OwnProcess.start(
            said, List.of(), "plan", "--walls", "20x14", "--prove=5min", tally.toString());
    while (run.isAlive() && !Files.readString(said).contains("reckoning how near")) {
      Thread.sleep(20);
    }
    signal(run, "INT");
    assertTrue(run.waitFor(100, TimeUnit.SECONDS), "it goes on");
    String text = Files.readString(said);
    assertEquals(130, run.exitValue(), text);
    assertFalse(text.contains("search-stopped"), text);
    assertTrue(Files.exists(folder.resolve("tally - rounds rev1.xlsx")), text);
  }

  private boolean saidAgain() throws IOException {
    return Files.readString(said).contains("interrupt again to end at once");
  }

  /** A process hands on to its children which signals it ignores; Linux tells, a bit a signal. */
  private static boolean ignoresInterrupts() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return false;
    }
    String mask = Files.readString(status).replaceAll("(?s).*SigIgn:\\s*([0-9a-f]+).*", "$1");
    return (Long.parseUnsignedLong(mask, 16) & INTERRUPT) != 0;
  }

  /** Starts a run and waits until it chooses logs. */
  private Process choosing(Path... files) throws IOException, InterruptedException {
    String[] arguments = new String[files.length + 7];
    List<String> rest = List.of("plan", "--walls", "20x14", "--rounds", "8", "--log");
    rest.toArray(arguments);
    arguments[rest.size()] = told.toString();
    for (int i = 0; i < files.length; i++) {
      arguments[rest.size() + 1 + i] = files[i].toString();
    }
    Process run = OwnProcess.start(said, SLOW, arguments);
    while (run.isAlive()
        && !(Files.exists(told) && Files.readString(told).contains("choosing logs"))) {
      Thread.sleep(20);
    }
    assertTrue(run.isAlive(), () -> "ended before it was interrupted");
    return run;
  }

  private static String text(Path book) throws IOException {
    try (XSSFWorkbook read = new XSSFWorkbook(Files.newInputStream(book));
        XSSFExcelExtractor text = new XSSFExcelExtractor(read)) {
      return text.getText();
    }
  }

  private static void signal(Process run, String name) throws IOException, InterruptedException {
    new ProcessBuilder("kill", "-" + name, String.valueOf(run.pid())).start().waitFor();
  }
}
