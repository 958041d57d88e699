package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.plan.ShortYards;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** By how much another choice of the same logs could be better, in hundredths rounded up. */
class LeastScoreTest {
  private static final String SILL = "L2";
  private static final String PLATE = "L3";
  private static final BigDecimal LITTLE = new BigDecimal("0.001");
  private static final Job RANDOM = Jobs.random(91, 10);
  private static final Job JOB =
      RANDOM.with(RANDOM.rules().with(Setting.ROUNDS, BigDecimal.valueOf(2), Origin.OPTION));

  private static Effort turns(int count) {
    int[] turns = {0};
    return Effort.usual(0).until(() -> ++turns[0] > count);
  }

  /** A choice of few moves gives way to a better one; a longer search betters that no more. */
  @Test
  void aBetterChoiceIsHandedOver() {
    Choice poor = new BalancedChooser().choose(JOB, Effort.usual(1).withMoves(20));
    Choice told = LeastScore.reckoned(JOB, poor, turns(2_000));
    Choice good = new BalancedChooser().choose(JOB, Effort.usual(1).withMoves(200_000));
    assertTrue(told.score().total() < poor.score().total(), told.score() + " of " + poor.score());
    assertHolds(JOB, told);
    int most = told.nearness().orElseThrow().percent();
    double better = 1 - good.score().total() / told.score().total();
    assertTrue(100 * better <= most, 100 * better + " % of " + most);
  }

  private static void assertHolds(Job job, Choice choice) {
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses());
    assertEquals(List.of(), Verifier.verify(job, choice, stack).faults());
    int placed = choice.courses().stream().mapToInt(course -> course.logs().size()).sum();
    assertEquals(job.logs().size(), choice.unused().size() + placed);
  }

  /** Logs kept for a sill, a plate and a header lie where they lay, short logs too. */
  @Test
  void whatTheJobAsksForIsKept() {
    Job job = kept(ShortYards.of(7, 13, 15, 12).job(true));
    Choice poor = new BalancedChooser().choose(job, Effort.usual(1).withMoves(3_000));
    Choice told = LeastScore.reckoned(job, poor, turns(4_000));
    assertTrue(told.score().total() < poor.score().total(), told.score() + " of " + poor.score());
    assertHolds(job, told);
    assertTrue(!poor.placedPairs().isEmpty(), "short logs lie beside the door");
    assertEquals(poor.placedPairs(), told.placedPairs());
    for (String tag : List.of(SILL, PLATE)) {
      assertEquals(round(poor, tag), round(told, tag), tag);
    }
    KeptLogs kept = new KeptLogs(job);
    assertTrue(kept.overOpenings(told) >= kept.overOpenings(poor));
    assertEquals(poor.shortage(), told.shortage());
  }

  private static Job kept(Job job) {
    List<Log> logs = new ArrayList<>(job.logs());
    logs.set(1, Kept.log(logs.get(1), Log.Keep.SILL));
    logs.set(2, Kept.log(logs.get(2), Log.Keep.PLATE));
    logs.set(3, Kept.log(logs.get(3), Log.Keep.HEADER));
    return job.withLogs(logs);
  }

  private static OptionalInt round(Choice choice, String tag) {
    return choice.courses().stream()
        .filter(
            course -> course.logs().stream().anyMatch(log -> log.piece().log().tag().equals(tag)))
        .mapToInt(Course::round)
        .findFirst();
  }

  /** A plan that puts the worst gap first is not exchanged for one that is more even in all. */
  @Test
  void theWorstGapComesFirstWhereThatIsAsked() {
    Job job = JOB.with(JOB.rules().with(Setting.BALANCE_FOR, "worst", Origin.OPTION));
    Choice poor = new BalancedChooser().choose(job, Effort.usual(1).withMoves(20));
    Choice told = LeastScore.reckoned(job, poor, turns(500));
    assertEquals(poor.courses(), told.courses());
  }

  /** A re-plan keeps its logs: what is cut is settled, and no choice of the rest is better. */
  @Test
  void whatIsBuiltLiesWhereItLies() {
    Job free = JOB.with(JOB.rules().with(Setting.CHANGE_PAYS, LITTLE, Origin.OPTION));
    Choice poor = new BalancedChooser().choose(free, Effort.usual(1).withMoves(20));
    Course first = poor.courses().get(0);
    Map<Place, Held> cut =
        first.places().stream().collect(Collectors.toMap(FilledPlace::place, FilledPlace::held));
    AsBuilt.CutSize size = new AsBuilt.CutSize(first.notch().size(), free.rules().gap());
    Job job = free.withBuilt(AsBuilt.NOTHING.withPlaces(cut, Map.of()).withCut(List.of(size)));
    Choice told = LeastScore.told(job, poor, turns(2_000));
    assertEquals(poor.courses(), told.courses());
    Map<Place, Held> all = new HashMap<>(cut);
    poor.courses().get(1).places().forEach(each -> all.put(each.place(), each.held()));
    Choice good = new KeepingChooser(all, OptionalInt.of(2)).choose(job, Effort.usual(1)).choice();
    assertEquals(first.places(), good.courses().get(0).places());
    double better = 1 - good.score().total() / told.score().total();
    assertTrue(better > 0, "some log is exchanged");
    int most = told.nearness().orElseThrow().percent();
    int freely = LeastScore.told(free, poor, turns(2_000)).nearness().orElseThrow().percent();
    assertTrue(100 * better <= most && most <= freely, 100 * better + " % of " + most);
  }

  /** Whether more time would tell more. */
  @Test
  void whatEndsByItselfSaysSo() {
    Choice poor = new BalancedChooser().choose(JOB, Effort.usual(1).withMoves(20));
    assertFalse(LeastScore.told(JOB, poor, turns(20)).nearness().orElseThrow().ended());
    Job exact = JOB.with(JOB.rules().with(Setting.SIZE_STEP, Length.ZERO, Origin.OPTION));
    Choice means = new BalancedChooser().choose(exact, Effort.usual(1).withMoves(20));
    Nearness near = LeastScore.told(exact, means, turns(20)).nearness().orElseThrow();
    assertTrue(near.ended());
    assertEquals(100, near.percent());
  }
}
