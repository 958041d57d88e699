package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.Balancer;
import roundbook.balance.Effort;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Kept;
import roundbook.job.Log;
import roundbook.job.Pin;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** Choices keep wishes, pins and refusals, beat a plain deal, and hold against the verifier. */
class BalancedChooserTest {
  private static final Effort EFFORT = new Effort(100_000, 1, () -> false, done -> {});

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23, 24, 25})
  void beatsSortingAndDealing(long seed) {
    Job job = Jobs.random(seed, 44);
    Choice dealt = new BalancedChooser(Balancer.sortAndDeal()).choose(job, EFFORT);
    Choice searched = new BalancedChooser().choose(job, EFFORT);
    double ratio = dealt.score().total() / searched.score().total();
    assertTrue(ratio > 1.5, "seed " + seed + ": " + ratio);
  }

  @Test
  void pinsAndWishesAreKept() {
    Job job = Jobs.random(31, 40);
    List<Pin> pins =
        List.of(
            new Pin(OptionalInt.of(3), "E", "L7", "", "", place(2)),
            new Pin(OptionalInt.of(1), "N", "L12", "", "", place(3)));
    Choice choice = new BalancedChooser().choose(with(job, job.logs(), pins), EFFORT);
    assertEquals("L7", tag(choice, 3, "E"));
    assertEquals("L12", tag(choice, 1, "N"));
    assertEquals(List.of(), faults(with(job, job.logs(), pins), choice));
  }

  @Test
  void sillsLieLowAndSparesStayOut() {
    Job job = Jobs.random(32, 44);
    List<Log> logs = new ArrayList<>(job.logs());
    logs.set(3, Kept.log(logs.get(3), Log.Keep.SILL));
    logs.set(9, Kept.log(logs.get(9), Log.Keep.SPARE));
    Job kept = with(job, logs, List.of());
    Choice choice = new BalancedChooser().choose(kept, EFFORT);
    assertEquals(List.of(), faults(kept, choice));
    assertTrue(choice.unused().contains(logs.get(9)));
    for (Course course : choice.courses()) {
      for (FilledPlace placed : course.places()) {
        boolean sill = placed.tags().equals("L4");
        assertTrue(!sill || course.round() == 1);
      }
    }
  }

  @Test
  void thinTipsAreRefusedWhereTheRulesSaySo() {
    Job job = Jobs.random(33, 44);
    Job refusing =
        new Job(
            job.rules().with(Setting.TIP_RULE, "refuse", Origin.OPTION),
            job.building(),
            job.logs(),
            List.of(),
            List.of());
    Choice choice = new BalancedChooser().choose(refusing, EFFORT);
    assertFalse(choice.courses().isEmpty());
    assertEquals(List.of(), faults(refusing, choice));
  }

  /** The verifier sees what a planner could get wrong. */
  /** Logs that taper by a quarter inch in a foot have ends graded stop wherever they may. */
  private static Job tapered(long seed) {
    SplittableRandom dice = new SplittableRandom(seed);
    List<Log> logs = new ArrayList<>();
    for (int i = 0; i < 44; i++) {
      Length length = Length.ofInches((i % 2 == 0 ? 250 : 202) + dice.nextInt(25));
      long mid = 84 + 24 * (i / 2) / 22 + dice.nextInt(4);
      logs.add(
          Jobs.log(
              "L" + (i + 1),
              length,
              DiameterProfile.of(
                  length,
                  Length.ofInchFraction(mid + 20, 8),
                  Length.ofInchFraction(mid, 8),
                  Length.ofInchFraction(mid - 20, 8))));
    }
    BuildRules rules =
        Jobs.rules(false).with(Setting.WALL_HEIGHT, Length.ofInches(100), Origin.OPTION);
    Building walls = Jobs.building(Length.ofInches(240), Length.ofInches(192), rules.thickness());
    return new Job(rules, walls, logs, List.of(), List.of());
  }

  /** Where few moves showed that stops are to be weighed, the whole search need not show it. */
  @Test
  void stopsSeenWithFewMovesAreWeighedInOneWholeSearch() {
    List<Long> asked = new ArrayList<>();
    Balancer counting =
        (task, effort) -> {
          asked.add(effort.moves());
          return Balancer.search().solve(task, effort.withMoves(effort.moves() / 50));
        };
    long whole = 2_000_000;
    Choice choice =
        new BalancedChooser(counting).choose(tapered(1), Effort.usual(1).withMoves(whole));
    assertTrue(asked.size() > 2 && asked.get(1).equals(asked.get(0)), "stops weighed: " + asked);
    assertEquals(1, Collections.frequency(asked, whole), asked.toString());
    assertEquals(whole, asked.get(asked.size() - 1));
    assertEquals(List.of(), faults(tapered(1), choice));
  }

  @Test
  void theVerifierFindsPlantedFaults() {
    Job job = Jobs.random(34, 40);
    Choice choice = new BalancedChooser().choose(job, EFFORT);
    assertEquals(List.of(), faults(job, choice));
    assertTrue(faults(job, changed(choice, Fault.TWICE)).size() > 0);
    assertTrue(faults(job, changed(choice, Fault.TURNED)).size() > 0);
    assertTrue(faults(job, changed(choice, Fault.NO_ALLOWANCE)).size() > 0);
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses());
    List<Length> raised = new ArrayList<>(stack.firstHeights());
    raised.set(1, raised.get(1).plus(Length.ofInchFraction(1, 16)));
    Stack wrong =
        new Stack(job.rules(), job.building(), choice.courses(), raised, stack.secondHeights());
    assertTrue(Verifier.verify(job, choice, wrong).faults().size() > 0);
  }

  private enum Fault {
    TWICE,
    TURNED,
    NO_ALLOWANCE
  }

  private static Choice changed(Choice choice, Fault fault) {
    Course first = choice.courses().get(0);
    List<FilledPlace> logs = new ArrayList<>(first.places());
    FilledPlace log = logs.get(0);
    FilledPlace other = logs.get(2);
    logs.set(
        0,
        switch (fault) {
          case TWICE -> log.with(other.first().piece());
          case TURNED -> FilledPlace.of(log.first().piece(), log.wall(), 1, !log.buttAtStart());
          case NO_ALLOWANCE ->
              log.with(
                  new roundbook.job.Piece(log.first().piece().log(), Length.ZERO, log.trimmed()));
        });
    List<Course> courses = new ArrayList<>(choice.courses());
    courses.set(0, new Course(1, logs, first.size(), first.notch(), first.clockwise()));
    return new Choice(courses, choice.unused(), choice.score(), choice.shortage(), List.of());
  }

  private static List<String> faults(Job job, Choice choice) {
    return Verifier.verify(job, choice, Stack.of(job.rules(), job.building(), choice.courses()))
        .faults();
  }

  private static String tag(Choice choice, int round, String wall) {
    return choice.courses().get(round - 1).places().stream()
        .filter(placed -> placed.wall().name().equals(wall))
        .map(FilledPlace::tags)
        .findFirst()
        .orElseThrow();
  }

  private static Job with(Job job, List<Log> logs, List<Pin> pins) {
    return new Job(job.rules(), job.building(), logs, List.of(), pins);
  }

  private static CellRef place(int row) {
    return new CellRef("job.xlsx", "Pins", row, 0);
  }
}
