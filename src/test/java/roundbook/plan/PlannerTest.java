package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.problem.ProblemCode;
import roundbook.rounds.BalancedChooser;
import roundbook.units.Length;

/** Whole plans of made-up yards; each is checked by the verifier as it is made. */
class PlannerTest {
  private static final Effort SHORT = new Effort(20_000, 1, () -> false, done -> {});

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void plansEveryRoundThatTheLogsAllow(long seed) {
    Job job = Jobs.random(seed, 32);
    Plan plan = new Planner(new BalancedChooser()).plan(job, SHORT);
    assertEquals(8, plan.rounds(), "seed " + seed);
    assertEquals(32, plan.count(Plan.Use.PLACED));
    assertTrue(plan.choice().shortage().isEmpty());
    assertFalse(saysStopped(plan));
  }

  /**
   * Eleven rounds of logs are there; nobody said how high, so a storey is built, and it is said.
   */
  @Test
  void stopsAtAStoreyWhereNobodySaysHowHigh() {
    Plan plan = new Planner(new BalancedChooser()).plan(Jobs.random(1, 44), SHORT);
    assertEquals(8, plan.rounds());
    assertTrue(saysStopped(plan));
    assertTrue(plan.choice().shortage().isEmpty());
  }

  private static boolean saysStopped(Plan plan) {
    return plan.problems().stream().anyMatch(each -> each.code() == ProblemCode.WALL_HIGH);
  }

  @Test
  void theSameJobGivesTheSamePlan() {
    Job job = Jobs.random(7, 40);
    Plan one = new Planner(new BalancedChooser()).plan(job, SHORT);
    Plan other = new Planner(new BalancedChooser()).plan(job, SHORT);
    assertEquals(one.pieces(), other.pieces());
  }

  @Test
  void saysHowManyLogsOfWhichLengthAreMissing() {
    Job few = Jobs.random(3, 30);
    Job job =
        new Job(
            few.rules().with(Setting.ROUNDS, new BigDecimal(9), Origin.OPTION),
            few.building(),
            few.logs(),
            List.of(),
            List.of());
    Plan plan = new Planner(new BalancedChooser()).plan(job, SHORT);
    assertEquals(7, plan.rounds());
    var shortage = plan.choice().shortage().orElseThrow();
    assertEquals(9, shortage.wanted());
    assertEquals(36 - 30, shortage.count());
    assertFalse(plan.order().isEmpty());
    assertTrue(plan.problems().stream().anyMatch(each -> each.code().id().equals("too-few-logs")));
  }

  @ParameterizedTest
  @CsvSource({"12, 1", "20, 2"})
  void aLogThatIsTooShortIsLeftOut(long feet, int squaring) {
    Length wall = Length.ofInches(12 * feet);
    Length needed = wall.plus(Length.ofInches(2 * 3 + 2 * squaring));
    Job job =
        new Job(
            Jobs.rules(false)
                .with(Setting.SQUARING_ALLOWANCE, Length.ofInches(squaring), Origin.OPTION),
            Jobs.building(wall, wall, Length.ofInches(6)),
            List.of(
                Jobs.log("1", needed, "14", "13", "12"),
                Jobs.log("2", needed, "14", "13", "12"),
                Jobs.log("3", needed, "14", "13", "12"),
                Jobs.log("4", needed, "14", "13", "12"),
                Jobs.log("5", needed.minus(Length.ofNanometres(1)), "14", "13", "12")),
            List.of(),
            List.of());
    Plan plan = new Planner(new BalancedChooser()).plan(job, SHORT);
    assertEquals(1, plan.rounds());
    assertEquals(1, plan.count(Plan.Use.LEFT_OUT));
    assertTrue(
        plan.problems().stream()
            .anyMatch(each -> each.code().id().equals("too-short") && each.log().equals("5")));
  }
}
