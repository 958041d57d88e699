package roundbook.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Corner;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Measures;
import roundbook.notch.Notch;
import roundbook.plan.PiecePlan;
import roundbook.plan.Plan;
import roundbook.plan.PlanFixtures;
import roundbook.plan.Planner;
import roundbook.units.Length;

/** What was built before a revision was made stands in its workbook and comes back the same. */
class RecordedTest {
  private static final Plan FIRST = PlanFixtures.inches().plan(3);
  private static final AsBuilt BUILT = built();
  private static final CrewWorkbook SECOND =
      CrewWorkbook.of(Planner.of(FIRST.job().withBuilt(BUILT), FIRST.choice()));

  /** Round 1 is cut, of round 2 the log of N alone; their middles and two corners were read. */
  private static AsBuilt built() {
    Map<Place, Held> held = new HashMap<>();
    Map<Place, Measures> measures = new HashMap<>();
    for (PiecePlan piece : FIRST.pieces()) {
      Place place = piece.placed().place();
      boolean cut = place.round() == 1 || place.equals(new Place(2, "N"));
      if (cut) {
        held.put(place, piece.placed().held());
        Length mid = piece.placed().first().piece().mid();
        measures.put(
            place,
            new Measures(
                Optional.empty(),
                Optional.of(mid),
                Optional.empty(),
                place.round() == 1 ? Optional.of(notch(1).lower()) : Optional.empty(),
                Optional.empty()));
      }
    }
    return AsBuilt.NOTHING
        .withCut(
            List.of(
                new CutSize(notch(1).size(), notch(1).gap()),
                new CutSize(notch(2).size(), notch(2).gap()).open(Set.of("E", "S", "W"))))
        .withPlaces(held, measures)
        .withReadings(
            Map.of(new Corner(1, "NW"), Length.ofInchFraction(47, 4)),
            Map.of(new Corner(2, "SE"), Length.ofInches(20)));
  }

  private static Notch notch(int round) {
    return FIRST.choice().courses().get(round - 1).notch();
  }

  @Test
  void comesBack() {
    AsBuilt read = SECOND.again().report().recorded();
    assertEquals(BUILT.cut(), read.cut());
    assertEquals(BUILT.held(), read.held());
    assertEquals(BUILT.readings(), read.readings());
    assertEquals(BUILT.firstReadings(), read.firstReadings());
    BUILT
        .measures()
        .forEach((place, typed) -> assertEquals(typed, read.measures(place), place.named()));
  }

  /** The boxes are filled with what was typed before, so the next plan starts from it. */
  @Test
  void isTypedInAlready() {
    SiteReport.Typed typed = SECOND.again().report().typed();
    assertEquals(1, typed.cut());
    assertEquals(2, typed.ticks().begun());
    assertEquals(BUILT.readings(), typed.readings());
    assertEquals(BUILT.firstReadings(), typed.firstReadings());
    assertEquals(BUILT.measures().keySet(), typed.measures().keySet());
  }

  /** A tick that is taken back would unfix marks that are in the wood. */
  @ParameterizedTest
  @ValueSource(strings = {"Cut_1", "Cut_2_N"})
  void isMissedWhereATickIsTakenBack(String box) {
    List<String> said =
        SECOND.again().type(Map.of(box, "")).read().problems().stream()
            .map(each -> each.said().key())
            .toList();
    assertTrue(said.contains("contradiction.unticked"), said.toString());
  }

  /** Both short logs of a place beside a window come back, each with its side and its cut. */
  @Test
  void shortLogsComeBackInTheirPlace() {
    Plan plan = PlanFixtures.inches().withShortLogs().plan(6);
    SiteReport report = CrewWorkbook.of(plan).report();
    for (PiecePlan piece : plan.pieces()) {
      Place place = piece.placed().place();
      assertEquals(piece.placed().held(), report.plan().get(place), place.named());
    }
    assertEquals(1, report.plan().values().stream().filter(Held::isShared).count());
  }
}
