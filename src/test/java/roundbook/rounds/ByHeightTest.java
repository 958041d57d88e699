package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** A wall height gives the number of rounds whose own plan comes nearest to it. */
class ByHeightTest {
  private static final Effort EFFORT = new Effort(20_000, 1, () -> false, done -> {});

  /** The true answer is found by planning every number of rounds. */
  @ParameterizedTest(name = "{0} in")
  @ValueSource(ints = {20, 40, 47, 54, 61, 68, 75, 82, 90, 97, 104})
  void noOtherNumberOfRoundsComesNearer(int inches) {
    Job job = Jobs.random(51, 48);
    Length wanted = Length.ofInches(inches);
    Choice choice = plan(job, Setting.WALL_HEIGHT, wanted);
    double own = miss(job, choice, wanted);
    for (int rounds = 1; rounds <= 12; rounds++) {
      Choice other = plan(job, Setting.ROUNDS, BigDecimal.valueOf(rounds));
      assertTrue(
          own <= miss(job, other, wanted) + 1e-9,
          choice.courses().size() + " rounds chosen, " + rounds + " are nearer");
    }
    assertTrue(choice.shortage().isEmpty());
  }

  /** Thick logs that lie unused must not count: the plan takes the height from its own rounds. */
  @Test
  void whatRunsOutIsCountedByTheHeightOfWhatStands() {
    Job job = Jobs.random(52, 20);
    Length wanted = Length.ofInches(120);
    Choice choice = plan(job, Setting.WALL_HEIGHT, wanted);
    Shortage shortage = choice.shortage().orElseThrow();
    assertEquals(5, shortage.built());
    double height = height(job, choice);
    double course = choice.courses().get(4).notch().size().inches() + 1;
    double missing = (120 - height) / course;
    assertEquals(missing, shortage.wanted() - 5, 0.5 + 1e-9);
  }

  /** When the logs run out but what stands is nearest all the same, nothing is missing. */
  @Test
  void logsForAllTheHeightNeedNoFurtherRound() {
    Job job = Jobs.random(53, 24);
    Choice all = plan(job, Setting.ROUNDS, BigDecimal.valueOf(6));
    Length near = Length.ofInches(Math.round(height(job, all)) + 4);
    Choice choice = plan(job, Setting.WALL_HEIGHT, near);
    assertEquals(6, choice.courses().size());
    assertTrue(choice.shortage().isEmpty());
  }

  @Test
  void roundsThatAreToldWinOverAHeight() {
    Job job = Jobs.random(54, 40);
    Job both = job.with(job.rules().with(Setting.WALL_HEIGHT, Length.ofInches(100), Origin.OPTION));
    assertEquals(3, plan(both, Setting.ROUNDS, BigDecimal.valueOf(3)).courses().size());
  }

  private static Choice plan(Job job, Setting setting, Object value) {
    Job asked = job.with(job.rules().with(setting, value, Origin.OPTION));
    return new BalancedChooser().choose(asked, EFFORT);
  }

  private static double height(Job job, Choice choice) {
    return Stack.of(job.rules(), job.building(), choice.courses()).wallHeight().inches();
  }

  private static double miss(Job job, Choice choice, Length wanted) {
    return Math.abs(height(job, choice) - wanted.inches());
  }
}
