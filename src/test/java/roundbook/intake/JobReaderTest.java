package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.intake.JobReader.Findings;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.problem.Severity;
import roundbook.problem.words.Sentences;
import roundbook.table.Table;
import roundbook.table.Table.Mark;
import roundbook.units.Length;

/** The sheets of a job's files: which are read as what, and what is said of the others. */
class JobReaderTest {
  private static final Table YARD = tally("A1", "A2").table("Yard");

  private static final Table WALLS =
      Tally.of(
              "Wall|Outside length|Laid first (x)",
              "N|20 ft|x",
              "E|14 ft|",
              "S|20 ft|x",
              "W|14 ft|")
          .table("Walls");

  private static Tally tally(String one, String other) {
    return Tally.of(Tally.HEADINGS, one + "|18|14|13|12", other + "|20|15|14|13");
  }

  private static Read<Findings> read(String sheet, Table... tables) {
    Asked asked =
        new Asked(
            Map.of(),
            Optional.empty(),
            Optional.ofNullable(sheet),
            Optional.empty(),
            Optional.empty());
    return JobReader.read(List.of(tables), asked);
  }

  private static String tags(Read<Findings> read) {
    return read.value().orElseThrow().logs().stream()
        .map(Log::tag)
        .collect(Collectors.joining(" "));
  }

  @Test
  void everySheetWithATallyIsRead() {
    Read<Findings> read =
        read(null, YARD, tally("B1", "B2").table("Other"), Tally.of("words").table("Notes"));
    assertEquals("A1 A2 B1 B2", tags(read));
    assertEquals("sheet-skipped.no-columns", Tally.said(read.problems()));
  }

  /** Tags that are numbers of a load: the second sheet's get its name before them. */
  @Test
  void aTagOfTwoSheetsIsToldWithTheSecondOnesName() {
    Read<Findings> read = read(null, YARD, tally("A1", "B2").table("Pile"));
    assertEquals("A1 A2 Pile A1 B2", tags(read));
    assertEquals("A2 duplicate-id.kept", Tally.said(read.problems()));
    assertEquals(Severity.WARNING, read.problems().get(0).severity());
  }

  /** A log that stands twice on the second sheet is one log all the same. */
  @Test
  void aTagTwiceOnTheSecondSheetIsOneLog() {
    Table pile =
        Tally.of(
                Tally.HEADINGS,
                "A1|18|14|13|12",
                "A1|18|14|13|12",
                "A1|20|14|13|12",
                "A2|18|14|13|12")
            .table("Pile");
    Read<Findings> read = read(null, YARD, pile);
    assertEquals("A1 A2 Pile A1 Pile A2", tags(read));
    assertEquals(
        "A2 duplicate-id.kept, A3 duplicate-row, A4 duplicate-id.left-out, A5 duplicate-id.kept",
        Tally.said(read.problems()));
    assertEquals(
        "log A1 stands first on row 2; same values, skipped",
        read.problems().get(1).said().in(Sentences.english()));
  }

  /** A tag that is already what the sheet's name would make of another gets a number behind it. */
  @Test
  void aTagThatIsTakenGetsANumber() {
    Table first = tally("A1", "Pile A1").table("Yard");
    assertEquals(
        "A1 Pile A1 Pile A1-2 B1", tags(read(null, first, tally("A1", "B1").table("Pile"))));
  }

  @ParameterizedTest
  @CsvSource({"Yard, A1 A2", "yard, A1 A2", "Pile, B1 B2"})
  void aSheetThatIsAskedForIsReadAlone(String name, String tags) {
    Read<Findings> read = read(name, YARD, tally("B1", "B2").table("Pile"));
    assertEquals(tags, tags(read));
    assertEquals("", Tally.said(read.problems()));
  }

  @Test
  void aSheetThatIsNotThereIsAnError() {
    Read<Findings> read = read("Heap", YARD);
    assertEquals("sheet-skipped.no-sheet", Tally.said(read.problems()));
    assertEquals(Severity.ERROR, read.problems().get(0).severity());
  }

  /** A hidden tally is doubted beside another, and an error where there is no other. */
  @Test
  void hiddenSheetsAreNotRead() {
    Table hidden = tally("H1", "H2").mark(Mark.HIDDEN).table("Old");
    Read<Findings> beside = read(null, YARD, hidden);
    assertEquals("A1 A2", tags(beside));
    assertEquals(Severity.WARNING, beside.problems().get(0).severity());
    Read<Findings> alone = read(null, hidden);
    assertEquals("", tags(alone));
    assertTrue(alone.problems().stream().anyMatch(each -> each.severity() == Severity.ERROR));
    assertEquals("H1 H2", tags(read("Old", hidden)));
  }

  @Test
  void emptySheetsAndFilesAreSaid() {
    Table empty = Tally.of().table("Sheet2");
    assertEquals("sheet-skipped.empty", Tally.said(read(null, YARD, empty).problems()));
    assertEquals(
        "empty-file.no-tally, sheet-skipped.empty", Tally.said(read(null, empty).problems()));
  }

  /** An error where no list has a log, else a remark. */
  @Test
  void aListWithoutLogsIsAnErrorOnlyAlone() {
    Table bare = Tally.of(Tally.HEADINGS).table("Next load");
    assertEquals(Severity.ERROR, only(read(null, bare), "no-rows").severity());
    assertEquals(Severity.INFO, only(read(null, YARD, bare), "no-rows").severity());
  }

  private static Problem only(Read<Findings> read, String key) {
    return read.problems().stream()
        .filter(each -> each.said().key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  /** What an order workbook tells is no tally, in each language it is written in. */
  @ParameterizedTest
  @CsvSource({"Order", "Loads", "Bestellung", "B\u00E4ume", "Start"})
  void sheetsOfAnOrderArePassedOver(String name) {
    Read<Findings> read = read(null, YARD, tally("O1", "O2").table(name));
    assertEquals("A1 A2", tags(read));
    assertEquals(List.of(), read.problems());
  }

  @Test
  void aWholeJobIsRead() {
    Table job = Tally.of("Setting|Value|Unit", "Rounds|7|", "Overhang|4|in").table("Job");
    Table pins = Tally.of("Round|Wall|Log|Butt at|Why", "2|N|A1||", "3|S|Z9||").table("Pins");
    Table others = Tally.of("For|Count|Length|Mid at least", "plate|2|20 ft|9").table("Other_logs");
    Read<Findings> read = read(null, job, WALLS, YARD, pins, others);
    Job made = read.value().orElseThrow().job().orElseThrow();
    assertEquals(7, made.rules().rounds().orElseThrow());
    assertEquals(Length.ofInches(4), made.rules().overhang());
    assertEquals(List.of("A1"), made.pins().stream().map(pin -> pin.log()).toList());
    assertEquals("C3 bad-pin.no-log", Tally.said(read.problems()));
    assertEquals(1, made.others().size());
    assertEquals(2, made.logs().size());
  }

  @Test
  void wallsWithoutSettingsAreSaid() {
    assertEquals("no-job-sheet", Tally.said(read(null, WALLS, YARD).problems()));
  }

  /** A wish for a wall that the house has not is said, and the log may lie anywhere. */
  @Test
  void aWishForAWallThatIsNotThereIsDropped() {
    Table yard =
        Tally.of("Log|Length (ft)|Mid (in)|Wall|Round", "A1|18|13|Q|2", "A2|18|13|n|2")
            .table("Yard");
    Read<Findings> read = JobReader.read(List.of(yard), Tally.asked(Map.of(), "20x14"));
    List<Log> logs = read.value().orElseThrow().logs();
    assertEquals(Log.Wish.ANYWHERE, logs.get(0).place());
    assertEquals("N", logs.get(1).place().wall());
    assertEquals(true, Tally.said(read.problems()).contains("A2 bad-pin.no-wall"));
  }

  @Test
  void furtherTalliesAreReadForAJobThatIsKnown() {
    Job cabin =
        new Job(
            Jobs.rules(false),
            Jobs.building(Length.ofInches(240), Length.ofInches(168), Length.ofInches(6)),
            List.of(),
            List.of(),
            List.of());
    Read<Job> read = JobReader.logs(List.of(YARD), cabin.rules(), cabin.building(), Asked.NOTHING);
    assertEquals(2, read.value().orElseThrow().logs().size());
    assertEquals(cabin.building(), read.value().orElseThrow().building());
  }

  /** Every log goes to the taker and none is held; the same logs as when they are. */
  @Test
  void checkingGivesTheSameLogsAway() {
    List<Log> taken = new ArrayList<>();
    Read<?> checked = JobReader.check(List.of(YARD), Asked.NOTHING, rules -> taken::add);
    Read<Findings> read = read(null, YARD);
    assertEquals(read.value().orElseThrow().logs(), taken);
    assertEquals(read.problems(), checked.problems());
  }

  @Test
  void aWrongLineOfAUsersWordsIsSaid() {
    Asked own = Asked.NOTHING.with(List.of("Kopfende = tip", "Kopf = nonsense"));
    Table yard = Tally.of("Log|Length (ft)|Mid (in)|Kopfende (in)", "A1|18|13|12").table("");
    Read<Findings> read = JobReader.read(List.of(yard), own);
    assertEquals("12", Tally.inches(read.value().orElseThrow().logs().get(0).tip()));
    assertEquals(
        1,
        read.problems().stream()
            .filter(
                each ->
                    each.said()
                        .toString()
                        .equals("heading-doubtful.words(line=\"Kopf = nonsense\")"))
            .count());
  }

  /** Settings that hang together: half a crane, a step without a flat bed. */
  @ParameterizedTest
  @CsvSource({
    "Crane_wall, N, bad-setting.crane-half",
    "Crane_wall, Q, bad-setting.crane-wall",
    "Crane_off, 40 ft, bad-setting.crane-half",
    "Foundation_step, 7, bad-setting.foundation",
  })
  void settingsThatDoNotGoTogetherAreSaid(String name, String value, String said) {
    Asked half = Tally.asked(Map.of(name, value, "First_bed", "level"), "20x14");
    Read<Findings> read = JobReader.read(List.of(YARD), half);
    assertEquals(said, Tally.said(read.problems()));
  }

  @Test
  void settingsOfTheSheetGiveWayToTheOptions() {
    Table job = Tally.of("Setting|Value|Unit", "Overhang|4|", "Units|mm|").table("Job");
    Asked option = Tally.asked(Map.of("overhang", "100"), null);
    var rules = JobReader.rules(job, option).value().orElseThrow();
    assertEquals(Length.ofMillimetres(100), rules.overhang());
    assertTrue(rules.metric());
    assertFalse(
        JobReader.rules(job, Asked.NOTHING).value().orElseThrow().text(Setting.UNITS).isEmpty());
  }
}
