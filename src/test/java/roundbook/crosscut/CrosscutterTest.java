package roundbook.crosscut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.plan.CrossCuts;
import roundbook.plan.CrossCuts.Fate;
import roundbook.plan.Jobs;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.rounds.BalancedChooser;
import roundbook.units.Length;

/** Stems and long logs cut up for the places of a plan. */
class CrosscutterTest {
  private static final Effort FEW = Effort.usual(1).withMoves(60_000);

  private static Plan plan(Job job) {
    return new Planner(new BalancedChooser()).plan(job, FEW);
  }

  @Test
  void fourteenLongLogsBuildSevenRoundsOfASaunaAndNothingIsOrdered() {
    Plan plan = plan(StemJobs.sauna());
    assertEquals(7, plan.rounds());
    assertEquals(Optional.empty(), plan.choice().shortage());
    assertEquals(14, plan.job().stems().all().size());
    assertEquals(28, plan.count(Plan.Use.PLACED));
    assertTrue(plan.job().log("14").isEmpty() && plan.job().log("14b").isPresent());
  }

  @Test
  void longLogsStayWholeWhereThatIsAsked() {
    Job job = StemJobs.sauna();
    Job whole = job.with(job.rules().with(Setting.CUT_IN_TWO, "no", Origin.OPTION));
    assertSame(whole, Crosscutter.cut(whole, FEW).job());
    assertEquals(3, plan(whole).rounds());
  }

  @Test
  void noLogIsCutInTwoWhereTheyDoAsTheyAre() {
    Job job = StemJobs.sauna();
    Job three =
        job.with(job.rules().with(Setting.ROUNDS, java.math.BigDecimal.valueOf(3), Origin.OPTION));
    assertSame(three, Crosscutter.cut(three, FEW).job());
    Job random = Jobs.random(3, 40);
    assertSame(random, Crosscutter.cut(random, FEW).job());
  }

  @Test
  void aPieceHasTheStemsOwnDiametersAndNoCrook() {
    Job job = Crosscutter.cut(StemJobs.stems(8, 4), FEW).job();
    assertTrue(job.logs().size() >= 16, "a piece for every place, and spares");
    for (Log log : job.logs()) {
      Stem stem = job.stems().of(log).orElseThrow();
      Length from = job.stems().from(log);
      assertEquals(stem.profile().at(from), log.butt());
      assertEquals(stem.profile().at(from.plus(log.length())), log.tip());
      for (Stem.Stretch bad : stem.bad()) {
        assertTrue(
            !from.plus(log.length()).isMoreThan(bad.from()) || !from.isLessThan(bad.to()),
            log.tag() + " is cut through a bad stretch");
      }
    }
  }

  @Test
  void stemsArePlannedAndToldFromTheButtUp() {
    Plan plan = plan(StemJobs.stems(8, 4));
    assertEquals(4, plan.rounds());
    assertTrue(plan.job().stems().byRule().isPresent());
    int last = 0;
    for (CrossCuts.CutStem stem : CrossCuts.of(plan).stems()) {
      assertTrue(stem.firstRound() >= last, "the lowest rounds first");
      last = stem.firstRound();
      Length at = Length.ZERO;
      for (CrossCuts.Part part : stem.parts()) {
        assertTrue(!part.from().isLessThan(at));
        at = part.to();
      }
      assertEquals(stem.stem().length(), at);
    }
    long placed =
        CrossCuts.of(plan).stems().stream()
            .flatMap(stem -> stem.parts().stream())
            .filter(part -> part.fate() == Fate.PLACED)
            .count();
    assertEquals(16, placed);
  }

  @Test
  void stemsThatHoldNotOneRoundLeaveTheirPiecesAndTheRestIsOrdered() {
    Plan plan = plan(StemJobs.stems(2, 4));
    assertEquals(4, plan.choice().shortage().orElseThrow().wanted());
    assertTrue(plan.choice().shortage().orElseThrow().count() > 0);
  }

  @Test
  void aHeightGivesTheNumberOfRoundsThatComesNearest() {
    Job job = StemJobs.stems(12, 0);
    Job high = job.with(job.rules().with(Setting.WALL_HEIGHT, Length.ofInches(80), Origin.OPTION));
    Plan plan = plan(high);
    assertEquals(80, plan.stack().top(high.building().walls().get(1)).inches(), 10);
    assertEquals(Optional.empty(), plan.choice().shortage());
  }

  @Test
  void theRuleCutsFromTheButtTheLongestFirst() {
    Job ruled = ButtRule.cut(StemJobs.stems(3, 4), 4);
    Stem second = ruled.stems().stem("2").orElseThrow();
    List<Log> pieces = ruled.stems().pieces(second, ruled.logs());
    assertEquals(Length.ZERO, ruled.stems().from(pieces.get(0)));
    assertEquals(130, pieces.get(0).length().inches(), 1e-9);
  }
}
