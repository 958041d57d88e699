package roundbook.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.crosscut.StemJobs;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Stem;
import roundbook.page.CutColumn;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.Planner;
import roundbook.rounds.BalancedChooser;
import roundbook.site.CrewWorkbook;
import roundbook.site.SiteReport;
import roundbook.units.Length;

/** Stems read back from a crew workbook: pieces that are cut are logs, as they were measured. */
class CutStemsTest {
  private static final Effort FEW = Effort.usual(1).withMoves(60_000);
  private static final Plan PLAN =
      new Planner(new BalancedChooser()).plan(StemJobs.stems(8, 4), FEW);

  private static Log first() {
    return PLAN.pieces().get(0).placed().first().piece().log();
  }

  @Test
  void stemsAndPiecesComeBackAsTheyWere() {
    SiteReport site = CrewWorkbook.of(PLAN).report();
    Job job = site.job();
    assertEquals(PLAN.job().stems().cuts(), job.stems().cuts());
    for (var stem : PLAN.job().stems().all()) {
      assertEquals(stem, job.stems().stem(stem.tag()).orElseThrow());
    }
    Replan replan = Replanner.replan(site, FEW).value().orElseThrow();
    assertEquals(java.util.List.of(), replan.differences());
  }

  @Test
  void aMeasuredMiddleIsTakenAndTheRoundsAreDealtAnew() {
    double mid = first().mid().inches() - 0.75;
    SiteReport site =
        CrewWorkbook.of(PLAN).type(Map.of(CutColumn.midBox(first().tag()), mid)).report();
    Replan replan = Replanner.replan(site, FEW).value().orElseThrow();
    Job job = replan.plan().job();
    assertEquals(mid, job.log(first().tag()).orElseThrow().mid().inches(), 1e-6);
    assertTrue(job.stems().cuts().get(first().tag()).isCut());
    assertEquals(Optional.empty(), job.stems().cuts().get(first().tag()).mid());
    assertTrue(replan.differences().size() > 0, "the page of its round is another");
  }

  @Test
  void whatOnlyACopyHasIsTaken() {
    Map<String, Double> mid = Map.of(CutColumn.midBox(first().tag()), 12.0);
    SiteReport site = CrewWorkbook.of(PLAN).with(CrewWorkbook.of(PLAN).type(mid)).value().get();
    assertEquals(
        Optional.of(Length.ofInches(12)), site.job().stems().cuts().get(first().tag()).mid());
  }

  @Test
  void aTickStaysInTheNextWorkbook() {
    SiteReport site =
        CrewWorkbook.of(PLAN).type(Map.of(CutColumn.cutBox(first().tag()), "x")).report();
    Plan next = Replanner.replan(site, FEW).value().orElseThrow().plan();
    SiteReport again = CrewWorkbook.of(next).report();
    assertTrue(again.job().stems().cuts().get(first().tag()).isCut());
  }

  /** The four pieces of the first round are 2 in thinner than thought: the rest is cut anew. */
  @Test
  void stemsWithoutACutAreCutAnewToSuitThoseThatAreCut() {
    Map<String, Object> mids = new TreeMap<>();
    Set<String> begun = new TreeSet<>();
    for (PiecePlan piece : PLAN.round(1)) {
      Log log = piece.placed().first().piece().log();
      mids.put(CutColumn.midBox(log.tag()), log.mid().inches() - 2);
      begun.add(PLAN.job().stems().of(log).orElseThrow().tag());
    }
    SiteReport site = CrewWorkbook.of(PLAN).type(mids).report();
    Replan replan = Replanner.replan(site, FEW).value().orElseThrow();
    Job job = replan.plan().job();
    assertEquals(PLAN.rounds(), replan.plan().rounds());
    assertTrue(replan.changes().stream().anyMatch(change -> change.why() == Change.Why.DEALT_ANEW));
    int anew = 0;
    for (Log log : job.logs()) {
      String tag = log.tag();
      Stem stem = job.stems().of(log).orElseThrow();
      boolean known = PLAN.job().stems().cuts().containsKey(tag);
      assertEquals(begun.contains(stem.tag()), known, tag + ": a tag never means two pieces");
      anew += known ? 0 : 1;
    }
    assertTrue(anew > 0);
  }
}
