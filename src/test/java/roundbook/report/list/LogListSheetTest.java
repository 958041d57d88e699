package roundbook.report.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.LogColumn;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.plan.Plan;
import roundbook.plan.Plan.LogUse;
import roundbook.problem.CellRef;
import roundbook.report.ListFixtures;
import roundbook.report.frame.CrewContext;
import roundbook.units.Length;

/** The log list: as read, exact for the next plan, with a box for lost logs. */
class LogListSheetTest {
  static Stream<CrewContext> contexts() {
    return ListFixtures.several();
  }

  private static Sheet sheet(CrewContext context) {
    return ListFixtures.only(LogListSheet.sheets(context));
  }

  private static Area column(CrewContext context, String name) {
    String formula = LogListSheet.names(context).get(name);
    assertTrue(formula.startsWith("'Log list'!"), formula);
    return Area.of(formula.substring(formula.indexOf('!') + 1));
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void namedColumnsHoldTheTallyExactly(CrewContext context) {
    Sheet sheet = sheet(context);
    List<Log> logs = context.plan().uses().stream().map(LogUse::log).toList();
    Area tags = column(context, LogColumn.TAGS.named());
    assertEquals(logs.size(), tags.bottom() - tags.top() + 1);
    for (int index = 0; index < logs.size(); index++) {
      Log log = logs.get(index);
      int row = tags.top() + index;
      assertEquals(log.tag(), ListFixtures.shown(sheet.cell(row, tags.left()).orElseThrow()));
      assertLength(context, LogColumn.LENGTHS.named(), row, log.length());
      assertLength(context, LogColumn.BUTTS.named(), row, log.butt());
      assertLength(context, LogColumn.MIDS.named(), row, log.mid());
      assertLength(context, LogColumn.TIPS.named(), row, log.tip());
    }
  }

  private static void assertLength(CrewContext context, String name, int row, Length expected) {
    int column = column(context, name).left();
    Cell.Value value = sheet(context).cell(row, column).orElseThrow().value();
    double number = ((Cell.Number) value).number();
    assertEquals(expected, Length.of(number, context.rules().unit()), name);
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void everyLogHasABoxForBeingLost(CrewContext context) {
    Sheet sheet = sheet(context);
    for (LogUse use : context.plan().uses()) {
      Cell box = ListFixtures.named(sheet, "Lost_" + use.log().origin().row()).orElseThrow();
      assertEquals(Role.TYPED_IN_TEXT, box.role());
    }
    Rule.OneOf rule = (Rule.OneOf) sheet.rules().get(0);
    assertEquals(List.of("x"), rule.choices());
    assertEquals(context.plan().uses().size(), rule.area().bottom() - rule.area().top() + 1);
  }

  @Test
  void pooledTalliesWithTheSameRowsGetNamesOfTheirOwn() {
    CrewContext context = pooled();
    Sheet sheet = sheet(context);
    assertTrue(ListFixtures.named(sheet, "Lost_7").isPresent());
    assertTrue(ListFixtures.named(sheet, "Lost_7_2").isPresent());
    assertTrue(ListFixtures.named(sheet, "Lost_7_3").isPresent());
  }

  /** Every log read from the same row number, as of several tallies. */
  private static CrewContext pooled() {
    CrewContext context = ListFixtures.inches(1);
    Plan plan = context.plan();
    List<LogUse> uses =
        plan.uses().stream()
            .map(use -> new LogUse(moved(use.log()), use.use(), use.placed(), use.note()))
            .toList();
    Plan moved =
        new Plan(
            plan.job(),
            plan.choice(),
            plan.stack(),
            plan.pieces(),
            plan.takeoff(),
            uses,
            plan.supply(),
            plan.quantities(),
            plan.order(),
            plan.exchanges(),
            plan.problems(),
            plan.verdict(),
            plan.nearPairs());
    return ListFixtures.of(moved);
  }

  private static Log moved(Log log) {
    CellRef origin = new CellRef(log.tag() + ".csv", "", 7, 0);
    return new Log(
        log.tag(),
        log.length(),
        log.profile(),
        log.sources(),
        log.traits(),
        log.place(),
        origin,
        log.extra());
  }

  @Test
  void guessedMiddlesAreMarkedInWords() {
    CrewContext context = ListFixtures.inches(4);
    Sheet sheet = sheet(context);
    int row = column(context, LogColumn.TAGS.named()).top();
    List<String> measured = ListFixtures.row(sheet, row);
    List<String> guessed = ListFixtures.row(sheet, row + 3);
    assertEquals("measured", measured.get(6));
    assertEquals("estimated", guessed.get(6));
  }

  /** Returns where a named column stands in a row, counted from 0. */
  private static int at(CrewContext context, String name) {
    return column(context, name).left() - 1;
  }

  @Test
  void furtherColumnsOfTheTallyAreCarried() {
    CrewContext context = ListFixtures.inches(2);
    Sheet sheet = sheet(context);
    int head = ListFixtures.headRow(sheet, "Bin");
    assertEquals(column(context, LogColumn.TAGS.named()).top() - 1, head);
    assertEquals("B0", ListFixtures.row(sheet, head + 1).get(at(context, LogColumn.extra(1))));
    assertEquals("B1", ListFixtures.row(sheet, head + 2).get(at(context, LogColumn.extra(1))));
  }

  @Test
  void useAndPlaceAreThoseOfThePlan() {
    CrewContext context = ListFixtures.metric(4);
    Sheet sheet = sheet(context);
    int row = column(context, LogColumn.TAGS.named()).top();
    for (LogUse use : context.plan().uses()) {
      List<String> shown = ListFixtures.row(sheet, row);
      assertEquals(use.use().words(), shown.get(9));
      assertEquals(use.placed().map(each -> "" + each.round()).orElse(""), shown.get(10));
      assertEquals(use.placed().map(each -> each.wall().name()).orElse(""), shown.get(11));
      row++;
    }
  }

  @Test
  void stationsOfAProfileCanBeReadBack() {
    CrewContext context = ListFixtures.inches(1);
    Log log = context.plan().uses().get(0).log();
    int row = column(context, LogColumn.TAGS.named()).top();
    int at = at(context, LogColumn.STATIONS.named());
    String stations = ListFixtures.row(sheet(context), row).get(at);
    assertEquals("0=14.6875; 149=13.75; 298=12.8125", stations);
    assertEquals(3, log.profile().stations().size());
  }

  @Test
  void onlyThePeoplesColumnsArePrinted() {
    CrewContext context = ListFixtures.inches(2);
    Area printed = sheet(context).print().area().orElseThrow();
    assertEquals(column(context, LogColumn.LENGTHS.named()).left() - 1, printed.right());
  }

  @Test
  void aTallyWithoutLogsHasNoNames() {
    CrewContext context = ListFixtures.inches(1);
    Job job = context.plan().job();
    Job none = new Job(job.rules(), job.building(), List.of(), List.of(), List.of());
    Plan plan = context.plan();
    Plan empty =
        new Plan(
            none,
            plan.choice(),
            plan.stack(),
            plan.pieces(),
            plan.takeoff(),
            List.of(),
            plan.supply(),
            plan.quantities(),
            plan.order(),
            plan.exchanges(),
            plan.problems(),
            plan.verdict(),
            plan.nearPairs());
    assertTrue(LogListSheet.names(ListFixtures.of(empty)).isEmpty());
  }
}
