package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.rounds.StepPlans.Step;
import roundbook.stack.Course;
import roundbook.units.Length;

/** Steps are looked at with few moves, and the one that is settled on is searched for in full. */
class StepPlansTest {
  private static final Job PLAIN = TwoRounds.job(8, TwoRounds::tapered);
  private static final Job HIGH =
      PLAIN.with(PLAIN.rules().with(Setting.WALL_HEIGHT, Length.ofInches(30), Origin.OPTION));
  private static final Choice WHOLE = TwoRounds.choice(PLAIN);

  /** What two rounds of four walls have on the way: 50,000 moves a place. */
  private static final long FEW = 400_000;

  private final List<String> asked = new ArrayList<>();
  private final Map<String, Choice> plans = new HashMap<>();
  private boolean stopped;
  private boolean stopsSearch;

  private Choice make(Step step, Effort effort) {
    String words = step.headers().map(Object::toString).orElse("free") + " " + effort.moves();
    asked.add(words);
    stopped = stopsSearch && effort.moves() == 0;
    return plans.getOrDefault(words, WHOLE);
  }

  private Choice settled(Job job, long moves, Function<Function<Step, Choice>, Choice> way) {
    Effort effort = Effort.usual(1).withMoves(moves).until(() -> stopped);
    return new StepPlans<Choice>(choice -> choice, this::make, effort).settled(job, way).choice();
  }

  private static Step step(Integer... headers) {
    Optional<Set<Integer>> places =
        headers.length == 0 ? Optional.empty() : Optional.of(Set.of(headers));
    return new Step(PairedJob.of(PLAIN), 2, places);
  }

  private static Choice scored(double total) {
    return new Choice(
        WHOLE.courses(),
        List.of(),
        new Choice.Score(total, total, 0, 0, 0, 0),
        Optional.empty(),
        List.of());
  }

  private static Choice lower() {
    List<Course> one = WHOLE.courses().subList(0, 1);
    return new Choice(one, List.of(), WHOLE.score(), Optional.empty(), List.of());
  }

  @Test
  void aJobOfOneStepIsSearchedForOnce() {
    settled(PLAIN, 0, plan -> plan.apply(step()));
    assertEquals(List.of("free 0"), asked);
  }

  @Test
  void aStepIsLookedAtOnceAndTheLastOneSearchedFor() {
    plans.put("free " + FEW, lower());
    settled(
        HIGH,
        0,
        plan -> {
          plan.apply(step());
          plan.apply(step());
          return plan.apply(step(4));
        });
    assertEquals(List.of("free " + FEW, "[4] " + FEW, "[4] 0"), asked);
  }

  /** Fewer moves than a look has are not spent twice. */
  @Test
  void aSmallEffortIsSpentAtOnce() {
    settled(HIGH, FEW, plan -> plan.apply(step()));
    assertEquals(List.of("free " + FEW), asked);
  }

  /** The search of the first step finds a wall too low, so the way now ends at the second. */
  @Test
  void theWayIsGoneAgainWithWhatWasSearchedFor() {
    plans.put("free 0", lower());
    Choice end =
        settled(
            HIGH,
            0,
            plan -> {
              Choice first = plan.apply(step());
              return first.courses().size() == 2 ? first : plan.apply(step(4));
            });
    assertEquals(2, end.courses().size());
    assertEquals(List.of("free " + FEW, "free 0", "[4] " + FEW, "[4] 0"), asked);
  }

  /** A search that is stopped at once may bring less than the look before it. */
  @Test
  void whatWasFoundBeforeStandsWhereTheSearchIsStopped() {
    Choice look = scored(2);
    Choice poor = scored(9);
    plans.put("free " + FEW, look);
    plans.put("free 0", poor);
    assertSame(poor, settled(HIGH, 0, plan -> plan.apply(step())));
    stopsSearch = true;
    assertSame(look, settled(HIGH, 0, plan -> plan.apply(step())));
  }
}
