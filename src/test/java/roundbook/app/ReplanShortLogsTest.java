package roundbook.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Log;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Half;
import roundbook.plan.Plan;
import roundbook.plan.ShortYards;

/** Short logs beside a door are measured, exchanged and lost like any log, and read back. */
class ReplanShortLogsTest {
  @TempDir static Path made;
  @TempDir Path folder;
  private CrewFolder site;

  @BeforeAll
  static void planOnce() throws Exception {
    Path file = ShortYard.write(made, true, ShortYards.of(5, 7, 12, 14));
    CrewFolder crew = new CrewFolder(made).thorough();
    assertEquals(0, crew.run("plan", file.toString(), "--no-pictures"), crew.said());
  }

  @BeforeEach
  void copy() throws Exception {
    site = new CrewFolder(folder);
    Files.copy(new CrewFolder(made).book(1), site.book(1));
  }

  private static PiecePlan pair(Plan plan, int number) {
    return plan.pieces().stream()
        .filter(piece -> !piece.halves().isEmpty())
        .skip(number)
        .findFirst()
        .orElseThrow();
  }

  private static Place place(PiecePlan piece) {
    return new Place(piece.placed().round(), piece.placed().wall().name());
  }

  private static String tag(Half half) {
    return half.placed().piece().log().tag();
  }

  /** Types a middle of every log of a round, each by so much more than planned, and ticks it. */
  private static Map<String, Object> cut(Plan plan, int round, double more) {
    Map<String, Object> typed = new HashMap<>(Map.of("Cut_" + round, "x"));
    for (PiecePlan piece : plan.round(round)) {
      String wall = piece.placed().wall().name();
      if (piece.halves().isEmpty()) {
        typed.put(
            "Measured_" + round + "_" + wall, piece.placed().first().piece().mid().inches() + more);
      }
      for (Half half : piece.halves()) {
        typed.put(
            "Measured_" + round + "_" + wall + (half.left() ? "_left" : "_right"),
            half.placed().piece().mid().inches() + more);
      }
    }
    return typed;
  }

  @Test
  void thePlanIsReadBackAsItWasPrinted() throws Exception {
    Plan plan = site.planOf(1);
    Held held = site.report(1).plan().get(place(pair(plan, 0)));
    assertTrue(held.isShared());
    assertEquals(held, pair(plan, 0).placed().held());
    assertEquals(0, site.replan(1), site.said());
    assertTrue(site.said().contains("No page of the crew's must be printed again."), site.said());
    assertEquals(site.report(1).plan(), site.report(2).plan());
  }

  @Test
  void aRoundTakesItsSizeFromItsShortLogsAsHewnAndKeepsIt() throws Exception {
    Plan first = site.planOf(1);
    assertEquals(1, pair(first, 0).placed().round());
    TypedBook.type(site.book(1), cut(first, 1, 0.5));
    assertEquals(0, site.replan(1), site.said());
    Plan second = site.planOf(2);
    var size = first.choice().courses().get(0).notch().size();
    assertEquals(
        size.inches() + 0.5, second.choice().courses().get(0).notch().size().inches(), 1e-9);
    Half half = pair(second, 0).halves().get(0);
    Half was = pair(first, 0).halves().get(0);
    assertEquals(tag(was), tag(half));
    assertEquals(
        was.placed().piece().mid().inches() + 0.5, half.placed().piece().mid().inches(), 1e-6);
    assertEquals(
        pair(first, 0).placed().butt().inches() + 0.5,
        pair(second, 0).placed().butt().inches(),
        1e-6);
    TypedBook.type(site.book(2), cut(second, 2, 0));
    assertEquals(0, site.replan(2), site.said());
    Plan third = site.planOf(3);
    assertEquals(second.round(1).get(2).placed(), third.round(1).get(2).placed());
    assertEquals(second.stack().levelHeight(1), third.stack().levelHeight(1));
  }

  @Test
  void aLostShortLogIsReplacedByAnother() throws Exception {
    Plan first = site.planOf(1);
    PiecePlan pair = pair(first, 1);
    String lost = tag(pair.halves().get(0));
    TypedBook.type(site.book(1), Map.of("Lost_" + row(first, lost), "x"));
    assertEquals(0, site.replan(1), site.said());
    Plan second = site.planOf(2);
    PiecePlan now =
        second.pieces().stream()
            .filter(piece -> place(piece).equals(place(pair)))
            .findFirst()
            .orElseThrow();
    assertEquals(2, now.halves().size());
    assertNotEquals(lost, tag(now.halves().get(0)));
    assertEquals(5, second.rounds());
    assertTrue(site.said().contains("Log " + lost + " is lost."), site.said());
    for (PiecePlan other : first.pieces()) {
      if (!other.halves().isEmpty() && !place(other).equals(place(pair))) {
        Held before = site.report(1).plan().get(place(other));
        assertEquals(before, site.report(2).plan().get(place(other)));
      }
    }
  }

  @Test
  void aShortLogUsedInsteadIsTaken() throws Exception {
    Plan first = site.planOf(1);
    PiecePlan pair = pair(first, 0);
    Log spare =
        first.choice().unused().stream()
            .filter(log -> log.length().inches() < 130)
            .findFirst()
            .orElseThrow();
    String name = "Used_" + pair.placed().round() + "_S_right";
    TypedBook.type(site.book(1), Map.of(name, spare.tag()));
    assertEquals(0, site.replan(1), site.said());
    PiecePlan now = pair(site.planOf(2), 0);
    assertEquals(spare.tag(), tag(now.halves().get(1)));
    assertEquals(tag(pair.halves().get(0)), tag(now.halves().get(0)));
    assertTrue(site.report(2).typed().used().isEmpty());
  }

  @Test
  void aLogTooShortForItsSideAndOneInTwoPlacesAreRefused() throws Exception {
    Plan first = site.planOf(1);
    PiecePlan pair = pair(first, 0);
    int round = pair.placed().round();
    String left = tag(pair.halves().get(0));
    TypedBook.type(site.book(1), Map.of("Used_" + round + "_S_right", left, "Cut_1", "x"));
    assertEquals(3, site.replan(1), site.said());
    assertTrue(site.said().contains("log " + left + " stands in two places"), site.said());
  }

  @Test
  void changesToAWholeLogLeaveThePairsAlone() throws Exception {
    Plan first = site.planOf(1);
    String tag = first.round(5).get(0).placed().tags();
    TypedBook.type(site.book(1), Map.of("Lost_" + row(first, tag), "x"));
    site.replan(1);
    Map<Place, Held> was = site.report(1).plan();
    List<Place> pairs = was.keySet().stream().filter(at -> was.get(at).isShared()).toList();
    assertFalse(pairs.isEmpty());
    pairs.forEach(at -> assertEquals(was.get(at), planned(at)));
  }

  private Held planned(Place place) {
    try {
      return site.report(2).plan().get(place);
    } catch (RuntimeException broken) {
      throw new AssertionError(site.said(), broken);
    }
  }

  private static int row(Plan plan, String tag) {
    return plan.job().log(tag).orElseThrow().origin().row();
  }
}
