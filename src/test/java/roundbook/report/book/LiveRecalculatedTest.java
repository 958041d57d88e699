package roundbook.report.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.Setting;
import roundbook.plan.Houses;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.CellRef;
import roundbook.report.LivePlans;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMap;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveRounds;
import roundbook.report.mark.NotchChartSheet;
import roundbook.sheet.FormulaRules;
import roundbook.sheet.LibraryFormulas;
import roundbook.sheet.LibreOffice;
import roundbook.sheet.SecondReader;
import roundbook.stack.Hewn;
import roundbook.units.Length;

/**
 * The live sheets as a spreadsheet program outside the project computes them, against the program's
 * own plan of the same logs.
 */
public class LiveRecalculatedTest {
  /**
   * Gaps between the stations follow the planned logs: where ends, other logs or the middles of two
   * short logs are typed, the sheet has the least of its three stations and only a new plan the
   * rest.
   */
  private static final List<PieceColumn> KINKS =
      List.of(PieceColumn.LEAST_GAP, PieceColumn.MOST_GAP, PieceColumn.FLAG);

  private static final Pattern PLACE = Pattern.compile("^(.*)!([A-Z]+)(\\d+): ");

  @TempDir Path folder;

  /** Returns a copy that was reckoned anew after values were typed; the long tests have others. */
  Path recalculated(Path book, Map<String, ?> typed) throws Exception {
    return LibraryFormulas.recalculate(book, typed);
  }

  private Path written(String name, Plan plan) throws Exception {
    return LivePlans.written(folder.resolve(name), LivePlans.book(plan));
  }

  static Stream<Arguments> plans() {
    return Stream.of(
        Arguments.of("inches", inches().plan(5)),
        Arguments.of("millimetres", PlanFixtures.metric().plan(4)),
        Arguments.of("German", inches().set(Setting.LANGUAGE, "de").plan(3)),
        Arguments.of(
            "German centimetres",
            PlanFixtures.metric().set(Setting.LANGUAGE, "de").set(Setting.UNITS, "cm").plan(3)),
        Arguments.of("exact mean", inches().set(Setting.SIZE_STEP, Length.ZERO).plan(3)),
        Arguments.of("starter", inches().set(Setting.FIRST_BED, "starter").plan(2)),
        Arguments.of("one round", inches().plan(1)),
        Arguments.of(
            "odd gap and slope",
            inches()
                .set(Setting.CHINKING_GAP, Length.ofInchFraction(11, 8))
                .set(Setting.SLOPE_RUN, new BigDecimal("3.5"))
                .plan(3)),
        Arguments.of("short logs", inches().withShortLogs().plan(6)),
        Arguments.of("short logs off the middle", PlanFixtures.metric().withShortLogs(20).plan(6)),
        Arguments.of("long words", LivePlans.wordy(inches().plan(2))),
        Arguments.of("thick walls", thick(3)),
        Arguments.of("partitions that cross", Houses.crossed(1)),
        Arguments.of("a wing that hooks", Houses.wing(true, "hook", 1)),
        Arguments.of("a wing that drains", Houses.wing(false, "drain", 2)));
  }

  private static PlanFixtures inches() {
    return PlanFixtures.inches();
  }

  private static Plan thick(int rounds) {
    return LivePlans.thick(
        inches().plan(rounds),
        Length.ofInches(6),
        Length.ofInches(7),
        Length.ofInches(6),
        Length.ofInches(8));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void storedValuesAreTheOnesItComputes(String name, Plan plan) throws Exception {
    Path book = written("plan.xlsx", plan);
    LibreOffice.Comparison found =
        LibreOffice.compare(book, recalculated(book, Map.of()), LivePlans.NANOMETRES);
    assertEquals(List.of(), found.differences());
    assertEquals(List.of(), FormulaRules.broken(book));
    assertEquals(List.of(), SecondReader.differences(LivePlans.book(plan), book));
    assertTrue(found.formulas() > 100 * plan.rounds(), "formulas: " + found.formulas());
  }

  static Stream<Arguments> measured() {
    return Stream.of(
        Arguments.of(11L, inches().plan(6)),
        Arguments.of(12L, PlanFixtures.metric().plan(4)),
        Arguments.of(13L, inches().set(Setting.SIZE_STEP, Length.ZERO).plan(3)),
        Arguments.of(14L, thick(4)),
        Arguments.of(15L, inches().withShortLogs().plan(6)),
        Arguments.of(16L, inches().withShortLogs(20).plan(6)),
        Arguments.of(17L, PlanFixtures.metric().withShortLogs(146).plan(6)),
        Arguments.of(18L, Houses.wing(true, "drain", 3)));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("measured")
  void measuredMiddlesGiveThePlanOfTheHewnLogs(long seed, Plan plan) throws Exception {
    Map<String, Hewn> mids = LivePlans.mids(plan, seed);
    Path typed = recalculated(written("plan.xlsx", plan), LivePlans.typed(plan, mids));
    Plan hewn = LivePlans.hewn(plan, mids);
    boolean pairs = plan.pieces().stream().anyMatch(piece -> piece.halves().size() > 1);
    List<PieceColumn> others = pairs ? KINKS : List.of();
    assertEquals(List.of(), unlike(hewn, typed, others), "seed " + seed);
  }

  @Test
  void measuredEndsMoveTheGapsAtTheEnds() throws Exception {
    Plan plan = inches().plan(3);
    Map<String, Hewn> ends = new TreeMap<>();
    plan.pieces()
        .forEach(
            piece -> {
              Length half = Length.ofInchFraction(piece.placed().round(), 2);
              Length mid = piece.placed().first().piece().mid();
              Optional<Length> butt = Optional.of(mid.plus(half).roundedTo(Length.ofInches(1)));
              Optional<Length> tip =
                  piece.placed().wall().laidFirst()
                      ? Optional.of(mid.minus(half))
                      : Optional.empty();
              ends.put(
                  piece.placed().first().piece().log().tag(),
                  new Hewn(butt, Optional.empty(), tip));
            });
    Path typed = recalculated(written("plan.xlsx", plan), LivePlans.typed(plan, ends));
    assertEquals(List.of(), unlike(LivePlans.hewn(plan, ends), typed, KINKS));
  }

  /** The ends of short logs beside a window that lies off the middle of its wall, one way each. */
  @ParameterizedTest
  @ValueSource(longs = {20, 80, 146})
  void measuredEndsOfShortLogsCount(long left) throws Exception {
    Plan plan = inches().withShortLogs(left).plan(6);
    Map<String, Hewn> ends = new TreeMap<>();
    plan.pieces().stream()
        .flatMap(piece -> piece.halves().stream())
        .forEach(
            half -> {
              Length mid = half.placed().piece().mid();
              Optional<Length> butt = Optional.of(mid.plus(Length.ofInches(1)));
              Optional<Length> tip = Optional.of(mid.minus(Length.ofInchFraction(1, 2)));
              ends.put(
                  half.placed().piece().log().tag(),
                  new Hewn(butt, Optional.of(mid.plus(Length.ofInchFraction(1, 4))), tip));
            });
    Path typed = recalculated(written("plan.xlsx", plan), LivePlans.typed(plan, ends));
    assertEquals(List.of(), unlike(LivePlans.hewn(plan, ends), typed, KINKS));
  }

  @Test
  void anotherLogGivesThePlanOfThatLog() throws Exception {
    Plan plan = inches().plan(4);
    String spare = plan.choice().unused().get(0).tag();
    Path typed = recalculated(written("plan.xlsx", plan), Map.of("Used_2_S", " " + spare));
    List<PieceColumn> kinks =
        List.of(PieceColumn.LEAST_GAP, PieceColumn.MOST_GAP, PieceColumn.SOURCE);
    Plan used = LivePlans.used(plan, 2, "S", spare);
    assertEquals(List.of(), unlike(used, typed, kinks));
    String weight = round(2, plan, "S", 27);
    assertEquals("replan", LibreOffice.value(typed, weight));
  }

  @Test
  void logsThatCannotServeAreSaid() throws Exception {
    Plan plan = inches().plan(2);
    String tooShort = plan.choice().unused().get(5).tag();
    Path book = written("plan.xlsx", plan);
    Path typed = recalculated(book, Map.of("Used_1_N", "nowhere", "Used_2_E", tooShort));
    Object first = LibreOffice.value(typed, ends(1, plan));
    assertTrue(first.toString().contains("N: no such log on the log list."), first.toString());
    Object second = LibreOffice.value(typed, ends(2, plan));
    assertTrue(second.toString().contains("E: that log is too short here."), second.toString());
  }

  @Test
  void theRoundInHandIsTriedWithoutChangingAnything() throws Exception {
    Plan plan = inches().plan(4);
    Map<String, Hewn> mids = new TreeMap<>();
    Map<String, Object> typed = new TreeMap<>(Map.of("Change_round", 2));
    plan.round(2)
        .forEach(
            piece -> {
              Length mid = piece.placed().first().piece().mid().plus(Length.ofInches(1));
              mids.put(
                  piece.placed().first().piece().log().tag(),
                  new Hewn(Optional.empty(), Optional.of(mid), Optional.empty()));
              typed.put("Change_" + piece.placed().wall().name(), mid.inches());
            });
    Path book = written("plan.xlsx", plan);
    Path after = recalculated(book, typed);
    Plan tried = LivePlans.hewn(plan, mids);
    LiveRounds rounds = new LiveRounds(LiveContext.of(LivePlans.context(tried)));
    var notch = tried.choice().courses().get(1).notch();
    List<Length> wanted =
        List.of(
            notch.size(),
            notch.upper(),
            notch.upperOutside(Length.ofInches(6)),
            notch.lower(),
            notch.lowerCorner(Length.ofInches(6)),
            notch.neckHeight(),
            rounds.nominalGap(2, true),
            rounds.nominalGap(2, false),
            rounds.nominalGap(3, true),
            rounds.nominalGap(3, false));
    int row = resultRow(plan);
    for (int index = 0; index < wanted.size(); index++) {
      Length step = plan.job().rules().printStep();
      String cell = "Notch chart!" + CellRef.columnName(index + 2) + row;
      double now = (double) LibreOffice.value(after, cell);
      assertEquals(wanted.get(index).roundedTo(step).inches(), now, LivePlans.NANOMETRES, cell);
    }
    List<String> elsewhere =
        LibreOffice.compare(book, after, LivePlans.NANOMETRES).differences().stream()
            .filter(line -> !line.startsWith("Notch chart!"))
            .toList();
    assertEquals(List.of(), elsewhere);
  }

  private static int resultRow(Plan plan) {
    return NotchChartSheet.of(LivePlans.context(plan)).get(0).rows().lastKey();
  }

  private static String ends(int round, Plan plan) {
    return "Round 0" + round + "!A" + (LivePlans.rowOf(round, plan, "Used_" + round + "_W") + 2);
  }

  private static String round(int round, Plan plan, String wall, int column) {
    int walls = plan.job().building().walls().size();
    int typed = LivePlans.rowOf(round, plan, "Used_" + round + "_" + wall);
    return "Round 0" + round + "!" + CellRef.columnName(column + 2) + (typed - walls - 1);
  }

  /**
   * Returns what differs between a plan's book and a typed one, but for what the tally alone gives:
   * the planned diameters, weights and balance points, and what a wrong tally does.
   */
  private List<String> unlike(Plan plan, Path typed, List<PieceColumn> but) throws Exception {
    Path wanted = written("wanted.xlsx", plan);
    LiveMap map = LiveContext.of(LivePlans.context(plan)).map();
    LibreOffice.Comparison untyped =
        LibreOffice.compare(wanted, folder.resolve("plan.xlsx"), LivePlans.NANOMETRES);
    assertTrue(untyped.differences().size() > 20, "nothing was to be recomputed");
    List<String> unlike = new ArrayList<>();
    for (String line : LibreOffice.compare(wanted, typed, LivePlans.NANOMETRES).differences()) {
      Matcher place = PLACE.matcher(line);
      assertTrue(place.find(), line);
      if (!tallied(map, place, but)) {
        unlike.add(line);
      }
    }
    return unlike;
  }

  private static boolean tallied(LiveMap map, Matcher place, List<PieceColumn> but) {
    int row = Integer.parseInt(place.group(3));
    int column = roundbook.page.Area.of(place.group(2) + "1").left();
    if (place.group(1).startsWith("Round ")) {
      return List.of("C", "AC", "AF").contains(place.group(2));
    }
    if (place.group(1).equals("Proof")) {
      return place.group(2).equals("T");
    }
    if (place.group(1).startsWith("Wall ")) {
      return but.contains(PieceColumn.LEAST_GAP) && place.group(2).equals("I");
    }
    boolean pieces = row > map.pieceHeadRow() && row < map.logHeadRow();
    if (!place.group(1).equals(map.sheet()) || !pieces) {
      return false;
    }
    PieceColumn found = PieceColumn.values()[column - 1];
    boolean own = found.name().startsWith("OWN_") || found == PieceColumn.SOURCE;
    return own || but.contains(found);
  }
}
