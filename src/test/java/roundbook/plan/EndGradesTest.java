package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.buying.Line;
import roundbook.buying.Order;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.notch.NeckFit.Grade;
import roundbook.problem.Briefing;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Severity;
import roundbook.problem.words.Sentences;
import roundbook.rounds.BalancedChooser;
import roundbook.units.Length;

/** How many ends are flagged in yards of sixty logs cut from measured stems. */
class EndGradesTest {
  private static final Effort SHORT = new Effort(20_000, 1, () -> false, done -> {});

  private static final int ENDS = 64;
  private static final String NUMBERS =
      "round \\d wall [NESW], log \\d+: .*(bears on \\d+ %|UPPER|no sawn face).*";

  private static Plan plan(long seed, int longFeet, int shortFeet, String tipRule)
      throws IOException {
    List<Log> logs = new StemShapes(seed).yard(60, longFeet * 12 + 24, shortFeet * 12 + 24);
    Job job =
        new Job(
            Jobs.rules(false)
                .with(Setting.ROUNDS, BigDecimal.valueOf(8), Origin.OPTION)
                .with(Setting.TIP_RULE, tipRule, Origin.OPTION),
            Jobs.building(
                Length.ofInches(12L * longFeet),
                Length.ofInches(12L * shortFeet),
                Length.ofInches(6)),
            logs,
            List.of(),
            List.of());
    return new Planner(new BalancedChooser()).plan(job, SHORT);
  }

  private static long ends(Plan plan, Grade grade) {
    return plan.pieces().stream()
        .flatMap(piece -> Stream.of(piece.buttFit(), piece.tipFit()))
        .filter(fit -> fit.grade() == grade)
        .count();
  }

  private static List<Problem> told(Plan plan) {
    return plan.problems().stream().filter(each -> each.code() == ProblemCode.TIP_THIN).toList();
  }

  /**
   * Of 64 ends of walls of 28 ft fewer than three in ten are to be looked at, where each log used
   * to be warned of, and each is told with its numbers.
   */
  @Test
  void longWallsHaveSomeEndsToLookAt() throws IOException {
    long looked = 0;
    for (long seed = 1; seed <= 3; seed++) {
      Plan plan = plan(seed, 28, 20, "warn");
      assertEquals(8, plan.rounds());
      looked += ends(plan, Grade.LOOK);
      List<Problem> told = told(plan);
      for (Problem problem : told) {
        String message = Sentences.english().message(problem);
        assertTrue(message.matches(NUMBERS), message);
      }
      assertEquals(
          ends(plan, Grade.STOP) > 0,
          told.stream().anyMatch(each -> each.severity() == Severity.ERROR));
      assertTrue(Briefing.of(plan.problems()).first().size() <= Briefing.LINES_MOST);
    }
    assertTrue(looked > 0 && looked < 3 * ENDS * 3 / 10, "of 192 ends " + looked);
  }

  /** Where ends graded stop are refused the same yard builds all eight rounds without one. */
  @Test
  void whatIsRefusedIsWhatWouldBeStopped() throws IOException {
    Plan plan = plan(2, 28, 20, "refuse");
    assertEquals(8, plan.rounds());
    assertEquals(0, ends(plan, Grade.STOP));
  }

  /**
   * A yard whose tips are as the printed order asks builds all rounds without an end to stop at.
   */
  @Test
  void logsBoughtByAnOrderCanHoldTheirMarks() throws IOException {
    BuildRules rules =
        Jobs.rules(false)
            .with(Setting.ROUNDS, BigDecimal.valueOf(8), Origin.OPTION)
            .with(Setting.TIP_RULE, "refuse", Origin.OPTION);
    Building walls = Jobs.building(Length.ofInches(240), Length.ofInches(192), rules.thickness());
    StemShapes stems = new StemShapes(4);
    List<Log> logs = new ArrayList<>();
    for (Line line : Order.of(rules, walls).value().orElseThrow().lines()) {
      logs.addAll(stems.logs(line, logs.size() + 1, rules.length(Setting.BUTT_SPARE)));
    }
    Job job = new Job(rules, walls, logs, List.of(), List.of());
    Plan plan = new Planner(new BalancedChooser()).plan(job, SHORT);
    assertEquals(8, plan.rounds());
    assertEquals(0, ends(plan, Grade.STOP));
    assertTrue(ends(plan, Grade.LOOK) < ENDS / 4, "of 64 ends " + ends(plan, Grade.LOOK));
  }
}
