package roundbook.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.balance.Effort;
import roundbook.job.Job;
import roundbook.plan.Jobs;
import roundbook.stack.Course;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** By how much another choice could be better, in hundredths of its score and in gaps. */
class NearnessTest {
  private static final Job JOB = Jobs.random(91, 10);
  private static final Choice CHOICE =
      new BalancedChooser().choose(JOB, Effort.usual(1).withMoves(1_000));
  private static final Length EIGHTH = Length.ofInchFraction(1, 8);

  /** Returns two rounds, twelve gaps, of a score. */
  private static Choice scored(double total, double gaps) {
    return choice(CHOICE.courses(), new Choice.Score(total, gaps, 0, 0, 0, total - gaps));
  }

  private static Choice choice(List<Course> courses, Choice.Score score) {
    return new Choice(courses, List.of(), score, Optional.empty(), List.of());
  }

  @ParameterizedTest
  @CsvSource({"0, 100", "1.606, 20", "1.9996, 1", "1.9999, 0"})
  void hundredthsAreRoundedUp(double least, int percent) {
    assertEquals(percent, Nearness.of(scored(2, 1), least, true).percent());
  }

  /** What the score has of gaps is what the walls have: at both inside faces and the middle. */
  @Test
  void gapsAreOffAsOnThePages() {
    List<Joint> joints = Stack.of(JOB.rules(), JOB.building(), CHOICE.courses()).joints();
    double squares =
        joints.stream()
            .flatMap(joint -> Stream.of(joint.left(), joint.middle(), joint.right()))
            .mapToDouble(gap -> gap.minus(JOB.rules().gap()).inches())
            .map(off -> off * off)
            .sum();
    double rms = Math.sqrt(squares / (3 * joints.size()));
    Nearness near = Nearness.of(CHOICE, CHOICE.score().total() / 2, false);
    assertEquals(rms, near.gapOff().inches(), 1e-3);
    assertTrue(rms > 0.01, "some gap is off");
  }

  /** Of 2 in², 1.2 are gaps; another may be better by 0.4, so 0.8 are left, over twelve gaps. */
  @Test
  void whatIsLeftOfTheGapsIsTold() {
    Nearness near = Nearness.of(scored(2, 1.2), 1.6, false);
    assertEquals(Math.sqrt(0.1), near.gapOff().inches(), 1e-6);
    assertEquals(Math.sqrt(0.8 / 12), near.leastGapOff().inches(), 1e-6);
    assertFalse(near.isLittle(EIGHTH), "0.4 in² over twelve gaps, of diameters 0.0078 in²");
    assertTrue(Nearness.of(scored(2, 1.2), 2 - 12 * 0.0078, false).isLittle(EIGHTH));
    assertFalse(Nearness.of(scored(2, 1.2), 2 - 12 * 0.0079, false).isLittle(EIGHTH));
  }

  /** Where faults weigh more than all gaps, they may be what is better. */
  @Test
  void gapsCannotBeBetterThanGood() {
    Nearness near = Nearness.of(scored(2, 0.001), 1.6, false);
    assertTrue(near.leastGapOff().isZero());
    assertFalse(near.isLittle(EIGHTH));
    assertTrue(
        Nearness.of(scored(0.08, 0.001), 0, true).isLittle(EIGHTH), "all together is little");
  }

  @Test
  void aSingleRoundHasNoGap() {
    Choice single = choice(CHOICE.courses().subList(0, 1), new Choice.Score(1, 0, 0, 1, 0, 0));
    assertTrue(Nearness.of(single, 0.5, true).gapOff().isZero());
    Choice perfect = choice(CHOICE.courses(), new Choice.Score(0, 0, 0, 0, 0, 0));
    assertEquals(0, Nearness.of(perfect, 0, true).percent());
  }
}
