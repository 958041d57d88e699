package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small things that people get wrong: each has a line that says what, where, and what to do. */
class WrongThingsTest {
  @TempDir Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "--set Gapp=1 | --set Gapp: error bad-setting: there is no setting Gapp.",
        "--set Chinkng_gap=1 | there is no setting Chinkng_gap. Was it Chinking_gap?",
        "--thickness 6ft | Log_thickness cannot be '6ft'",
        "--thickness 6ft | at most 48 in",
        "--gap -1 | Chinking_gap cannot be '-1'",
        "--gap -1 | at most 24 in",
        "--rounds abc | 1 to 200",
        "--rounds abc | --rounds: error bad-setting: Rounds cannot be 'abc'",
        "--set Waste_percent=-5 | a number, not under 0",
        "--units mm --gap 1m | at most 610 mm"
      })
  void aSettingThatCannotBeMeantStopsThePlan(String options, String words) throws IOException {
    List<String> args = new ArrayList<>(List.of("plan", tally(8).toString(), "--walls", "18x18"));
    args.addAll(Arrays.asList(options.split(" ")));
    assertEquals(3, run(args), err());
    assertTrue(err().contains(words), err());
    assertFalse(Files.exists(folder.resolve("tally - rounds rev1.xlsx")));
  }

  /** Hewn log walls over 40 ft are not built (common practice). */
  @ParameterizedTest
  @CsvSource({"80, true", "4, false"})
  void aWallOfUnheardHeightIsDoubted(String rounds, boolean said) throws IOException {
    run(List.of("plan", tally(16).toString(), "--walls", "18x18", "--rounds", rounds));
    assertEquals(said, err().contains("warning wall-high: " + rounds + " rounds come to"), err());
  }

  /** A workbook that keeps its only tally on a hidden sheet must not pass for one without logs. */
  @ParameterizedTest
  @CsvSource({"check, false", "check, true", "plan, false"})
  void aHiddenTallyIsNoTallyOfNoLogs(String command, boolean notes) throws IOException {
    Path file = folder.resolve("yard.xlsx");
    List<String> lines = new ArrayList<>(List.of("sheet Notes"));
    lines.addAll(notes ? List.of("yard behind the barn|none") : List.of());
    lines.addAll(List.of("sheet Logs hidden", "Log|Length ft|Butt in|Mid in|Tip in"));
    lines.add("1|24|14|13|12");
    BookText.write(lines, file);
    assertEquals(3, run(List.of(command, file.toString(), "--walls", "18x18")), err());
    String said = "Logs: error sheet-skipped: the sheet was not read: hidden: it holds a tally.";
    assertTrue(err().contains(said + " Name it with --sheet to read it."), err());
    assertFalse(err().contains("missing-column"), err());
    assertEquals(0, run(List.of("check", file.toString(), "--sheet", "Logs")), err());
  }

  @Test
  void aHiddenSheetOfSomethingElseIsNoTally() throws IOException {
    Path file = folder.resolve("yard.xlsx");
    BookText.write(List.of("sheet Empty", "sheet Notes hidden", "a note|none"), file);
    assertEquals(3, run(List.of("check", file.toString())), err());
    assertTrue(err().contains("error empty-file: there is no sheet with a tally in it"), err());
  }

  @Test
  void aFileThatIsNoCrewWorkbookIsToldFromOneTypedWrongly() throws IOException {
    assertEquals(3, run(List.of("replan", tally(8).toString())), err());
    assertTrue(err().contains("nothing was written: it is no crew workbook to read"), err());
  }

  @Test
  void aFolderIsMadeForANamedWorkbookToo() throws IOException {
    Path book = folder.resolve("new/folder/out.xlsx");
    assertEquals(
        0,
        run(List.of("plan", tally(8).toString(), "--walls", "18x18", "-o", book.toString())),
        err());
    assertTrue(Files.exists(book));
  }

  /**
   * Where no place of a round can be filled, the search has nothing to choose, and that is said.
   */
  @Test
  void wallsThatTheSampleHasNoRoundForAreNoFault() throws IOException {
    Path job = Files.copy(Path.of("samples", "metric-hut.xlsx"), folder.resolve("hut.xlsx"));
    int exit = run(List.of("plan", job.toString(), "--walls", "12x12"));
    assertTrue(exit == 3 || exit == 4, exit + err());
    assertTrue(err().contains("error too-few-logs: "), err());
  }

  @Test
  void aNameThatIsTakenIsSaidInWords() throws IOException {
    Path book = Files.createFile(folder.resolve("out.xlsx"));
    List<String> plan =
        List.of("plan", tally(8).toString(), "--walls", "18x18", "-o", book.toString());
    assertEquals(5, run(plan));
    assertTrue(err().contains("there is a file of that name already"), err());
    err.reset();
    assertEquals(5, run(List.of("new", book.toString())));
    assertTrue(err().contains("there is a file of that name already"), err());
    err.reset();
    assertEquals(2, run(List.of("new", folder.resolve("job.csv").toString())));
    assertTrue(err().contains("a job workbook is named .xlsx"), err());
  }

  @Test
  void aShortageNamesItsFileAndStandsInTheReport() throws IOException {
    Path report = folder.resolve("report.csv");
    assertEquals(
        4,
        run(
            List.of(
                "plan",
                tally(7).toString(),
                "--walls",
                "18x18",
                "--rounds",
                "2",
                "--report",
                report.toString())));
    assertTrue(err().contains("tally.csv: error too-few-logs: 2 rounds wanted"), err());
    assertTrue(Files.readString(report).contains("2 rounds wanted, the logs allow 1"));
  }

  @Test
  void roundsThatCannotGiveTheHeightNameHowManyWould() throws IOException {
    List<String> args =
        List.of("plan", tally(8).toString(), "--walls", "18x18", "--rounds", "2", "--height", "15");
    assertEquals(0, run(args), err());
    assertTrue(err().contains("outside the limits: about 1 round comes nearer"), err());
  }

  @Test
  void replanOfATextAsksForTheCrewWorkbook() throws IOException {
    assertEquals(3, run(List.of("replan", tally(8).toString())));
    assertTrue(err().contains("Give the crew workbook"), err());
  }

  @Test
  void openingsThatShareRoomOrNameNoWallAreErrors() throws IOException {
    Path job = job(true);
    assertEquals(3, run(List.of("check", job.toString())), err());
    String overlap = "Openings!3: error bad-opening: opening Window, wall S: overlaps opening Door";
    assertTrue(err().contains(overlap + " on row 2; it is left out. Correct the opening."), err());
    assertTrue(err().contains("Openings!4: error bad-opening: there is no wall Q."), err());
    assertFalse(err().contains("Openings!5"), "one beside the other is sound: " + err());
  }

  @Test
  void aWorkbookWithoutSettingsSaysThatDefaultsAreTaken() throws IOException {
    run(List.of("check", job(false).toString()));
    assertTrue(err().contains("job.xlsx: warning no-job-sheet: there is no sheet Job"), err());
    err.reset();
    run(List.of("check", job(true).toString()));
    assertFalse(err().contains("no-job-sheet"), err());
  }

  @Test
  void anEmptyLogListIsNoErrorWhereTheYardHasTheLogs() throws IOException {
    Path job = job(true);
    assertEquals(0, run(List.of("plan", job.toString(), "--yard", tally(8).toString())), err());
    assertFalse(err().contains("no-rows: there are headings but no logs under them. Fill"), err());
    err.reset();
    run(List.of("check", job.toString()));
    assertTrue(err().contains("error no-rows"), err());
  }

  /** A job of four walls with an empty log list and four openings, one over another. */
  private Path job(boolean settings) throws IOException {
    Path file = folder.resolve("job.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream stream = Files.newOutputStream(file)) {
      if (settings) {
        sheet(book, "Job", "Setting,Value", "Rounds,1");
      }
      sheet(book, "Walls", "Wall,Outside length", "N,216", "E,216", "S,216", "W,216");
      sheet(book, "Logs", "Log,Length ft,Butt in,Mid in,Tip in");
      sheet(
          book,
          "Openings",
          "Name,Wall,From left,Width,Sill,Head",
          "Door,S,60,40,0,80",
          "Window,S,70,36,30,70",
          "Hatch,Q,70,36,30,70",
          "Vent,S,100,20,30,70");
      book.write(stream);
    }
    return file;
  }

  private static void sheet(XSSFWorkbook book, String name, String... lines) {
    XSSFSheet sheet = book.createSheet(name);
    for (int number = 0; number < lines.length; number++) {
      XSSFRow row = sheet.createRow(number);
      String[] cells = lines[number].split(",");
      for (int column = 0; column < cells.length; column++) {
        row.createCell(column).setCellValue(cells[column]);
      }
    }
  }

  private Path tally(int logs) throws IOException {
    StringBuilder text = new StringBuilder("Log,Length ft,Butt in,Mid in,Tip in\n");
    for (int log = 1; log <= logs; log++) {
      text.append(log).append(",24,14,13,12\n");
    }
    return Files.writeString(folder.resolve("tally.csv"), text);
  }

  private int run(List<String> args) {
    return Quick.run(args.toArray(new String[0]), new PrintStream(out), new PrintStream(err));
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
