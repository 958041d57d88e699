package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.plan.Jobs;

/** By how much another choice of the same logs could be better, in hundredths rounded up. */
class LeastScoreTest {
  private static final Job RANDOM = Jobs.random(91, 10);
  private static final Job JOB =
      RANDOM.with(RANDOM.rules().with(Setting.ROUNDS, BigDecimal.valueOf(2), Origin.OPTION));

  /** A choice of few moves is bettered by a longer search, by no more than was said. */
  @Test
  void aLongerSearchBettersItByNoMore() {
    Choice poor = new BalancedChooser().choose(JOB, Effort.usual(1).withMoves(20));
    int[] turns = {0};
    Choice told = LeastScore.reckoned(JOB, poor, Effort.usual(0).until(() -> ++turns[0] > 80));
    Choice good = new BalancedChooser().choose(JOB, Effort.usual(1).withMoves(200_000));
    int most = told.betterByAtMost().orElseThrow();
    assertTrue(most > 0 && most <= 100, most + " %");
    double better = 1 - good.score().total() / poor.score().total();
    assertTrue(100 * better <= most, 100 * better + " % of " + most);
    assertEquals(poor.courses(), told.courses());
  }

  @Test
  void hundredthsAreRoundedUp() {
    Choice choice = new BalancedChooser().choose(JOB, Effort.usual(1).withMoves(1_000));
    double total = choice.score().total();
    assertEquals(OptionalInt.empty(), choice.betterByAtMost());
    assertEquals(OptionalInt.of(100), choice.withLeast(0).betterByAtMost());
    assertEquals(OptionalInt.of(20), choice.withLeast(0.803 * total).betterByAtMost());
    assertEquals(OptionalInt.of(1), choice.withLeast(0.9998 * total).betterByAtMost());
    assertEquals(OptionalInt.of(0), choice.withLeast(0.99995 * total).betterByAtMost());
  }
}
