package roundbook.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.GapSpot;
import roundbook.job.GapSpot.Station;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.replan.GapCheck.Cause;
import roundbook.replan.GapCheck.Line;
import roundbook.site.CrewWorkbook;
import roundbook.site.SiteReport;
import roundbook.units.Length;

/** Gaps that come back: predicted, measured, and which cause fits, worked out by hand. */
class GapCheckTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(3);
  private static final Effort FEW = Effort.usual(1).withMoves(20_000);

  private static Line line(int below, Station at, long sixteenths, int load) {
    Length planned = Length.ofInches(1);
    Length measured = planned.plus(Length.ofInchFraction(sixteenths, 16));
    return new Line(new GapSpot(below, "N", at), planned, measured, load);
  }

  private static GapCheck check(long... sixteenths) {
    List<Line> lines = new ArrayList<>();
    for (int at = 0; at < sixteenths.length; at++) {
      int joint = at / 3;
      lines.add(line(1 + joint, Station.values()[at % 3], sixteenths[at], 4 - joint));
    }
    return new GapCheck(lines);
  }

  private static Length sixteenths(long count) {
    return Length.ofInchFraction(count, 16);
  }

  @Test
  void wallsThatDoWhatThePlanSaidAreTold() {
    GapCheck check = check(1, -1, 0, 2, -2, 0);
    assertEquals(Length.ZERO, check.mean());
    assertEquals(Math.sqrt(10 / 5.0) / 16, check.spread().inches(), 1e-6);
    assertTrue(check.asPlanned());
    assertTrue(check.finding().isEmpty());
  }

  /** Every gap 3/16 in less: logs 3/16 in larger, all of it. */
  @Test
  void logsLargerThanTypedMakeEveryGapLess() {
    GapCheck.Finding found = check(-3, -3, -3, -3, -3, -3).finding().orElseThrow();
    assertEquals(new GapCheck.Finding(Cause.LARGER, sixteenths(3), 1), found);
    assertEquals(Cause.SMALLER, check(3, 4, 3, 2, 3, 3).finding().orElseThrow().cause());
  }

  /** 3/8 in more at the left and less at the right: marks 3/4 in apart from end to end. */
  @Test
  void marksThatAreOffTiltTheJoint() {
    GapCheck check = check(6, 0, -6, 6, 0, -6, -6, 0, 6);
    assertEquals(Length.ZERO, check.mean());
    GapCheck.Finding found = check.finding().orElseThrow();
    assertEquals(new GapCheck.Finding(Cause.MARKS, sixteenths(12), 1), found);
  }

  /** 1/16 in less for each round above: 4/16 in the lowest joint, 1/16 in the highest. */
  @Test
  void settlingGrowsWithWhatLiesAbove() {
    GapCheck check = check(-4, -4, -4, -3, -3, -3, -2, -2, -2, -1, -1, -1);
    GapCheck.Finding found = check.finding().orElseThrow();
    assertEquals(new GapCheck.Finding(Cause.SETTLING, sixteenths(1), 1), found);
  }

  @Test
  void noCauseIsNamedThatExplainsLessThanHalf() {
    assertTrue(check(9, -9, 9, -9, 9, -9).finding().isEmpty());
    assertTrue(check(-9, -9).finding().isEmpty(), "two gaps tell nothing");
  }

  private static Read<Replan> replanned(Map<String, Object> gaps) {
    Map<String, Object> typed = new TreeMap<>(Map.of("Cut_1", "x", "Cut_2", "x"));
    typed.putAll(gaps);
    Read<SiteReport> read = CrewWorkbook.of(PLAN).type(typed).read();
    return read.value().isEmpty()
        ? Read.failed(read.problems())
        : Replanner.replan(read.value().get(), FEW);
  }

  private static double planned(String wall) {
    var north = PLAN.job().building().wall(wall).orElseThrow();
    return PLAN.stack().joints(north).get(0).middle().inches();
  }

  @Test
  void typedGapsComeBackBesideThePlan() {
    Map<String, Object> gaps = new TreeMap<>();
    for (String wall : List.of("N", "E", "S", "W")) {
      gaps.put("Gap_1_" + wall + "_middle", Math.max(0, planned(wall) - 0.25));
    }
    Read<Replan> made = replanned(gaps);
    Replan replan = made.value().orElseThrow(() -> new AssertionError(made.problems()));
    assertEquals(4, replan.gaps().lines().size());
    assertEquals(-0.25, replan.gaps().mean().inches(), 1e-6);
    String said = made.problems().toString();
    assertTrue(said.contains("gaps-differ.larger"), said);
    Read<SiteReport> again = CrewWorkbook.of(replan.plan()).read();
    assertEquals(4, again.value().orElseThrow().typed().gaps().size(), "typed again");
  }

  @Test
  void aGapThatCannotBeIsRefused() {
    double gap = planned("N");
    assertTrue(refused(Map.of("Gap_1_N_middle", gap + 2)).contains("out-of-range.gap"));
    assertTrue(refused(Map.of("Gap_2_N_left", 1.0)).contains("contradiction.gap"));
    String doubted = replanned(Map.of("Gap_1_N_middle", gap + 1)).problems().toString();
    assertTrue(doubted.contains("doubtful-value.gap"), doubted);
  }

  private static String refused(Map<String, Object> gaps) {
    Read<Replan> made = replanned(gaps);
    assertTrue(made.value().isEmpty());
    return made.problems().stream().map(Problem::toString).toList().toString();
  }
}
