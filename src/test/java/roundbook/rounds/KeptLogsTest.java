package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Doors;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.OpeningCut;
import roundbook.units.Length;

/** Logs are used as the tally asks: kept ones in their places, crooked and thin ones nowhere. */
class KeptLogsTest {
  private static final Effort EFFORT = new Effort(30_000, 1, () -> false, done -> {});

  @ParameterizedTest
  @EnumSource(
      value = Log.Keep.class,
      names = {"SILL", "PLATE"})
  void everyLogKeptForARoundLiesInIt(Log.Keep keep) {
    Job job = keep(Jobs.random(71, 48), keep, 2, 3, 7);
    Choice choice = choose(job);
    int round = keep == Log.Keep.SILL ? 1 : choice.courses().size();
    for (int number : List.of(2, 3, 7)) {
      assertEquals(round, placed(choice, number).round(), "log " + number);
    }
    assertVerified(job, choice);
  }

  @Test
  void noMoreAreKeptThanTheRoundCanHold() {
    Job job = keep(Jobs.random(72, 48), Log.Keep.SILL, 1, 2, 3, 4, 5, 6, 7);
    Choice choice = choose(job);
    long sills =
        choice.courses().get(0).places().stream()
            .filter(log -> log.first().piece().log().traits().keep() == Log.Keep.SILL)
            .count();
    assertEquals(4, sills);
    assertVerified(job, choice);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {73, 74, 75})
  void aLogKeptForAHeaderLiesWholeOverTheOpening(long seed) {
    Job random = keep(Jobs.random(seed, 48), Log.Keep.HEADER, 6);
    Job job = withDoor(random);
    Plan plan = new Planner(new BalancedChooser()).plan(job, EFFORT);
    OpeningCut door = plan.takeoff().openings().get(0);
    assertEquals("L6", door.header().orElseThrow().tags());
    LogCut over =
        door.cuts().stream()
            .filter(cut -> cut.log().equals(door.header().get()))
            .findFirst()
            .orElseThrow();
    assertTrue(!over.through(), "the log over the door is whole");
  }

  /** A header log may lie anywhere where the tally asks for one and there is no opening. */
  @Test
  void withoutAnOpeningAHeaderLogIsLikeAnyOther() {
    Job job = keep(Jobs.random(76, 32), Log.Keep.HEADER, 4);
    assertEquals(8, choose(job).courses().size());
  }

  /** Sweep is refused where it is more than allowed, to the nanometre. */
  @Test
  void aLogWithMoreSweepThanAllowedIsNeverPlaced() {
    Job random = Jobs.random(77, 44);
    Length most = Length.ofInchFraction(3, 2);
    List<Log> logs = new ArrayList<>(random.logs());
    logs.set(4, Kept.log(logs.get(4), Log.Keep.ANY, most));
    logs.set(5, Kept.log(logs.get(5), Log.Keep.ANY, most.plus(Length.ofNanometres(1))));
    Job job =
        random.withLogs(logs).with(random.rules().with(Setting.SWEEP_MOST, most, Origin.OPTION));
    Fit fit = new Fit(job);
    assertTrue(fit.refused(logs.get(4)).isEmpty());
    assertEquals(Fit.Reason.CROOKED, fit.refused(logs.get(5)).orElseThrow());
    assertTrue(choose(job).unused().contains(logs.get(5)));
  }

  /** A log no thicker than the wall at any end would show no two faces there. */
  @Test
  void aLogThatDoesNotCleanUpToTheThicknessIsNeverPlaced() {
    Job random = Jobs.random(78, 44);
    List<Log> logs = new ArrayList<>(random.logs());
    Length length = Length.ofInches(180);
    logs.set(0, Jobs.log("L1", length, "9", "7", "5"));
    Job job = random.withLogs(logs);
    Choice choice = choose(job);
    assertTrue(choice.unused().contains(logs.get(0)));
    for (Course course : choice.courses()) {
      for (FilledPlace log : course.places()) {
        assertTrue(log.tip().isMoreThan(log.wall().thickness()));
      }
    }
  }

  /** With Size_step 0 the size of a round is its exact mean, and gaps follow from it. */
  @Test
  void aSizeStepOfZeroPlansWithTheExactMean() {
    Job random = Jobs.random(79, 40);
    Job job = random.with(random.rules().with(Setting.SIZE_STEP, Length.ZERO, Origin.OPTION));
    Choice choice = choose(job);
    for (Course course : choice.courses()) {
      double mean =
          course.places().stream().mapToDouble(log -> log.mid().inches()).average().orElse(0);
      assertEquals(mean, course.notch().size().inches(), 1e-7);
    }
    assertVerified(job, choice);
  }

  /** Weighing the worst gap first must not widen it, over several yards with logs to spare. */
  @Test
  void theWorstGapFirstMakesTheWorstGapSmaller() {
    double even = 0;
    double worst = 0;
    for (long seed = 81; seed <= 84; seed++) {
      Job any = Jobs.random(seed, 44);
      BigDecimal rounds = BigDecimal.valueOf(9);
      Job job = any.with(any.rules().with(Setting.ROUNDS, rounds, Origin.OPTION));
      even += worstError(job, longer(job));
      Job first = job.with(job.rules().with(Setting.BALANCE_FOR, "worst", Origin.OPTION));
      worst += worstError(first, longer(first));
    }
    assertTrue(worst < even, worst + " against " + even);
  }

  private static double worstError(Job job, Choice choice) {
    double gap = job.rules().gap().inches();
    return Stack.of(job.rules(), job.building(), choice.courses()).joints().stream()
        .mapToDouble(joint -> error(joint, gap))
        .max()
        .orElse(0);
  }

  /** Returns the greatest error at the trimmed ends and the middle, which the score is made of. */
  private static double error(Joint joint, double gap) {
    Length trimmed = joint.lower().trimmed();
    return Stream.of(Length.ZERO, trimmed.dividedBy(2), trimmed)
        .mapToDouble(at -> Math.abs(joint.gapAt(at).inches() - gap))
        .max()
        .orElse(0);
  }

  private static Choice longer(Job job) {
    return new BalancedChooser().choose(job, EFFORT.withMoves(2_400_000));
  }

  private static Choice choose(Job job) {
    return new BalancedChooser().choose(job, EFFORT);
  }

  private static FilledPlace placed(Choice choice, int number) {
    return choice.courses().stream()
        .flatMap(course -> course.places().stream())
        .filter(log -> log.tags().equals("L" + number))
        .findFirst()
        .orElseThrow();
  }

  private static Job withDoor(Job job) {
    return Doors.with(job, Doors.door("N", 90, 82, false));
  }

  private static Job keep(Job job, Log.Keep keep, Integer... numbers) {
    List<Log> logs = new ArrayList<>(job.logs());
    for (int number : numbers) {
      logs.set(number - 1, Kept.log(logs.get(number - 1), keep));
    }
    return job.withLogs(logs);
  }

  private static void assertVerified(Job job, Choice choice) {
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses());
    assertEquals(List.of(), Verifier.verify(job, choice, stack).faults());
  }
}
