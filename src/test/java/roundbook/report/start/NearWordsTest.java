package roundbook.report.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundbook.job.AsBuilt;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.report.words.Words;
import roundbook.rounds.Nearness;
import roundbook.units.Length;

/** What a builder is told of how near the best a plan is, and what to do about it. */
class NearWordsTest {
  private static final NearWords PLAN = new NearWords(Words.of("en"), false);
  private static final NearWords REPLAN = new NearWords(Words.of("en"), true);
  private static final String OPEN =
      "No choice of these logs for these rounds can be better by more than 18 % of its score"
          + " (gap errors squared, faults, waste)";
  private static final String OFF = OPEN + ": the typical gap error (rms, straight logs) is ";
  private static final String FAIR = " with no more faults and waste. ";
  private static final String LITTLE =
      "Hewing alone (diameters 1/8 in off) varies gaps more than a better choice could gain:"
          + " nothing to do for it.";

  private static final AsBuilt CUT =
      AsBuilt.NOTHING.withCut(
          List.of(new AsBuilt.CutSize(Length.ofInches(14), Length.ofInches(1))));

  private static String told(NearWords words, PlanFixtures job, Nearness near) {
    return told(words, job, AsBuilt.NOTHING, near);
  }

  private static String told(NearWords words, PlanFixtures job, AsBuilt built, Nearness near) {
    Plan plan = job.plan(2);
    Plan known = Planner.of(plan.job().withBuilt(built), plan.choice().with(near));
    return words.told(known).orElseThrow();
  }

  /** Returns gaps that are off by so many thousandths of an inch, and at least by so many. */
  private static Nearness off(long now, long least, boolean ended) {
    double better = Math.sqrt(now * now - least * least);
    return new Nearness(18, thousandths(now), thousandths(Math.round(better)), ended);
  }

  private static Length thousandths(long count) {
    return Length.ofInchFraction(count, 1_000);
  }

  @Test
  void nothingIsToldWhereNothingWasAsked() {
    assertEquals(Optional.empty(), PLAN.told(PlanFixtures.inches().plan(2)));
  }

  @Test
  void littleNeedsNothing() {
    String said = OFF + "0.101 in, at least 0.099" + FAIR + LITTLE;
    PlanFixtures job = PlanFixtures.inches();
    assertEquals(said + " Another run may choose otherwise.", told(PLAN, job, off(101, 99, false)));
    assertEquals(
        said + " It ended before its time, for more brings nothing.",
        told(PLAN, job, off(101, 99, true)));
  }

  @Test
  void muchIsSaidWithWhatMayHelp() {
    String said = OFF + "0.200 in, at least 0.091" + FAIR;
    assertEquals(
        said + "A longer --prove may choose better, another run otherwise.",
        told(PLAN, PlanFixtures.inches(), off(200, 91, false)));
    assertEquals(
        said + "It ended before its time: more brings nothing, another Seed may.",
        told(PLAN, PlanFixtures.inches(), off(200, 91, true)));
    PlanFixtures worst = PlanFixtures.inches().set(Setting.BALANCE_FOR, "worst");
    assertEquals(
        said + "Balance_for=worst puts the worst gap first.",
        told(PLAN, worst, off(200, 91, false)));
  }

  @Test
  void aReplanKeepsWhatIsCut() {
    PlanFixtures job = PlanFixtures.inches();
    assertEquals(
        OFF + "0.101 in, at least 0.099" + FAIR + LITTLE + " What is cut stays.",
        told(REPLAN, job, CUT, off(101, 99, false)));
    assertEquals(
        OFF
            + "0.200 in, at least 0.091"
            + FAIR
            + "A lower Change_pays lets more logs change places."
            + " What is cut stays.",
        told(REPLAN, job, CUT, off(200, 91, false)));
    String proved = "Proved: no choice of these logs for these rounds is better.";
    Nearness best = new Nearness(0, Length.ZERO, Length.ZERO, true);
    assertEquals(proved, told(PLAN, job, best));
    assertEquals(proved + " What is cut stays.", told(REPLAN, job, CUT, best));
    assertEquals(proved, told(REPLAN, job, best), "nothing is cut");
  }

  @Test
  void aMetricJobHasTenthsOfMillimetres() {
    NearWords german = new NearWords(Words.of("de"), false);
    String said = told(german, PlanFixtures.metric(), off(101, 99, false));
    assertTrue(said.contains("um 2,57 mm ab, mindestens um 2,51 ohne"), said);
    assertTrue(said.contains("Behauen allein (Durchmesser 3 mm daneben)"), said);
  }

  @Test
  void aSingleRoundHasNoGapToTell() {
    String said = told(PLAN, PlanFixtures.inches(), off(0, 0, true));
    assertEquals(OPEN + ". It ended before its time: more brings nothing, another Seed may.", said);
  }

  @Test
  void whyNothingIsKnownIsSaid() {
    PlanFixtures job = PlanFixtures.inches();
    Nearness ended = new Nearness(100, thousandths(100), thousandths(150), true);
    Nearness timed = new Nearness(100, thousandths(100), thousandths(80), false);
    assertEquals(
        "How near the best is not known: too many logs and ways to cut them; more time brings"
            + " nothing.",
        told(PLAN, job, ended));
    assertEquals(
        "How near the best is not known: it takes more time than there was. "
            + LITTLE
            + " Another run may choose otherwise.",
        told(PLAN, job, timed));
    PlanFixtures exact = PlanFixtures.inches().set(Setting.SIZE_STEP, Length.ZERO);
    assertEquals(
        "How near the best is not known: it is reckoned for sizes in steps only: give Size_step.",
        told(PLAN, exact, ended));
  }
}
