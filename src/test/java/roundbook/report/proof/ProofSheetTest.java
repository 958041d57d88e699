package roundbook.report.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.page.TypedBox;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.report.ListFixtures;
import roundbook.report.LivePlans;
import roundbook.report.frame.CrewContext;
import roundbook.report.live.LiveContext;
import roundbook.report.proof.Lines.Line;
import roundbook.report.words.Words;
import roundbook.rounds.Verifier.Subject;
import roundbook.sheet.LibraryFormulas;
import roundbook.sheet.LibreOffice;
import roundbook.stack.Hewn;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** The sums of round 1, done again by hand, against the round's page. */
class ProofSheetTest {
  @TempDir Path folder;

  private static PlanFixtures inches() {
    return PlanFixtures.inches();
  }

  private static List<Line> sums(Plan plan) {
    return Lines.of(LiveContext.of(LivePlans.context(plan)));
  }

  private static List<Line> sums(Plan plan, int number) {
    return sums(plan).stream().filter(sum -> sum.number() == number).toList();
  }

  static Stream<Arguments> plans() {
    Length six = Length.ofInches(6);
    Length eight = Length.ofInches(8);
    return Stream.of(
        Arguments.of("inches", inches().plan(3)),
        Arguments.of("one round", inches().plan(1)),
        Arguments.of("starter", inches().set(Setting.FIRST_BED, "starter").plan(2)),
        Arguments.of("level", inches().set(Setting.FIRST_BED, "level").plan(2)),
        Arguments.of("two thicknesses", LivePlans.thick(inches().plan(2), six, eight, six, eight)),
        Arguments.of("openings", inches().withOpenings().plan(3)),
        Arguments.of("short logs", inches().withShortLogs().plan(6)),
        Arguments.of("metric", PlanFixtures.metric().plan(3)),
        Arguments.of("German", inches().set(Setting.LANGUAGE, "de").plan(2)),
        Arguments.of(
            "German, centimetres",
            PlanFixtures.metric().set(Setting.LANGUAGE, "de").set(Setting.UNITS, "cm").plan(2)),
        Arguments.of("exact mean", inches().set(Setting.SIZE_STEP, Length.ZERO).plan(2)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void everySumComesOutAsItIsPrinted(String name, Plan plan) {
    check(plan, name);
  }

  /** Rules drawn at random: whatever they are, the sums come out and end at the round's page. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void sumsOfRandomRulesEndAtThePage(int seed) {
    SplittableRandom random = new SplittableRandom(1900 + seed);
    boolean metric = seed % 3 == 0;
    PlanFixtures job = metric ? PlanFixtures.metric() : inches();
    long unit = metric ? 1 : 16;
    job.set(Setting.CHINKING_GAP, length(metric, random.nextInt(metric ? 12 : 8, 40), unit))
        .set(Setting.SIZE_STEP, length(metric, metric ? 5 : 1L << random.nextInt(2, 5), unit))
        .set(Setting.PRINT_STEP, length(metric, 1 + random.nextInt(2), unit))
        .set(Setting.OVERHANG, length(metric, random.nextInt(0, metric ? 75 : 49), unit))
        .set(Setting.SLOPE_RUN, new BigDecimal(List.of("2.5", "3", "4", "5").get(seed % 4)))
        .set(Setting.FIRST_BED, List.of("flat", "level", "starter").get(random.nextInt(3)))
        .set(Setting.LOG_THICKNESS, length(metric, metric ? 140 + seed : 80 + seed, unit));
    check(job.plan(1 + random.nextInt(4)), "seed " + seed);
  }

  private static Length length(boolean metric, long count, long parts) {
    return metric ? Length.ofMillimetres(count) : Length.ofInchFraction(count, parts);
  }

  private static void check(Plan plan, String name) {
    List<Line> sums = sums(plan);
    int line = 0;
    int last = 0;
    for (Line sum : sums) {
      line = sum.number() == last ? line + 1 : 0;
      last = sum.number();
      String where = name + ": " + sum.what() + ": " + sum.sum().now();
      double step = step(plan, sum.number(), line);
      double wanted = rounded(Longhand.of(sum.sum().now()), step);
      boolean inDecimals = plan.job().rules().sizeStep().isZero();
      double result = Longhand.of(sum.result().now());
      assertEquals(wanted, result, inDecimals ? 0.00011 : 1e-6, where);
    }
    assertEquals(plan.rounds() > 1 ? 8 : 7, last, name);
    assertEquals(List.of(), notOnThePage(plan), name);
  }

  /** Returns the step that a line is taken to; 0 where it comes out by itself. */
  private static double step(Plan plan, int number, int line) {
    LengthUnit unit = plan.job().rules().unit();
    double print = plan.job().rules().printStep().in(unit);
    double written = unit == LengthUnit.INCH ? 1e-4 : unit == LengthUnit.MILLIMETRE ? 0.01 : 0.001;
    boolean mean = number == 1 && line == 1 || number == 8 && line == 1;
    if (mean) {
      return written;
    }
    if (number == 1 && line == 2) {
      return plan.job().rules().sizeStep().in(unit);
    }
    boolean mark =
        number == 2
            || number == 3
            || number == 5 && line % 3 == 0
            || number == 6
            || number == 8 && line == 2;
    return mark ? print : 0;
  }

  private static double rounded(double value, double step) {
    return step == 0 ? value : Math.floor(Math.rint(value / step * 1e6) / 1e6 + 0.5) * step;
  }

  /** Returns the results that the pages of round 1 and of the wall do not have. */
  private static List<String> notOnThePage(Plan plan) {
    CrewContext context = LivePlans.context(plan);
    Sheet page = LivePlans.rounds(context).get(0);
    List<String> missing = new ArrayList<>();
    List<Line> marks = new ArrayList<>(sums(plan, 2));
    marks.addAll(sums(plan, 4));
    sums(plan, 5).stream().filter(sum -> sums(plan, 5).indexOf(sum) % 3 > 0).forEach(marks::add);
    marks.stream().filter(sum -> !isMark(page, sum)).forEach(sum -> missing.add(sum.toString()));
    for (Line sum : sums(plan, 6)) {
      boolean shown =
          ListFixtures.texts(page).stream()
              .anyMatch(text -> text.replaceAll(" [cm]m$", "").equals(sum.result().now()));
      if (!shown) {
        missing.add(sum.toString());
      }
    }
    for (int top : plan.rounds() > 1 ? new int[] {1, 3} : new int[] {1}) {
      String read = " " + sums(plan, 7).get(top).result().now() + " ";
      if (ListFixtures.texts(page).stream().noneMatch(text -> text.contains(read))) {
        missing.add(read);
      }
    }
    return missing;
  }

  /** Returns whether one of the four large marks is a result, alone or among those by wall. */
  private static boolean isMark(Sheet page, Line sum) {
    double wanted = Longhand.of(sum.result().now());
    return page.rows().headMap(6).values().stream()
        .flatMap(row -> row.values().stream())
        .anyMatch(cell -> is(cell, wanted, sum.result().now()));
  }

  private static boolean is(Cell cell, double wanted, String text) {
    Cell.Value value = cell.value() instanceof Cell.Formula made ? made.result() : cell.value();
    boolean huge =
        Stream.of(Role.MARK_HUGE, Role.MARK_HUGE_LOWER, Role.MARK, Role.MARK_LOWER)
            .anyMatch(cell.role()::equals);
    return value instanceof Cell.Number number
        ? huge && Math.abs(number.number() - wanted) < 0.0001
        : ListFixtures.shown(cell).startsWith(text + " ");
  }

  /**
   * The worked example: middles 13.5196, 13.9686, 13.6195 and 13.625, logs 6 in thick, gap 1, slope
   * 1:3, 3 in past the corner, the next round of size 13; reckoned apart by hand.
   */
  @Test
  void theWorkedExampleTypedIntoTheRoundsPage() throws Exception {
    Plan plan = inches().set(Setting.OVERHANG, Length.ofInches(3)).plan(2);
    Map<String, Object> typed = new TreeMap<>();
    List<Double> mids = List.of(13.5196, 13.9686, 13.6195, 13.625);
    List<Wall> walls = plan.job().building().walls();
    for (int i = 0; i < mids.size(); i++) {
      typed.put(TypedBox.MEASURED.named(1, walls.get(i).name()), mids.get(i));
      typed.put(TypedBox.MEASURED.named(2, walls.get(i).name()), 13.0);
    }
    Path book = LivePlans.written(folder.resolve("plan.xlsx"), LivePlans.book(plan));
    Path after = LibraryFormulas.recalculate(book, typed);
    List<String> wanted =
        List.of(
            "54.7327", "13.6832", "13 1/2", "3 1/8", "7 1/4", "4 1/8", "2", "2 1/8", "5 1/8", "9\"",
            "24' 6\"", "23' 9\"", "3 1/8", "7 1/4", "10 3/8", "14 1/2", "17 1/2", "14 3/8",
            "13.2598", "1 1/8");
    int row = firstRow(plan);
    for (int i = 0; i < wanted.size(); i++) {
      assertEquals(wanted.get(i), LibreOffice.value(after, "Proof!V" + (row + i)), "line " + i);
    }
    assertEquals("13.5196 + 13.9686 + 13.6195 + 13.625", LibreOffice.value(after, "Proof!M" + row));
  }

  private static int firstRow(Plan plan) {
    Sheet sheet = ListFixtures.only(ProofSheet.sheets(LivePlans.context(plan)));
    return ListFixtures.headRow(sheet, "Program's") + 1;
  }

  /** A mean of 13.24996 is written 13.25, whose half is the other one: two decimals more are. */
  @Test
  void aMeanBesideATieIsWrittenFiner() {
    Plan plan = inches().plan(2);
    Map<String, Hewn> hewn = new TreeMap<>();
    for (PiecePlan piece : plan.round(1)) {
      Length mid = Length.of(new BigDecimal("13.24996"), LengthUnit.INCH);
      hewn.put(
          piece.placed().first().piece().log().tag(),
          new Hewn(Optional.empty(), Optional.of(mid), Optional.empty()));
    }
    Plan beside = LivePlans.hewn(plan, hewn);
    Line size = sums(beside, 1).get(2);
    assertEquals("13.24996", size.sum().now());
    assertEquals("13", size.result().now());
    check(beside, "beside a tie");
  }

  @ParameterizedTest
  @CsvSource({"flat, 0 + 3 1/4, 3 1/4", "level, 0 + 3 1/4, 3 1/4", "starter, 4 1/4 + 3 1/4, 7 1/2"})
  void theBedIsUnderTheFirstCentreLine(String bed, String sum, String result) {
    Line first = sums(inches().set(Setting.FIRST_BED, bed).plan(2), 7).get(0);
    assertEquals(sum, first.sum().now());
    assertEquals(result, first.result().now());
  }

  @Test
  void theCountsAreTheVerifiers() {
    Plan plan = inches().plan(4);
    Sheet sheet = ListFixtures.only(ProofSheet.sheets(LivePlans.context(plan)));
    String said = String.join("\n", ListFixtures.texts(sheet));
    assertTrue(said.contains(plan.verdict().checks() + " checks, 0 faults"), said);
    plan.verdict().counts().values().forEach(count -> assertTrue(said.contains(": " + count)));
    assertTrue(said.contains("of 32 ends "), said);
    assertTrue(said.contains("not checked wood"), said);
    assertFalse(said.contains("warrant") && !said.contains("no warranty"), said);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void whateverIsCheckedHasItsWords(String language) {
    for (Subject subject : Subject.values()) {
      String key = "proof.checks." + subject.name().toLowerCase(Locale.ROOT);
      assertTrue(Words.of(language).has(key), key);
    }
  }

  @Test
  void aRoundThatIsCutHasNoProofAnyMore() {
    Plan plan = inches().plan(2);
    assertTrue(ProofSheet.has(plan));
    CutSize cut =
        new CutSize(plan.choice().courses().get(0).notch().size(), plan.job().rules().gap());
    AsBuilt built = AsBuilt.NOTHING.withCut(List.of(cut));
    Plan later = Planner.of(plan.job().withBuilt(built), plan.choice());
    assertEquals(List.of(), ProofSheet.sheets(LivePlans.context(later)));
    assertFalse(ProofSheet.has(Planner.unplanned(plan.job())));
  }

  /** Corners that are read lift the logs: the gap is what it is with them, and the sum says so. */
  @Test
  void readCornersStandInTheSumOfTheGap() throws Exception {
    Plan plan = inches().plan(2);
    Map<String, Object> typed = new TreeMap<>();
    double top = plan.stack().levelHeight(1).inches();
    List<String> corners = plan.job().building().corners();
    for (int i = 0; i < corners.size(); i++) {
      typed.put(TypedBox.READING.named(1, corners.get(i)), top + 0.25 + i / 8.0);
    }
    Path book = LivePlans.written(folder.resolve("plan.xlsx"), LivePlans.book(plan));
    Path after = LibraryFormulas.recalculate(book, typed);
    int first = firstRow(plan);
    int last = first + sums(plan).size() - 1;
    for (int row : new int[] {last - 3, last - 2, last}) {
      String sum = LibreOffice.value(after, "Proof!M" + row).toString();
      double result = Longhand.of(LibreOffice.value(after, "Proof!V" + row).toString());
      assertEquals(rounded(Longhand.of(sum), row == last ? 1.0 / 16 : 0), result, 1e-9, sum);
    }
    String next = LibreOffice.value(after, "Proof!M" + (last - 3)).toString();
    assertTrue(next.matches("[0-9 /]+ \\+ [0-9 /]+ \\+ [0-9/]+"), next);
    String gap = LibreOffice.value(after, "Proof!M" + last).toString();
    assertTrue(gap.matches("[0-9.]+ [+−] [0-9.]+ − [0-9.]+"), gap);
  }
}
