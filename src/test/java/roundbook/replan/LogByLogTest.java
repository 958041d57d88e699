package roundbook.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Setting;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.replan.Difference.DifferenceKind;
import roundbook.site.CrewWorkbook;
import roundbook.site.SiteReport;
import roundbook.units.Length;

/** A round is cut log by log, and the first log that is cut fixes the marks of the others. */
class LogByLogTest {
  private static final Effort FEW = Effort.usual(1).withMoves(20_000);
  private static final Plan PLAN =
      PlanFixtures.inches()
          .set(Setting.CHINKING_GAP, Length.ofInchFraction(1, 2))
          .set(Setting.GAP_LEAST, Length.ofInchFraction(1, 4))
          .plan(3);

  private static Read<Replan> read(CrewWorkbook book) {
    Read<SiteReport> site = book.read();
    return site.value().isEmpty()
        ? Read.failed(site.problems())
        : Replanner.replan(site.value().get(), FEW);
  }

  private static Replan replan(CrewWorkbook book) {
    Read<Replan> made = read(book);
    return made.value().orElseThrow(() -> new AssertionError(made.problems().toString()));
  }

  private static String tag(Plan plan, int round, String wall) {
    return plan.round(round).stream()
        .filter(piece -> piece.placed().wall().name().equals(wall))
        .map(piece -> piece.placed().tags())
        .findFirst()
        .orElseThrow();
  }

  /** What a crew types with S cut at LOWER 3 1/4 and UPPER 3 3/4 and logs that are thinner. */
  private static Map<String, Object> southCut() {
    Map<String, Object> typed = new TreeMap<>();
    typed.put("Cut_1_S", "x");
    typed.put("Lower_cut_1_S", 3.25);
    typed.put("Upper_cut_1_S", 3.75);
    for (PiecePlan piece : PLAN.round(1)) {
      double mid = piece.placed().first().piece().mid().inches();
      typed.put("Measured_1_" + piece.placed().wall().name(), Math.rint(mid * 16) / 16 - 0.5);
    }
    return typed;
  }

  private static void assertMarks(Plan plan) {
    var notch = plan.choice().courses().get(0).notch();
    assertEquals(3.25, notch.lower().inches(), 1e-9);
    assertEquals(3.75, notch.upper().inches(), 1e-9);
  }

  @Test
  void theFirstLogCutFixesTheMarksOfItsRound() {
    Plan cut = replan(CrewWorkbook.of(PLAN).type(southCut())).plan();
    assertMarks(cut);
    assertTrue(cut.job().built().isCut(new Place(1, "S")));
    assertEquals(Set.of("N", "E", "W"), cut.job().built().cut().get(0).open());
    assertEquals(0, cut.job().built().rounds());
    String lost = tag(PLAN, 1, "N");
    Map<String, Object> later = new TreeMap<>();
    later.put("Tally_correction", -0.5);
    later.put("Measured_1_E", 12.5);
    later.put("Lost_" + PLAN.job().log(lost).orElseThrow().origin().row(), "x");
    later.put("Measured_1_N", "");
    Plan next = replan(CrewWorkbook.of(cut).type(later)).plan();
    assertMarks(next);
    assertEquals(tag(PLAN, 1, "S"), tag(next, 1, "S"));
    assertNotEquals(lost, tag(next, 1, "N"));
    Plan done = replan(CrewWorkbook.of(next).type(Map.of("Cut_1", "x"))).plan();
    assertMarks(done);
    assertEquals(1, done.job().built().rounds());
  }

  @Test
  void allLogsTickedAreARound() {
    Map<String, Object> typed = new TreeMap<>();
    PLAN.job().building().walls().forEach(wall -> typed.put("Cut_1_" + wall.name(), "x"));
    assertEquals(1, replan(CrewWorkbook.of(PLAN).type(typed)).plan().job().built().rounds());
  }

  @Test
  void aLogCutOverAHoleOrNoLongerTickedIsRefused() {
    assertTrue(
        read(CrewWorkbook.of(PLAN).type(Map.of("Cut_2_E", "x")))
            .problems()
            .toString()
            .contains("contradiction.hole"));
    Plan cut = replan(CrewWorkbook.of(PLAN).type(southCut())).plan();
    Read<Replan> unticked = read(CrewWorkbook.of(cut).type(Map.of("Cut_1_S", "")));
    assertTrue(unticked.value().isEmpty());
    Problem said = unticked.problems().get(0);
    assertTrue(said.toString().contains("contradiction.unticked"), said.toString());
    assertTrue(said.where().toString().contains("Round 01"), said.toString());
  }

  /** What is cut and measured at once is no mark to change: pages not named stay good. */
  @Test
  void aRoundTypedAndCutAtOnceTellsNoOtherMarks() {
    Map<String, Object> typed = southCut();
    typed.keySet().removeIf(name -> !name.startsWith("Measured"));
    typed.put("Cut_1", "x");
    Replan replan = replan(CrewWorkbook.of(PLAN).type(typed));
    assertNotEquals(
        PLAN.choice().courses().get(0).notch(), replan.plan().choice().courses().get(0).notch());
    assertTrue(
        replan.differences().stream()
            .noneMatch(each -> each.kind() == DifferenceKind.MARKS && each.round() == 1));
  }

  /** A workbook of the layout before has no boxes for single logs, and misses none. */
  @Test
  void anOlderLayoutIsReadBack() {
    CrewWorkbook old = CrewWorkbook.of(PLAN).type(Map.of("Made_layout", 2.0, "Cut_1", "x"));
    for (int round = 1; round <= 3; round++) {
      for (var wall : PLAN.job().building().walls()) {
        old.lose("Cut_" + round + "_" + wall.name());
      }
    }
    assertEquals(1, replan(old).plan().job().built().rounds());
  }
}
