package roundbook.report.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.report.LivePlans;
import roundbook.report.live.LiveMap.CornerColumn;
import roundbook.report.live.LiveMap.PieceColumn;
import roundbook.report.live.LiveMap.RoundColumn;
import roundbook.sheet.LibraryFormulas;
import roundbook.sheet.LibreOffice;
import roundbook.stack.Levelling;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * What is read at the corners and cut otherwise, as a spreadsheet program outside the project
 * reckons with it.
 */
public class LiveCornersRecalculatedTest {
  @TempDir Path folder;

  /** Returns a copy that was reckoned anew after values were typed; the long tests have others. */
  Path recalculated(Path book, Map<String, ?> typed) throws Exception {
    return LibraryFormulas.recalculate(book, typed);
  }

  private Path written(Plan plan) throws Exception {
    return LivePlans.written(folder.resolve("plan.xlsx"), LivePlans.book(plan));
  }

  @Test
  void marksAsCutLiftWhatLiesOnThem() throws Exception {
    Plan plan = PlanFixtures.inches().plan(3);
    Length neck = plan.choice().courses().get(0).notch().lower();
    double cut = neck.inches() + 0.5;
    Path typed = recalculated(written(plan), Map.of("Lower_cut_1_E", cut));
    LiveMap map = LiveContext.of(LivePlans.context(plan)).map();
    for (int round = 1; round <= 3; round++) {
      for (var wall : map.walls()) {
        double planned = plan.stack().centre(round, wall).inches();
        double lift = round == 1 ? (wall.name().equals("E") ? 0.5 : 0) : 0.25;
        Object now = LibreOffice.value(typed, map.piece(round, wall, PieceColumn.HEIGHT));
        assertEquals(planned + lift, (double) now, LivePlans.NANOMETRES, round + wall.name());
      }
    }
  }

  static Stream<Arguments> readings() {
    return Stream.of(
        Arguments.of(List.of(0, 0, -2, 0), "ok"),
        Arguments.of(List.of(0, 2, -6, -2), "▲ FIX"),
        Arguments.of(List.of(-5, -5, -5, -5), "ok"),
        Arguments.of(List.of(-12, -8, -8, -9), "ok"),
        Arguments.of(List.of(6, 0, 1, 0), "▲ FIX"),
        Arguments.of(List.of(3, -12, 0, 20), "▲ FIX"));
  }

  @ParameterizedTest(name = "{0} sixteenths")
  @MethodSource("readings")
  void readingsGiveTheNextLowerMark(List<Integer> sixteenths, String verdict) throws Exception {
    Plan plan = PlanFixtures.inches().plan(3);
    Length planned = plan.stack().levelHeight(1);
    List<String> corners = plan.job().building().corners();
    List<Length> read = new ArrayList<>();
    Map<String, Object> typed = new TreeMap<>();
    for (int index = 0; index < corners.size(); index++) {
      read.add(planned.plus(Length.ofInchFraction(sixteenths.get(index), 16)));
      typed.put("Reading_1_" + corners.get(index), read.get(index).inches());
    }
    Path after = recalculated(written(plan), typed);
    Levelling levelling = Levelling.of(planned, read, plan.job().rules());
    assertEquals(verdict, LibreOffice.value(after, "Levels!I5"));
    assertEquals(levelling.level(), verdict.equals("ok"));
    Length lower = plan.choice().courses().get(1).notch().lower();
    LiveContext live = LiveContext.of(LivePlans.context(plan));
    for (int index = 0; index < corners.size(); index++) {
      Length next = levelling.nextLower(lower, read.get(index), plan.job().rules());
      Object now =
          LibreOffice.value(after, live.map().corner(1, corners.get(index), CornerColumn.NEXT));
      assertEquals(next.inches(), (double) now, LivePlans.NANOMETRES, corners.get(index));
    }
  }

  /** S is cut at LOWER 3 1/4 and UPPER 3 3/4: thinner logs typed later leave both as they are. */
  @Test
  void theFirstLogCutFixesTheMarksOfItsRound() throws Exception {
    Plan plan = PlanFixtures.inches().plan(3);
    Map<String, Object> typed = new TreeMap<>();
    for (String wall : List.of("N", "E", "S", "W")) {
      typed.put("Measured_1_" + wall, 11.5);
    }
    typed.put("Lower_cut_1_S", 3.25);
    typed.put("Upper_cut_1_S", 3.75);
    LiveMap map = LiveContext.of(LivePlans.context(plan)).map();
    Path measured = recalculated(written(plan), typed);
    assertTrue(3.75 != value(measured, map.round(1, RoundColumn.UPPER)));
    typed.put("Cut_1_S", "x");
    Path cut = recalculated(written(plan), typed);
    assertEquals(3.25, value(cut, map.round(1, RoundColumn.LOWER)));
    assertEquals(3.75, value(cut, map.round(1, RoundColumn.UPPER)));
    assertEquals(14.0, value(cut, map.round(1, RoundColumn.RISE)));
  }

  /** By hand: 1/4 in under the plan as a whole moves every height above and no mark. */
  @Test
  void wallsThatStandLowAsAWholeMoveThePlan() throws Exception {
    Plan plan = PlanFixtures.inches().plan(3);
    List<String> corners = plan.job().building().corners();
    Map<String, Object> typed = new TreeMap<>();
    type(typed, "Reading_1_", plan.stack().levelHeight(1), List.of(-4, -4, -4, -5), corners);
    Path after = recalculated(written(plan), typed);
    LiveMap map = LiveContext.of(LivePlans.context(plan)).map();
    for (int round = 1; round <= 3; round++) {
      double planned = plan.stack().levelHeight(round).inches();
      assertEquals(
          planned - (round == 1 ? 0 : 0.25),
          value(after, map.round(round, RoundColumn.LEVEL_HEIGHT)),
          LivePlans.NANOMETRES);
    }
    for (String corner : corners) {
      assertEquals(0.0, value(after, map.corner(2, corner, CornerColumn.CHANGE)));
    }
    String said = (String) LibreOffice.value(after, action(1, plan));
    assertTrue(
        said.contains("The walls stand 1/4 under the plan: nothing to do, it goes on from there."),
        said);
  }

  /** By hand: held, 1/4 in for all comes back after what levels them, 1/2 in at most. */
  @Test
  void aHeightThatIsHeldComesBack() throws Exception {
    Plan plan = PlanFixtures.inches().set(Setting.HOLD_HEIGHT, "yes").plan(3);
    List<String> corners = plan.job().building().corners();
    Map<String, Object> typed = new TreeMap<>();
    type(typed, "Reading_2_", plan.stack().levelHeight(2), List.of(-12, -8, -8, -9), corners);
    Path after = recalculated(written(plan), typed);
    LiveMap map = LiveContext.of(LivePlans.context(plan)).map();
    for (int index = 0; index < corners.size(); index++) {
      double change = List.of(8, 4, 4, 5).get(index) / 16.0;
      assertEquals(
          change, value(after, map.corner(3, corners.get(index), CornerColumn.CHANGE)), 1e-9);
    }
  }

  /** By hand: what is low is added, but no more than 1/2 in with what the round below asked. */
  @Test
  void topsReadWithinARoundGiveTheSecondLowerMark() throws Exception {
    Plan plan = PlanFixtures.inches().plan(3);
    List<String> corners = plan.job().building().corners();
    Map<String, Object> typed = new TreeMap<>();
    type(typed, "Reading_1_", plan.stack().levelHeight(1), List.of(-12, 0, 5, 0), corners);
    type(
        typed,
        "Reading_first_2_",
        plan.stack().firstLevelHeight(2),
        List.of(-5, -3, 2, 0),
        corners);
    Path after = recalculated(written(plan), typed);
    LiveMap map = LiveContext.of(LivePlans.context(plan)).map();
    for (int index = 0; index < corners.size(); index++) {
      String corner = corners.get(index);
      int first = List.of(8, 0, -2, 0).get(index);
      int second = List.of(0, 3, -2, 0).get(index);
      int high = List.of(-5, 0, 0, 0).get(index);
      assertEquals(first / 16.0, value(after, map.corner(2, corner, CornerColumn.CHANGE)));
      assertEquals(second / 16.0, value(after, map.corner(2, corner, CornerColumn.SECOND_CHANGE)));
      assertEquals(high / 16.0, value(after, map.corner(2, corner, CornerColumn.HIGH)));
    }
    Map<Corner, Length> readings = new TreeMap<>();
    Map<Corner, Length> firsts = new TreeMap<>();
    for (String corner : corners) {
      double read = (Double) typed.get("Reading_1_" + corner);
      double top = (Double) typed.get("Reading_first_2_" + corner);
      readings.put(new Corner(1, corner), Length.ofInchFraction(Math.round(read * 64), 64));
      firsts.put(new Corner(2, corner), Length.ofInchFraction(Math.round(top * 64), 64));
    }
    AsBuilt built = AsBuilt.NOTHING.withReadings(readings, firsts);
    Stack stack =
        Stack.of(plan.job().rules(), plan.job().building(), plan.choice().courses(), built);
    for (var piece : plan.pieces()) {
      var wall = piece.placed().wall();
      String right = plan.job().building().startCorner(wall);
      int round = piece.placed().round();
      assertEquals(
          stack.corners().lift(round, wall.laidFirst(), right).inches(),
          value(after, map.piece(round, wall, PieceColumn.RIGHT_LIFT)),
          LivePlans.NANOMETRES,
          round + wall.name());
    }
  }

  /** By hand: a top alone 1/4 in over level is pared to 1/8 in over it, by 1/2 in at most. */
  @Test
  void topsThatReadTooHighArePared() throws Exception {
    Plan plan = PlanFixtures.inches().plan(3);
    List<String> corners = plan.job().building().corners();
    Map<String, Object> typed = new TreeMap<>();
    type(typed, "Reading_1_", plan.stack().levelHeight(1), List.of(0, 5, -2, 1), corners);
    type(typed, "Reading_2_", plan.stack().levelHeight(2), List.of(3, -12, -9, 20), corners);
    typed.put("Reading_3_" + corners.get(0), plan.stack().levelHeight(3).inches() + 1);
    Path after = recalculated(written(plan), typed);
    LiveMap map = LiveContext.of(LivePlans.context(plan)).map();
    for (int index = 0; index < corners.size(); index++) {
      String corner = corners.get(index);
      int first = List.of(0, 3, 0, 0).get(index);
      int second = List.of(0, 0, 0, 8).get(index);
      assertEquals(first / 16.0, value(after, map.corner(1, corner, CornerColumn.PARE)));
      assertEquals(second / 16.0, value(after, map.corner(2, corner, CornerColumn.PARE)));
      assertEquals(0.0, value(after, map.corner(3, corner, CornerColumn.PARE)));
    }
    String said = (String) LibreOffice.value(after, action(1, plan));
    assertTrue(said.startsWith("PARE the tops of E W"), said);
    assertTrue(said.contains(" " + corners.get(1) + " 3/16, then"), said);
    assertTrue(((String) LibreOffice.value(after, action(3, plan))).startsWith("Type EIGHT"), said);
  }

  private static void type(
      Map<String, Object> typed, String name, Length planned, List<Integer> off, List<String> at) {
    for (int index = 0; index < at.size(); index++) {
      Length read = planned.plus(Length.ofInchFraction(off.get(index), 16));
      typed.put(name + at.get(index), read.inches());
    }
  }

  private static double value(Path book, String cell) throws Exception {
    return Math.rint((double) LibreOffice.value(book, cell) * 1e9) / 1e9;
  }

  private static String action(int round, Plan plan) {
    return "Round 0" + round + "!A" + LivePlans.rowOf(round, plan, "Cut_" + round);
  }
}
