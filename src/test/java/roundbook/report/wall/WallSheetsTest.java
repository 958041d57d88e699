package roundbook.report.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Wall;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.Figure;
import roundbook.page.Sheet;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.report.LivePlans;
import roundbook.report.frame.Tab;
import roundbook.report.mark.NotchChartSheet;
import roundbook.stack.Hewn;
import roundbook.stack.Joint;
import roundbook.units.Length;

/** What stands on the walls' sheets, the chart and the levels, against the plan. */
class WallSheetsTest {
  /** Where the headings of the notch chart stand. */
  private static final int HEAD_ROW = 2;

  static Stream<Arguments> plans() {
    return Stream.of(
        Arguments.of("inches", PlanFixtures.inches().plan(4)),
        Arguments.of("millimetres", PlanFixtures.metric().plan(9)),
        Arguments.of("flagged", flagged()),
        Arguments.of("one round", PlanFixtures.inches().plan(1)));
  }

  /** A plan with a log on N that is far too thick for its place. */
  private static Plan flagged() {
    Plan plan = PlanFixtures.inches().plan(3);
    Map<String, Hewn> thick = new TreeMap<>();
    plan.round(2).stream()
        .filter(piece -> piece.placed().wall().name().equals("N"))
        .forEach(
            piece -> {
              Length mid = piece.placed().first().piece().mid().plus(Length.ofInches(2));
              thick.put(
                  piece.placed().first().piece().log().tag(),
                  new Hewn(Optional.empty(), Optional.of(mid), Optional.empty()));
            });
    return LivePlans.hewn(plan, thick);
  }

  private static Object shown(Cell cell) {
    Cell.Value value =
        cell.value() instanceof Cell.Formula formula ? formula.result() : cell.value();
    return value instanceof Cell.Number number
        ? (Object) number.number()
        : value instanceof Cell.Text text ? text.text() : "";
  }

  private static String texts(Sheet sheet) {
    return sheet.rows().values().stream()
        .flatMap(row -> row.values().stream())
        .map(cell -> shown(cell).toString())
        .collect(Collectors.joining("\n"));
  }

  /** Returns the row of a round in a wall's table. */
  private static List<Object> row(Sheet sheet, String tag) {
    return sheet.rows().values().stream()
        .map(row -> row.values().stream().map(WallSheetsTest::shown).toList())
        .filter(row -> row.contains(tag))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void eachGapIsTheOneThatThePlanPrints(String name, Plan plan) {
    List<Sheet> sheets = LivePlans.walls(LivePlans.context(plan));
    Length step = plan.job().rules().printStep();
    for (Wall wall : plan.job().building().walls()) {
      Sheet sheet = sheets.get(plan.job().building().walls().indexOf(wall));
      for (Joint joint : plan.stack().joints(wall)) {
        List<Object> row = row(sheet, joint.upper().tags());
        List<Object> wanted =
            Stream.of(joint.left(), joint.middle(), joint.right())
                .map(gap -> (Object) gap.roundedTo(step).in(plan.job().rules().unit()))
                .toList();
        assertEquals(wanted, row.subList(5, 8));
        assertEquals(joint.flag(plan.job().rules()).symbol(), row.get(8));
      }
    }
  }

  @Test
  void aLogThatNearlyTouchesIsFlaggedWithWhatToDo() {
    Plan plan = flagged();
    Sheet north = LivePlans.walls(LivePlans.context(plan)).get(0);
    String all = texts(north);
    assertTrue(all.contains("▼"), all);
    assertTrue(all.contains("Mend before cutting:"), all);
    String south = texts(LivePlans.walls(LivePlans.context(plan)).get(2));
    assertTrue(!south.contains("Mend before cutting:"), south);
    assertTrue(south.contains("road side"), south);
  }

  @Test
  void theChartStandsOnThePageOfItsTableWhereItFits() {
    for (int rounds : new int[] {4, 8, 9}) {
      for (Sheet sheet : LivePlans.walls(LivePlans.context(PlanFixtures.inches().plan(rounds)))) {
        assertTrue(sheet.print().breaks().isEmpty(), sheet.name() + sheet.print().breaks());
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void theChartDrawsTheGapsWithTheirLimits(String name, Plan plan) {
    for (Sheet sheet : LivePlans.walls(LivePlans.context(plan))) {
      List<Figure> figures = sheet.figures();
      assertEquals(plan.rounds() > 1 ? 1 : 0, figures.size());
      for (Figure figure : figures) {
        Figure.Chart chart = (Figure.Chart) figure;
        assertEquals(5, chart.series().size());
        chart
            .series()
            .forEach(
                series -> {
                  Area values = series.values();
                  assertEquals(plan.rounds() - 1, values.bottom() - values.top() + 1);
                  for (int at = values.top(); at <= values.bottom(); at++) {
                    Cell cell = sheet.cell(at, values.left()).orElseThrow();
                    assertTrue(shown(cell) instanceof Double, series.name() + at);
                  }
                });
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("plans")
  void theNotchChartHasEveryRoundWithTheMarksOfThePlan(String name, Plan plan) {
    Sheet sheet = NotchChartSheet.of(LivePlans.context(plan)).get(0);
    var unit = plan.job().rules().unit();
    plan.choice()
        .courses()
        .forEach(
            course -> {
              int row = HEAD_ROW + course.round();
              List<Object> cells =
                  sheet.rows().get(row).values().stream().map(WallSheetsTest::shown).toList();
              Length thick = plan.job().building().walls().get(0).thickness();
              String upper = course.round() == plan.rounds() ? " N S" : "";
              String corner = course.round() == 1 ? " E W" : "";
              List<Object> wanted =
                  List.of(
                      String.valueOf(course.round()),
                      course.size().taken().in(unit),
                      named(course.notch().upper(), upper, plan),
                      named(course.notch().upperOutside(thick), upper, plan),
                      course.notch().lower().in(unit),
                      named(course.notch().lowerCorner(thick), corner, plan),
                      course.notch().neckHeight().in(unit));
              assertEquals(wanted, cells.subList(0, 7));
            });
  }

  /** A mark that all logs of a round have is a number, any other names the walls that have it. */
  private static Object named(Length mark, String walls, Plan plan) {
    return walls.isEmpty()
        ? mark.in(plan.job().rules().unit())
        : LivePlans.context(plan).formats().mark(mark) + walls;
  }

  @Test
  void theLevelsSheetStartsFromTheChart() {
    Plan plan = PlanFixtures.inches().plan(3);
    Sheet sheet = LivePlans.list(LivePlans.context(plan), Tab.LEVELS);
    double lower = plan.choice().courses().get(1).notch().lower().inches();
    for (String cell : List.of("J5", "K5", "L5", "M5")) {
      assertEquals(lower, shown(sheet.cell(cell).orElseThrow()));
    }
    assertEquals(plan.stack().levelHeight(1).inches(), shown(sheet.cell("C5").orElseThrow()));
    assertEquals("", shown(sheet.cell("I5").orElseThrow()));
    assertEquals("–", shown(sheet.cell("J7").orElseThrow()));
  }
}
