package roundbook.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import roundbook.job.AsBuilt.Place;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Setting;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.problem.Problem;
import roundbook.problem.Read;

/** Two copies of one revision, typed into by two people, are read as one. */
class CopiesTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(2);

  private static CrewWorkbook typed(Map<String, ?> values) {
    return CrewWorkbook.of(PLAN).type(values);
  }

  @Test
  void whatOnlyOneOfThemHasIsTaken() {
    var spare = PLAN.choice().unused().get(0);
    CrewWorkbook one = typed(Map.of("Measured_1_N", 13.25, "Measured_1_S", 13.0, "Cut_1", "x"));
    CrewWorkbook other =
        typed(
            Map.of(
                "Measured_1_E",
                13.5,
                "Measured_1_S",
                "13",
                "Lost_" + spare.origin().row(),
                "x",
                "Reading_1_NW",
                11.5,
                "Chinking_gap",
                1.25));
    Read<SiteReport> read = one.with(other);
    SiteReport report = read.value().orElseThrow(() -> new AssertionError(read.problems()));
    assertEquals(1, report.typed().cut());
    assertEquals(13.5, report.typed().measures().get(new Place(1, "E")).mid().get().inches());
    assertEquals(13.25, report.typed().measures().get(new Place(1, "N")).mid().get().inches());
    assertEquals(1, report.typed().readings().size());
    assertEquals(Set.of(spare.tag()), report.typed().lost());
    assertEquals(1.25, report.job().rules().gap().inches());
    assertEquals(Origin.WORKBOOK, report.job().rules().value(Setting.CHINKING_GAP).get().origin());
  }

  @Test
  void everyCellInWhichTheyDifferIsNamed() {
    CrewWorkbook one = typed(Map.of("Measured_1_N", 13.25, "Cut_1", "x", "Chinking_gap", 1.25));
    CrewWorkbook other =
        typed(Map.of("Measured_1_N", 13.75, "Used_1_S", "nowhere", "Chinking_gap", 0.75));
    Read<SiteReport> read = one.with(other);
    assertTrue(read.value().isEmpty());
    String said = read.problems().stream().map(Problem::toString).toList().toString();
    long copies =
        read.problems().stream().filter(each -> each.toString().contains("copies")).count();
    assertEquals(2, copies, said);
    assertTrue(said.contains("own=\"13.25\" other=\"13.75\""), said);
    assertTrue(said.contains("copy.xlsx: Round 01!"), said);
    assertTrue(said.contains("no-log"), "and what the copy alone has is checked: " + said);
  }

  @Test
  void whatIsNoCopyIsRefused() {
    Read<SiteReport> revised = typed(Map.of()).with(typed(Map.of("Made_revision", 2.0)));
    assertTrue(revised.value().isEmpty());
    assertTrue(revised.problems().toString().contains("no-copy"), revised.problems().toString());
    CrewWorkbook other = CrewWorkbook.of(PlanFixtures.inches().plan(3));
    assertTrue(typed(Map.of()).with(other).value().isEmpty());
  }
}
