package roundbook.replan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.Problem;
import roundbook.problem.Read;
import roundbook.report.book.CrewBook;
import roundbook.report.frame.CrewContext;
import roundbook.site.CrewWorkbook;
import roundbook.site.SiteReport;
import roundbook.units.Length;

/** Logs that were measured in the yard are chosen by their own figures, and settled by none. */
class HewnAheadTest {
  private static final Effort FEW = Effort.usual(1).withMoves(20_000);
  private static final Plan PLAN = PlanFixtures.inches().plan(3);

  private static Replan replan(CrewWorkbook book) {
    Read<Replan> made = Replanner.replan(book.report(), FEW);
    return made.value().orElseThrow(() -> new AssertionError(made.problems().toString()));
  }

  private static CrewWorkbook next(Replan made) {
    CrewContext.Issue issue = new CrewContext.Issue(2, "cabin.xlsx", "0.1.0", false);
    return CrewWorkbook.of(CrewBook.of(CrewContext.of(made.plan(), java.util.List.of(), issue)));
  }

  private static Log planned(int round, String wall) {
    return PLAN.round(round).stream()
        .filter(piece -> piece.placed().wall().name().equals(wall))
        .map(piece -> PLAN.job().tallied(piece.placed().first().piece().log()))
        .findFirst()
        .orElseThrow();
  }

  private static String box(String diameter, Log log) {
    return "Hewn_" + diameter + "_" + log.origin().row();
  }

  /** Returns the log's middle in sixteenths, so much thicker. */
  private static double thicker(Log log, double inches) {
    return Math.rint(log.mid().inches() * 16) / 16 + inches;
  }

  @Test
  void aLogMeasuredInTheYardIsKnownAndNotSettled() {
    Log log = planned(3, "E");
    double mid = thicker(log, 0.125);
    Plan plan = replan(CrewWorkbook.of(PLAN).type(Map.of(box("mid", log), mid))).plan();
    Log hewn = plan.job().log(log.tag()).orElseThrow();
    assertEquals(mid, hewn.mid().inches(), 1e-9);
    assertEquals(
        log.butt().inches() + mid - log.mid().inches(), hewn.butt().inches(), 1e-9, "all shifts");
    assertEquals(Log.Source.MEASURED, hewn.sources().mid());
    assertEquals(log, plan.job().tallied(hewn), "the tally stays beside it");
    assertTrue(plan.job().built().placeOf(log.tag()).isEmpty(), "it may still go elsewhere");
    assertTrue(plan.job().built().knowsMiddle(new Place(3, "E"), log.tag()));
  }

  /** Butt and tip of the whole log are at its ends, the middle between them. */
  @Test
  void buttAndTipAreAtTheEndsOfTheLog() {
    Log log = planned(2, "N");
    Map<String, Object> typed = new TreeMap<>();
    typed.put(box("butt", log), thicker(log, 1));
    typed.put(box("mid", log), thicker(log, 0));
    typed.put(box("tip", log), thicker(log, -0.75));
    Log hewn = replan(CrewWorkbook.of(PLAN).type(typed)).plan().job().log(log.tag()).orElseThrow();
    Length quarter = log.length().dividedBy(4);
    assertEquals(thicker(log, 0.5), hewn.profile().at(quarter).inches(), 1e-6);
    assertEquals(thicker(log, -0.375), hewn.profile().at(quarter.times(3)).inches(), 1e-6);
  }

  /** What was typed stands in the box of the next revision, which was planned with it. */
  @Test
  void theNextRevisionKnowsItAndMayCorrectIt() {
    Log log = planned(2, "S");
    double mid = thicker(log, 0.25);
    Replan first = replan(CrewWorkbook.of(PLAN).type(Map.of(box("mid", log), mid)));
    SiteReport back = next(first).report();
    assertEquals(mid, back.typed().yard().get(log.tag()).mid().orElseThrow().inches(), 1e-9);
    Plan printed = Replanner.printed(back).value().orElseThrow();
    assertEquals(first.plan().choice().courses(), printed.choice().courses());
    assertEquals(first.plan().job().logs(), printed.job().logs());
    Replan same = replan(next(first));
    assertTrue(same.differences().isEmpty(), same.differences().toString());
    Plan cleared = replan(next(first).type(Map.of(box("mid", log), ""))).plan();
    assertEquals(log, cleared.job().log(log.tag()).orElseThrow());
  }

  /** A measure in the log's place comes before that in the yard, and stands on it. */
  @Test
  void thePlaceComesBeforeTheYard() {
    Log log = planned(1, "N");
    Map<String, Object> typed = new TreeMap<>();
    typed.put(box("mid", log), thicker(log, 0.25));
    typed.put("Measured_1_N", thicker(log, 0.5));
    Plan plan = replan(CrewWorkbook.of(PLAN).type(typed)).plan();
    var piece =
        plan.round(1).stream()
            .flatMap(each -> each.placed().logs().stream())
            .filter(each -> each.piece().log().tag().equals(log.tag()))
            .findFirst()
            .orElseThrow()
            .piece();
    assertEquals(thicker(log, 0.5), piece.mid().inches(), 1e-9);
    assertEquals(log, plan.job().tallied(piece.log()));
  }

  /** A correction of the tally is for logs that nobody measured. */
  @Test
  void aCorrectionOfTheTallyLeavesItAlone() {
    Log log = planned(3, "W");
    double mid = thicker(log, 0.25);
    Map<String, Object> typed = new TreeMap<>();
    typed.put(box("mid", log), mid);
    typed.put(Setting.TALLY_CORRECTION.label(), 0.5);
    Replan made = replan(CrewWorkbook.of(PLAN).type(typed));
    Log hewn = made.plan().job().log(log.tag()).orElseThrow();
    assertEquals(mid, hewn.mid().inches(), 1e-9);
    assertEquals(log, made.plan().job().tallied(hewn));
    Plan printed = Replanner.printed(next(made).report()).value().orElseThrow();
    assertEquals(made.plan().job().logs(), printed.job().logs());
  }

  /** A spare that is nearer to what a round needs takes the place, and the reason is said. */
  @Test
  void aRoundIsChosenByWhatWasMeasured() {
    Log bad = planned(3, "N");
    Map<String, Object> typed = new TreeMap<>();
    typed.put(box("mid", bad), thicker(bad, 2));
    Replan made = replan(CrewWorkbook.of(PLAN).type(typed));
    assertFalse(made.changes().isEmpty(), "a log two inches thicker is put elsewhere");
    assertEquals(
        Set.of(Change.Why.PAYS), Set.copyOf(made.changes().stream().map(Change::why).toList()));
  }

  @Test
  void whatCannotBeADiameterIsRefusedWithItsCell() {
    Log log = planned(2, "E");
    Read<SiteReport> far = CrewWorkbook.of(PLAN).type(Map.of(box("mid", log), 40.0)).read();
    assertTrue(far.value().isEmpty());
    Problem said = far.problems().get(0);
    assertTrue(said.toString().contains("out-of-range.diameter"), said.toString());
    assertTrue(said.where().toString().contains("Log list"), said.toString());
    Read<SiteReport> wrongEnd =
        CrewWorkbook.of(PLAN).type(Map.of(box("butt", log), thicker(log, -1))).read();
    assertTrue(wrongEnd.problems().toString().contains("butt-thin"));
    assertTrue(wrongEnd.value().isPresent());
  }

  /** Two people measured: what only one of them has is taken, a difference is asked about. */
  @Test
  void copiesAreReadAsOne() {
    Log log = planned(2, "E");
    CrewWorkbook one = CrewWorkbook.of(PLAN).type(Map.of(box("mid", log), thicker(log, 0)));
    CrewWorkbook butt = CrewWorkbook.of(PLAN).type(Map.of(box("butt", log), thicker(log, 1)));
    var both = one.with(butt).value().orElseThrow().typed().yard().get(log.tag());
    assertTrue(both.mid().isPresent() && both.butt().isPresent());
    CrewWorkbook other = CrewWorkbook.of(PLAN).type(Map.of(box("mid", log), thicker(log, 1)));
    Read<SiteReport> differ = one.with(other);
    assertTrue(differ.value().isEmpty());
    assertTrue(differ.problems().toString().contains("contradiction.copies"));
  }
}
