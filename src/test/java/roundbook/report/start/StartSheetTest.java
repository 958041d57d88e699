package roundbook.report.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.AsBuilt;
import roundbook.job.Building;
import roundbook.job.Measures;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.page.Cell;
import roundbook.page.Sheet;
import roundbook.plan.Houses;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.problem.Problem;
import roundbook.problem.Severity;
import roundbook.replan.Difference;
import roundbook.replan.Difference.DifferenceKind;
import roundbook.replan.GapCheck;
import roundbook.replan.Replan;
import roundbook.report.ListFixtures;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.Tab;
import roundbook.report.mark.NotchChartSheet;
import roundbook.report.mark.Squareness;
import roundbook.rounds.Nearness;
import roundbook.units.Length;

/** The first page: what to do first, and what a crew must not miss. */
class StartSheetTest {
  static Stream<CrewContext> contexts() {
    return ListFixtures.several();
  }

  private static Sheet sheet(CrewContext context) {
    return ListFixtures.only(StartSheet.sheets(context));
  }

  private static boolean says(CrewContext context, String words) {
    return ListFixtures.texts(sheet(context)).stream().anyMatch(text -> text.contains(words));
  }

  @Test
  void itSaysWhatIsBuiltAndWhatWasWanted() {
    assertTrue(
        says(
            ListFixtures.inches(4),
            "4, as many as the logs make up to a storey: no height was given"));
    CrewContext told =
        ListFixtures.of(PlanFixtures.inches().set(Setting.ROUNDS, BigDecimal.valueOf(4)).plan(4));
    assertTrue(says(told, "4, all that were wanted"));
    CrewContext few = ListFixtures.of(PlanFixtures.inches().wanting(9).plan(6));
    assertTrue(says(few, "6 of 9 wanted"));
    assertTrue(says(few, "24 placed, 4 spare, 2 left out"));
    assertTrue(says(few, "REV 2. Pages of any other revision are void"));
  }

  /** A crew that cuts by the row alone must not cut a level end two inches low. */
  @Test
  void theFirstPairTellsOfALevelEndAndOfASaddle() {
    CrewContext wing = ListFixtures.of(Houses.wing(true, "hook", 1));
    var notch = wing.plan().stack().courses().get(0).notch();
    String marks =
        wing.formats().mark(notch.upperOutside(Length.ofInches(6)))
            + "\nlevel SE\n"
            + wing.formats().mark(notch.upper());
    assertTrue(says(wing, marks), marks);
    assertTrue(says(wing, "Its top is level at SE: UPPER outside is that of inside there."));
    PiecePlan south =
        wing.plan().round(1).stream()
            .filter(piece -> piece.placed().wall().name().equals("S"))
            .findFirst()
            .orElseThrow();
    // By hand: 168 in from the left corner and a tail, or what of 342 in lies right of it.
    String saddle =
        south.placed().buttAtStart()
            ? "Saddle for W2 from 13' 9\" to 14' 3\" off"
            : "Saddle for W2 from 14' 3\" to 14' 9\" off";
    assertTrue(says(wing, saddle), saddle);
  }

  @Test
  void logsThatAreMeasuredAsHewnAreNotToBeHewnAgain() {
    Plan plan = PlanFixtures.inches().plan(4);
    assertTrue(says(ListFixtures.of(plan), "Hew the logs of round 1"));
    Measures middle =
        new Measures(
            Optional.empty(),
            Optional.of(Length.ofInches(13)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Map<AsBuilt.Place, Measures> typed =
        plan.round(1).stream()
            .collect(Collectors.toMap(piece -> piece.placed().place(), piece -> middle));
    AsBuilt built = AsBuilt.NOTHING.withPlaces(Map.of(), typed);
    CrewContext measured = ListFixtures.of(Planner.of(plan.job().withBuilt(built), plan.choice()));
    assertFalse(says(measured, "Hew the logs of round 1"));
    assertFalse(says(measured, "Measure the middle of each hewn log"));
    assertTrue(says(measured, "Better still before you cut: hew round 2 too"));
  }

  @Test
  void ofAKindThatIsLongTheRestIsCountedInOneCell() {
    CrewContext context = ListFixtures.inches(4);
    List<Difference> gaps =
        IntStream.rangeClosed(1, 20)
            .mapToObj(wall -> new Difference(DifferenceKind.GAP, 2, "W" + wall, "1", "2"))
            .toList();
    Plan plan = context.plan();
    Replan replan = new Replan(1, plan, plan, List.of(), gaps, new GapCheck(List.of()));
    Sheet sheet = sheet(context.following(replan, List.of("Round 02")));
    List<String> texts = ListFixtures.texts(sheet);
    assertTrue(texts.stream().anyMatch(text -> text.contains("W12")), texts.toString());
    assertTrue(texts.contains("and 8 more of the kind"), texts.toString());
    assertFalse(texts.stream().anyMatch(text -> text.contains("W13")), "no name before the count");
  }

  /** How near the best the choice is stands there where it was reckoned. */
  @Test
  void itSaysByHowMuchAnotherChoiceCouldBeBetter() {
    assertTrue(!says(ListFixtures.inches(4), "How near the best"));
    Plan plan = PlanFixtures.inches().plan(4);
    Length off = Length.ofInchFraction(1, 10);
    Nearness near = new Nearness(19, off, off, false);
    CrewContext context = ListFixtures.of(Planner.of(plan.job(), plan.choice().with(near)));
    assertTrue(says(context, "How near the best"));
    assertTrue(says(context, "better by more than 19 % of its score"));
  }

  @Test
  void heightsOfTheWallsAreThoseOfTheStack() {
    CrewContext context = ListFixtures.inches(4);
    Cells cells = new Cells(context);
    for (Wall wall : context.plan().job().building().walls()) {
      Length top = context.plan().stack().top(wall);
      assertTrue(says(context, wall.name() + " " + cells.formats().feetInches(top)), wall.name());
    }
  }

  @Test
  void theHeightWantedStandsBesideTheHeightBuilt() {
    CrewContext context =
        ListFixtures.of(
            PlanFixtures.inches().set(Setting.WALL_HEIGHT, Length.ofInches(100)).plan(4));
    assertTrue(says(context, "; wanted 8' 4\""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "flat | foundation under E and W is planned 7 1/2 in higher",
        "level | under the crown of the logs on E and W, planned 3 3/4 in",
        "starter | half-log starter, flat side down, under E and W"
      })
  void theFirstBedIsExplained(String bed, String words) {
    // Size 14 and gap 1: step (14 + 1) / 2 = 7 1/2; lower mark 3 1/4, filler 3 1/4 + 1/2.
    CrewContext context =
        ListFixtures.of(PlanFixtures.inches().set(Setting.FIRST_BED, bed).plan(4));
    assertEquals(Length.ofInches(14), context.plan().stack().courses().get(0).notch().size());
    assertTrue(says(context, words), bed);
    assertTrue(!says(context, "3 1/4 in below"), "LOWER follows what is typed, a text does not");
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void theFirstPairIsPickedUpFirst(CrewContext context) {
    Sheet sheet = sheet(context);
    int head = ListFixtures.headRow(sheet, "UPPER inside");
    List<String> first = shown(sheet, head + 1);
    List<String> second = shown(sheet, head + 2);
    assertEquals(List.of("N", "L1", "● NW"), first.subList(0, 3));
    assertEquals(List.of("S", "L3", "● SE"), second.subList(0, 3));
    assertEquals("flat bed", first.get(first.size() - 1));
  }

  private static List<String> shown(Sheet sheet, int row) {
    return ListFixtures.row(sheet, row).stream().filter(text -> !text.isEmpty()).toList();
  }

  @Test
  void diagonalsAreThoseOfTheRectangle() {
    // 18 and 24 ft are 3 and 4 times 6 ft, so the diagonal is 5 times 6 ft (Pythagoras).
    Squareness square = Squareness.of(PlanFixtures.inches().job(1).building()).get(0);
    assertEquals(Length.ofInches(360), square.outside());
    // Inside 17 by 23 ft: the root of 204 squared and 276 squared inches.
    assertEquals(343.2083, square.inside().inches(), 0.0001);
    assertTrue(says(ListFixtures.inches(2), "30' 0\""));
  }

  @Test
  void aRingThatIsNoRectangleHasNoSingleDiagonal() {
    Length six = Length.ofInches(6);
    Building odd =
        new Building(
            List.of(
                new Wall("N", Length.ofInches(240), true, six, ""),
                new Wall("E", Length.ofInches(200), false, six, ""),
                new Wall("S", Length.ofInches(250), true, six, ""),
                new Wall("W", Length.ofInches(200), false, six, "")));
    assertTrue(Squareness.of(odd).isEmpty());
    assertTrue(Squareness.of(new Building(odd.walls().subList(0, 2))).isEmpty());
  }

  @Test
  void measuredDiagonalsAreCompared() {
    Sheet sheet = sheet(ListFixtures.inches(2));
    for (String name : List.of("Diagonal_outside_1", "Diagonal_inside_2")) {
      assertTrue(ListFixtures.named(sheet, name).isPresent(), name);
    }
    boolean compared =
        sheet.rows().values().stream()
            .flatMap(row -> row.values().stream())
            .map(Cell::value)
            .anyMatch(
                value ->
                    value instanceof Cell.Formula formula
                        && formula.expression().contains("Diagonal_outside_1-Diagonal_outside_2"));
    assertTrue(compared);
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void everyKindOfProblemIsToldOrCounted(CrewContext context) {
    Warnings warnings = new Warnings(context);
    List<List<Cell>> rows = warnings.rows();
    String told =
        rows.stream().map(row -> ListFixtures.shown(row.get(1))).collect(Collectors.joining("; "));
    Set<Object> kinds = new HashSet<>();
    for (Problem problem : context.problems()) {
      if (problem.severity() == Severity.INFO) {
        continue;
      }
      String message = context.message(problem);
      boolean first = kinds.add(problem.severity() + problem.code().id());
      assertTrue(!first || (told + "; " + warnings.counted()).contains(message), message);
    }
    assertTrue(ListFixtures.shown(rows.get(0).get(0)).contains("ERROR"));
  }

  @Test
  void openingsStandBeforeEndsHoweverMany() {
    CrewContext context = ListFixtures.of(thin().withOpenings().plan(6));
    List<String> links =
        new Warnings(context).rows().stream().map(row -> row.get(3).link()).toList();
    assertEquals("Notch chart", links.get(links.size() - 1), links.toString());
    assertTrue(says(context, "Before the next cut"));
    assertTrue(says(context, " more of the kind)"));
  }

  /** Returns a job that wants so much face over UPPER that ends are to be looked at. */
  private static PlanFixtures thin() {
    return PlanFixtures.inches().set(Setting.SHOULDER_LEAST, Length.ofInches(2));
  }

  @ParameterizedTest
  @CsvSource({"en", "de"})
  void theWordsForEndsAreExplainedOnTheChart(String language) {
    CrewContext context =
        ListFixtures.of(PlanFixtures.inches().set(Setting.LANGUAGE, language).plan(4));
    List<String> chart = ListFixtures.texts(ListFixtures.only(NotchChartSheet.of(context)));
    String stop = "• " + context.text("live.stop", "").replace(", ", "") + ":";
    for (String words : List.of(stop, "• normal:", "5 %", "20 %", "1/2 in")) {
      assertTrue(chart.stream().anyMatch(text -> text.contains(words)), words);
    }
    String pointer = Tab.NOTCH_CHART.in(context.words());
    assertTrue(context.text("round.ends", "").contains(pointer));
    assertTrue(context.text("note.tip_thin", "").contains(pointer));
  }

  @Test
  void warningsLeadToTheSheetThatShowsThem() {
    CrewContext context = ListFixtures.of(thin().wanting(9).plan(6));
    List<List<Cell>> rows = new Warnings(context).rows();
    List<String> links = rows.stream().map(row -> row.get(3).link()).toList();
    assertTrue(links.contains("Order"), links.toString());
    assertTrue(links.contains("Notch chart"), links.toString());
    assertTrue(links.contains("Problems"), links.toString());
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void theListOfSheetsLeadsToEachKind(CrewContext context) {
    Set<String> links = new HashSet<>();
    sheet(context).rows().values().stream()
        .flatMap(row -> row.values().stream())
        .map(Cell::link)
        .forEach(links::add);
    for (String tab :
        List.of("Notch chart", "Round 01", "Wall N", "Levels", "Hewing", "Tags", "Settings")) {
      assertTrue(links.contains(tab), tab);
    }
  }
}
