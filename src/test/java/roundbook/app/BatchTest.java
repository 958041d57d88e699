package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many files in one run: each apart, none stopping the rest, the same with any number at once. */
class BatchTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Test
  void goesOnAfterABadFileAndReportsEach() throws IOException {
    mixed(folder);
    Path report = folder.resolve("report.csv.out");
    int exit = run(folder.toString(), "--walls", "18x18", "--report", report.toString());
    assertEquals(5, exit, err.toString());
    List<String> rows = Files.readAllLines(report);
    assertEquals(5, rows.size());
    assertTrue(rows.get(1).contains("a.csv,0,"), rows.get(1));
    assertTrue(rows.get(2).contains("b.csv,3,"), rows.get(2));
    assertTrue(rows.get(4).contains("d.xlsx,5,"), rows.get(4));
    assertEquals(2, workbooks(folder).size());
    String nothing =
        "nothing was planned: there is no usable log: no headings of a tally were found: a length"
            + " and a butt, mid or tip diameter";
    assertTrue(rows.get(2).contains(nothing), rows.get(2));
    String said = err.toString();
    assertTrue(said.contains("3  " + path("b.csv") + "  " + nothing), said);
    assertTrue(said.contains("0  " + path("a.csv") + "  " + path("a - rounds rev1.xlsx")), said);
    String end = "4 files: 2 done, 1 with errors, 1 not read or not written";
    assertTrue(said.strip().endsWith(end), said);
  }

  /** What a check finds wrong first stands in the report too, and a warning that counts. */
  @Test
  void aCheckTellsInTheReportWhyAFileFailed() throws IOException {
    mixed(folder);
    Files.writeString(folder.resolve("e.csv"), "Log,Length ft,Butt in,Tip in\n1,24,14,12\n");
    Path report = folder.resolve("report.csv.out");
    run("check", folder.toString(), "--strict", "--report", report.toString());
    List<String> rows = Files.readAllLines(report);
    assertTrue(rows.get(1).endsWith("a.csv,0,,0,8,0,0,,0,0,"), rows.get(1));
    assertTrue(rows.get(2).contains("no headings of a tally were found"), rows.get(2));
    assertTrue(rows.get(5).contains("there is no middle diameter: it is estimated"), rows.get(5));
    assertTrue(err.toString().contains("e.csv: 1 log read, 0 errors, 1 warning"), err.toString());
  }

  /** A shortage that leaves no round at all is said with the file's name as well. */
  @Test
  void logsThatMakeNoRoundAreSaidWithTheirFile() throws IOException {
    Path file = folder.resolve("a.csv");
    Files.writeString(file, "Log,Length ft,Butt in,Mid in,Tip in\n1,24,14,13,12\n");
    assertEquals(4, run(file.toString(), "--walls", "18x18"), err.toString());
    assertTrue(err.toString().startsWith("a.csv: error too-few-logs: "), err.toString());
  }

  /** Two files of one name are two jobs: no workbook or table of one follows the other's. */
  @Test
  void namesakesFromOtherFoldersAreKeptApart() throws IOException {
    Path out = folder.resolve("out");
    Path tables = folder.resolve("tables");
    List<String> named = List.of("north/hut/a.csv", "south/hut/a.csv", "south/b.csv");
    for (String each : named) {
      Path file = folder.resolve(each);
      Files.createDirectories(file.getParent());
      mixed(file.getParent());
    }
    List<String> args = new ArrayList<>(named.stream().map(each -> path(each)).toList());
    args.set(2, path("south/a.csv"));
    args.addAll(List.of("--walls", "18x18", "-o", out.toString(), "--tables", tables.toString()));
    assertEquals(0, run(args.toArray(String[]::new)), err.toString());
    for (String each : List.of("north/hut", "south/hut", "south")) {
      assertEquals(1, workbooks(out.resolve(each)).size(), each);
      assertTrue(Files.exists(tables.resolve(each).resolve("a.csv").resolve("logs.csv")), each);
    }
    assertEquals(List.of(), workbooks(out));
    args.add("--resume");
    assertEquals(0, run(args.toArray(String[]::new)), err.toString());
    assertEquals(1, workbooks(out.resolve("south")).size(), "found again where it was put");
    assertEquals(0, run(path("north/hut/a.csv"), "--walls", "18x18", "-o", out.toString()));
    assertEquals(1, workbooks(out).size(), "a file alone needs no folder of its own");
  }

  /** A tally saved in two kinds makes two jobs in one batch. */
  @Test
  void filesThatDifferInTheirEndingAloneAreKeptApart() throws IOException {
    mixed(folder);
    Files.copy(folder.resolve("a.csv"), folder.resolve("a.txt"));
    String[] args = {path("a.csv"), path("a.txt"), path("c.csv"), "--walls", "18x18", "--resume"};
    assertEquals(0, run(args), err.toString());
    List<String> all =
        List.of("a.csv - rounds rev1.xlsx", "a.txt - rounds rev1.xlsx", "c - rounds rev1.xlsx");
    assertEquals(all, names());
    assertEquals(0, run(args), err.toString());
    assertEquals(all, names(), "found again");
    assertEquals(0, run(path("a.txt"), "--walls", "18x20"), err.toString());
    assertTrue(names().contains("a.txt - rounds rev2.xlsx"), "alone it keeps the name it has");
    assertEquals(0, run("replan", path("a.csv - rounds rev1.xlsx")), err.toString());
    assertTrue(names().contains("a.csv - rounds rev2.xlsx"), names().toString());
    assertFalse(err.toString().contains("other-input"), err.toString());
    assertEquals(0, run("replan", path("a.csv - rounds rev1.xlsx")), err.toString());
    assertTrue(names().contains("a.csv - rounds rev3.xlsx"), names().toString());
    String newer =
        "a.csv - rounds rev1.xlsx: warning other-input: a.csv - rounds rev2.xlsx stands already;"
            + " what was typed there is not in this plan. Run replan with the newest revision if"
            + " that was typed in.";
    assertTrue(err.toString().contains(newer), err.toString());
  }

  @Test
  void aRevisionThatFollowsAnotherFileSaysSo() throws IOException {
    mixed(folder);
    Files.copy(folder.resolve("a.csv"), folder.resolve("a.txt"));
    assertEquals(0, run(path("a.csv"), "--walls", "18x18"), err.toString());
    assertEquals(0, run(path("a.csv"), "--walls", "18x20"), err.toString());
    assertEquals(0, run("replan", path("a - rounds rev2.xlsx")), err.toString());
    assertFalse(err.toString().contains("other-input"), err.toString());
    assertEquals(3, run(path("a.txt"), "--walls", "18x18", "--strict"), "said as a warning");
    assertTrue(names().contains("a - rounds rev4.xlsx"), names().toString());
    String said =
        "a.txt: warning other-input: the revision before this one, a - rounds rev3.xlsx, was made"
            + " from another file, a.csv.";
    assertTrue(err.toString().contains(said), err.toString());
  }

  @Test
  void aFileThatIsNamedTwiceIsReadOnce() throws IOException {
    mixed(folder);
    String again = folder.resolve("..").resolve(folder.getFileName()).resolve("a.csv").toString();
    assertEquals(0, run(path("a.csv"), again, "--walls", "18x18"), err.toString());
    assertEquals(List.of("a - rounds rev1.xlsx"), names());
  }

  private List<String> names() throws IOException {
    return workbooks(folder).stream().map(book -> book.getFileName().toString()).toList();
  }

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void ownWorkbooksAreNoInputOfTheNextRun() throws IOException {
    mixed(folder);
    run(folder.toString(), "--walls", "18x18");
    run(folder.toString(), "--walls", "18x18");
    assertEquals(4, workbooks(folder).size(), "a second revision of each, and nothing else");
  }

  @Test
  void goesOnWhereAnEarlierRunStopped() throws IOException {
    mixed(folder);
    Path first = folder.resolve("a.csv");
    assertEquals(0, run(first.toString(), "--walls", "18x18"), err.toString());
    byte[] done = Files.readAllBytes(folder.resolve("a - rounds rev1.xlsx"));
    Path report = folder.resolve("report.csv.out");
    run(folder.toString(), "--walls", "18x18", "--resume", "--report", report.toString());
    assertEquals(2, workbooks(folder).size(), "one for each sound tally");
    assertArrayEquals(done, Files.readAllBytes(folder.resolve("a - rounds rev1.xlsx")));
    assertTrue(Files.readAllLines(report).get(1).endsWith("planned before"), "and the report says");
    run(folder.toString(), "--walls", "18x20", "--resume");
    assertEquals(4, workbooks(folder).size(), "other walls are another job");
    Files.writeString(first, Files.readString(first) + "\n");
    run(folder.toString(), "--walls", "18x20", "--resume");
    assertEquals(5, workbooks(folder).size(), "a changed tally is planned again");
    Files.writeString(folder.resolve("roundbook-words.txt"), "Kopfende = tip\n");
    run(first.toString(), "--walls", "18x20", "--resume");
    assertEquals(6, workbooks(folder).size(), "other words may read it otherwise");
    run(first.toString(), "--walls", "18x20", "--resume");
    assertEquals(6, workbooks(folder).size(), "the same words do not");
  }

  /** The order of an unordered map changes from process to process; this is seen in three. */
  @Test
  void goesOnInAnotherProcessWithSeveralSettings() throws IOException {
    mixed(folder);
    String[] args = {
      "plan",
      path("a.csv"),
      "--walls",
      "18x18",
      "--resume",
      "--no-pictures",
      "--rounds",
      "2",
      "--gap",
      "1",
      "--overhang",
      "4",
      "--seed",
      "3",
      "--set",
      "Job_name=Hut"
    };
    List<String> planned = new ArrayList<>();
    for (int process = 0; process < 3; process++) {
      planned.add(OwnProcess.run(folder, List.of("-XX:TieredStopAtLevel=1"), args).said());
    }
    assertEquals(List.of("a - rounds rev1.xlsx"), names(), planned.toString());
    assertTrue(planned.get(1).contains("planned before"), planned.toString());
    assertTrue(planned.get(2).contains("planned before"), planned.toString());
  }

  @Test
  void subfoldersAreReadOnlyWhenAsked() throws IOException {
    Path below = Files.createDirectories(folder.resolve("yard/deck"));
    mixed(below);
    assertEquals(5, run(folder.toString(), "--walls", "18x18"), "no file at all");
    assertEquals(0, workbooks(below).size());
    assertEquals(5, run(folder.toString(), "--walls", "18x18", "--recursive"));
    assertEquals(2, workbooks(below).size());
  }

  @Test
  void aFolderThatIsNotThereIsMade() throws IOException {
    mixed(folder);
    Path out = folder.resolve("for the crew/2");
    run(folder.toString(), "--walls", "18x18", "-o", out.toString());
    assertEquals(2, workbooks(out).size());
    assertEquals(0, workbooks(folder).size());
  }

  @Test
  void severalFilesDoNotGoIntoOneWorkbook() throws IOException {
    mixed(folder);
    String book = folder.resolve("all.xlsx").toString();
    assertEquals(2, run(folder.toString(), "--walls", "18x18", "--force", "-o", book));
    assertTrue(err.toString().contains("cannot all be written to " + book), err.toString());
    assertTrue(Files.notExists(Path.of(book)));
  }

  @Test
  void patternsAreExpandedByTheProgram() throws IOException {
    mixed(folder);
    run(folder.resolve("[ac].csv").toString(), "--walls", "18x18");
    assertEquals(2, workbooks(folder).size());
  }

  @Test
  void anyNumberAtOnceGivesTheSameBytesAndWords() throws IOException {
    Path one = Files.createDirectory(folder.resolve("one"));
    Path two = Files.createDirectory(folder.resolve("two"));
    mixed(one);
    mixed(two);
    run(one.toString(), "--walls", "18x18", "-j", "1");
    String said = err.toString(StandardCharsets.UTF_8).replace(one.toString(), "");
    err.reset();
    run(two.toString(), "--walls", "18x18", "-j", "4");
    assertEquals(said, err.toString(StandardCharsets.UTF_8).replace(two.toString(), ""));
    for (Path book : workbooks(one)) {
      Path twin = two.resolve(book.getFileName());
      assertArrayEquals(Files.readAllBytes(book), Files.readAllBytes(twin));
    }
  }

  @Test
  void twoRunsAtOnceTakeRevisionsOfTheirOwn() throws Exception {
    Files.writeString(folder.resolve("a.csv"), good());
    Thread other = new Thread(() -> run(folder.resolve("a.csv").toString(), "--walls", "18x18"));
    other.start();
    run(folder.resolve("a.csv").toString(), "--walls", "18x18");
    other.join();
    assertEquals(2, workbooks(folder).size());
  }

  private static void mixed(Path into) throws IOException {
    Files.writeString(into.resolve("a.csv"), good());
    Files.writeString(into.resolve("b.csv"), "nothing,of,use\n1,2,3\n");
    Files.writeString(into.resolve("c.csv"), good());
    Files.write(into.resolve("d.xlsx"), new byte[] {'P', 'K', 3, 4, 0, 0, 1, 2, 3});
    Files.writeString(into.resolve("~$a.csv"), "lock");
  }

  private static String good() {
    StringBuilder text = new StringBuilder("Log,Length ft,Butt in,Mid in,Tip in\n");
    for (int i = 1; i <= 8; i++) {
      text.append(i).append(",24,14.5,13,12\n");
    }
    return text.toString();
  }

  private static List<Path> workbooks(Path in) throws IOException {
    try (Stream<Path> files = Files.list(in)) {
      return files.filter(file -> file.toString().contains(" - rounds rev")).sorted().toList();
    }
  }

  private int run(String... args) {
    return Quick.run(
        args,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }
}
