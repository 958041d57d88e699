package roundbook.report.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.page.PlainTable;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.problem.Problem;
import roundbook.problem.words.Sentences;
import roundbook.report.ListFixtures;
import roundbook.report.frame.CrewContext;
import roundbook.report.words.Decimals;
import roundbook.rounds.Nearness;
import roundbook.stack.Course;
import roundbook.stack.Joint;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/** Plain tables: their headings to the letter, and every value against the plan. */
class PlainTablesTest {
  static Stream<CrewContext> contexts() {
    return ListFixtures.several();
  }

  private static PlainTable table(CrewContext context, String name) {
    return PlainTables.of(context).stream()
        .filter(table -> table.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "logs | file,sheet,row,log,species,length_in,butt_in,mid_in,tip_in,mid_source,use,round,"
            + "wall,note",
        "problems | file,sheet,cell,row,column,severity,code,log,found,message,remedy",
        "rounds | round,mean_in,size_in,lower_in,upper_in,upper_outside_in,lower_corner_in,neck_in,"
            + "first_height_in,second_height_in,spread_in,butts_run",
        "pieces | round,wall,log,butt_at,cut_off_butt_in,trimmed_in,near_shoulder_in,"
            + "far_shoulder_in,falls_off_in,butt_in,mid_in,tip_in,centre_height_in,weight_lb,"
            + "balance_in,stem",
        "gaps | wall,lower_round,upper_round,lower_log,upper_log,left_in,middle_in,right_in,"
            + "least_in,most_in,flag",
        "materials | section,item,quantity,unit,note",
        "settings | name,value,unit,source"
      })
  void headingsAreExact(String name, String headings) {
    assertEquals(headings, String.join(",", table(ListFixtures.inches(2), name).header()));
    String metric = headings.replace("_in", "_mm").replace("_lb", "_kg");
    assertEquals(metric, String.join(",", table(ListFixtures.metric(2), name).header()));
  }

  @Test
  void everyTableIsThere() {
    assertEquals(
        List.of(
            "logs",
            "problems",
            "rounds",
            "pieces",
            "gaps",
            "openings",
            "cuts",
            "chinking",
            "wood",
            "scale",
            "materials",
            "order",
            "spares",
            "reasons",
            "settings"),
        PlainTables.of(ListFixtures.inches(2)).stream().map(PlainTable::name).toList());
  }

  @Test
  void howNearTheBestIsOneRowWhereItWasReckoned() {
    Plan plan = ListFixtures.metric(2).plan();
    Nearness near = new Nearness(18, Length.ofMillimetres(5), Length.ofMillimetres(4), false);
    CrewContext context = ListFixtures.of(Planner.of(plan.job(), plan.choice().with(near)));
    PlainTable table = table(context, "nearness");
    assertEquals(
        List.of("better_at_most_percent", "gap_off_mm", "gap_off_at_least_mm", "ended_by"),
        table.header());
    assertEquals(List.of(List.of("18", "5", "3", "stopped")), table.rows());
    Nearness unknown = new Nearness(100, Length.ofMillimetres(5), Length.ofMillimetres(9), true);
    CrewContext other = ListFixtures.of(Planner.of(plan.job(), plan.choice().with(unknown)));
    assertEquals(List.of(List.of("", "5", "", "itself")), table(other, "nearness").rows());
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void roundsAreThoseOfThePlan(CrewContext context) {
    PlainTable table = table(context, "rounds");
    List<Course> courses = context.plan().stack().courses();
    assertEquals(courses.size(), table.rows().size());
    for (int index = 0; index < courses.size(); index++) {
      Course course = courses.get(index);
      Length thickness = context.rules().thickness();
      assertLengths(
          context,
          table.rows().get(index).subList(1, 11),
          course.size().mean(),
          course.notch().size(),
          course.notch().lower(),
          course.notch().upper(),
          course.notch().upper().minus(course.notch().drop(thickness)),
          course.notch().lower().plus(course.notch().drop(thickness)),
          course.notch().lower().plus(course.notch().upper()),
          context.plan().stack().firstHeights().get(index),
          context.plan().stack().secondHeights().get(index),
          course.spread());
      String way = index % 2 == 0 ? "clockwise" : "counterclockwise";
      assertEquals(way, table.rows().get(index).get(11));
    }
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void piecesAreThoseOfThePlan(CrewContext context) {
    PlainTable table = table(context, "pieces");
    List<PiecePlan> pieces = context.plan().pieces();
    assertEquals(pieces.size(), table.rows().size());
    for (int index = 0; index < pieces.size(); index++) {
      PiecePlan piece = pieces.get(index);
      List<String> row = table.rows().get(index);
      assertEquals(piece.placed().first().piece().log().tag(), row.get(2));
      assertEquals(piece.buttAt(), row.get(3));
      assertLengths(
          context,
          row.subList(4, 13),
          piece.placed().first().piece().cutOffButt(),
          piece.placed().first().piece().trimmed(),
          piece.nearShoulder(),
          piece.farShoulder(),
          piece.placed().first().piece().fallsOff(),
          piece.placed().first().piece().butt(),
          piece.placed().first().piece().mid(),
          piece.placed().first().piece().tip(),
          piece.centre());
      boolean metric = context.rules().metric();
      double weight = metric ? piece.weight().kilograms() : piece.weight().pounds();
      assertEquals(weight, Double.parseDouble(row.get(13)), 0.00051);
    }
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void piecesAddUpToTheirLogs(CrewContext context) {
    PlainTable table = table(context, "pieces");
    for (List<String> row : table.rows()) {
      BigDecimal sum =
          new BigDecimal(row.get(4))
              .add(new BigDecimal(row.get(5)))
              .add(new BigDecimal(row.get(8)));
      Log log = context.plan().job().log(row.get(2)).orElseThrow();
      LengthUnit unit = context.rules().metric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
      assertEquals(log.length(), Length.of(sum, unit));
    }
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void gapsAreThoseOfTheStack(CrewContext context) {
    PlainTable table = table(context, "gaps");
    List<Joint> joints = context.plan().stack().joints();
    assertEquals(joints.size(), table.rows().size());
    for (int index = 0; index < joints.size(); index++) {
      Joint joint = joints.get(index);
      List<String> row = table.rows().get(index);
      assertEquals(joint.lower().wall().name(), row.get(0));
      assertEquals(String.valueOf(joint.lower().round() + 1), row.get(2));
      assertLengths(
          context,
          row.subList(5, 10),
          joint.left(),
          joint.middle(),
          joint.right(),
          joint.least(),
          joint.most());
      assertEquals(joint.flag(context.rules()).symbol(), row.get(10));
    }
  }

  @ParameterizedTest
  @MethodSource("contexts")
  void everyProblemIsListed(CrewContext context) {
    List<Problem> problems = context.problems();
    PlainTable table = table(context, "problems");
    assertEquals(
        problems.stream().map(Sentences.english()::message).toList(), table.column("message"));
    assertEquals(problems.stream().map(each -> each.code().id()).toList(), table.column("code"));
    assertEquals(
        List.of(
            "cabin.xlsx",
            "Logs",
            "B99",
            "99",
            "2",
            "error",
            "date-in-number",
            "99",
            "24-Jun",
            "length is a date or a time",
            Sentences.english().remedy(ListFixtures.DATE)),
        table.rows().get(0));
    assertEquals(List.of("", "", ""), table.rows().get(1).subList(2, 5));
  }

  @Test
  void logsSayWhatBecomesOfThem() {
    CrewContext context = ListFixtures.inches(4);
    PlainTable table = table(context, "logs");
    assertEquals(context.plan().job().logs().size(), table.rows().size());
    assertEquals(
        List.of(
            "cabin.xlsx",
            "Logs",
            "2",
            "L1",
            "white pine",
            "298",
            "14.6875",
            "13.75",
            "12.8125",
            "measured",
            "placed",
            "1",
            "N",
            ""),
        table.rows().get(0));
    for (Plan.Use use : Plan.Use.values()) {
      long count = table.column("use").stream().filter(use.words()::equals).count();
      assertEquals(context.plan().count(use), count, use.words());
    }
    assertEquals("estimated", table.rows().get(3).get(9));
    assertEquals("too short for every wall", table.rows().get(21).get(13));
  }

  @Test
  void logsBeforeAnyPlanHaveNoUse() {
    List<Log> logs = PlanFixtures.metric().job(2).logs();
    List<List<String>> rows = logs.stream().map(log -> PlainTables.logRow(log, true)).toList();
    PlainTable table = new PlainTable("logs", PlainTables.logHeader(true), rows);
    assertEquals("length_mm", table.header().get(5));
    assertEquals(logs.stream().map(Log::tag).toList(), table.column("log"));
    assertTrue(table.column("use").stream().allMatch(String::isEmpty));
  }

  @Test
  void settingsSayWhoSetThem() {
    CrewContext context =
        ListFixtures.of(
            PlanFixtures.inches().set(Setting.CHINKING_GAP, Length.ofInchFraction(5, 4)).plan(2));
    PlainTable table = table(context, "settings");
    assertEquals(Stream.of(Setting.values()).map(Setting::label).toList(), table.column("name"));
    assertTrue(table.rows().contains(List.of("Chinking_gap", "1.25", "in", "workbook")));
    assertTrue(table.rows().contains(List.of("Overhang", "3", "in", "default")));
    assertTrue(table.rows().contains(List.of("Sweep_most", "", "in", "default")));
    assertTrue(table.rows().contains(List.of("Slope_run", "3", "", "default")));
  }

  @Test
  void openingsAreThoseAskedFor() {
    PlainTable table = table(ListFixtures.inches(2), "openings");
    assertEquals(
        List.of("Front door", "S", "120", "36", "0", "82", "cut after stacking", ""),
        table.rows().get(0).subList(0, 8));
    assertEquals(PlanFixtures.LONG_REMARK, table.rows().get(1).get(7));
  }

  @ParameterizedTest
  @CsvSource({
    "25400000, 1, 25.4",
    "396875, 0.015625, 0.396875",
    "8466667, 0.333333, 8.466667",
    "0, 0, 0",
    "-12700000, -0.5, -12.7",
    "2540000000, 100, 2540"
  })
  void decimalsAreTrimmed(long nanometres, String inches, String millimetres) {
    Length length = Length.ofNanometres(nanometres);
    assertEquals(inches, new Decimals(false).one(length));
    assertEquals(millimetres, new Decimals(true).one(length));
  }

  private static void assertLengths(CrewContext context, List<String> texts, Length... lengths) {
    LengthUnit unit = context.rules().metric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    List<String> far = new ArrayList<>();
    for (int index = 0; index < lengths.length; index++) {
      Length read = Length.of(new BigDecimal(texts.get(index)), unit);
      if (read.minus(lengths[index]).absolute().inches() > 1e-6) {
        far.add(texts.get(index) + " is not " + lengths[index]);
      }
    }
    assertEquals(List.of(), far);
    assertEquals(lengths.length, texts.size());
  }

  @Test
  void theOrderStandsLineByLine() {
    CrewContext context = ListFixtures.of(PlanFixtures.inches().wanting(9).plan(6));
    PlainTable table = table(context, "order");
    assertEquals(
        "count,length_in,mid_from_in,mid_to_in,walls,for,butt_ask_length_in,butt_mid_at_in,"
            + "second_ask_length_in,second_mid_at_in,least_tip_in,better_tip_in",
        String.join(",", table.header()));
    assertEquals(context.plan().order().size(), table.rows().size());
    // A wall of 24 ft: 294 in trimmed; a butt log has 24 in of flare before it, and both 2 in.
    assertEquals(
        List.of("6", "298", "10", "12", "N S", "needed", "336", "173", "312", "149"),
        table.rows().get(0).subList(0, 10));
  }
}
