package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Leaf;
import roundbook.job.Setting;
import roundbook.problem.ProblemCode;
import roundbook.problem.words.Sentences;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.LogCut.RemainingPieces;

/**
 * What openings do to the logs of a wall, worked out by hand.
 *
 * <p>Cylinders of 12 in with a gap of 1: L = (12 − 1)/4 = 2 3/4, so first-laid centre lines lie at
 * 2 3/4, 15 3/4, 28 3/4 … and second-laid ones at 9 1/4, 22 1/4, 35 1/4 …
 */
class OpeningCutTest {
  private static final double[] EIGHT = {12, 12, 12, 12, 12, 12, 12, 12};

  private static OpeningCut only(Cabins cabin) {
    return cabin.takeoff().openings().get(0);
  }

  private static String kinds(OpeningCut opening) {
    return String.join(
        " ", opening.cuts().stream().map(cut -> cut.kind().name().toLowerCase()).toList());
  }

  private static List<String> depths(OpeningCut opening) {
    return opening.cut().stream().map(cut -> "" + cut.depth().inches()).toList();
  }

  @Test
  void aDoorCutsEveryLogToItsHeadAndItsHeaderFromBelow() {
    OpeningCut door = only(Cabins.ofRounds(EIGHT).opening("S", 48, 36, 0, 82));
    assertEquals(
        "through through through through through through from_below untouched", kinds(door));
    // Round 1: from the flat bed at 0 to its crown at 2 3/4 + 6. Round 7: belly at 80 3/4 − 6.
    assertEquals(List.of("8.75", "12.0", "12.0", "12.0", "12.0", "12.0", "7.25"), depths(door));
    assertEquals("S8", door.header().orElseThrow().tags());
  }

  /**
   * By hand: 7.1 % tangential for Engelmann spruce (Wood Handbook), 18 of 30 percent of it down to
   * 12 percent, is 4.26 % of 82 in, 3 1/2 in rounded up; less a head piece of 1 1/2 in 77 in stay,
   * and 38 in between legs of 1 1/2 in are 35. A leaf of 36 by 80 in asks for 39 in, and for 3 in
   * more of what 82 in lose: 85.13 in.
   */
  @Test
  void aLeafThatDoesNotGoBetweenTheBucksIsToldWhatWouldHoldIt() {
    Cabins cabin = Cabins.ofRounds(EIGHT).opening("S", 48, 38, 0, 82);
    OpeningCut door = only(cabin);
    assertEquals(35, door.frame().clearWidth().inches());
    assertEquals(77, door.frame().clearHeight().inches());
    assertTrue(door.wanted().isEmpty(), "no leaf is told");
    assertTrue(only(cabin.leaf(35, 77)).wanted().isEmpty(), "it fits to the sixteenth");
    Leaf wanted = only(cabin.leaf(36, 80)).wanted().orElseThrow();
    assertEquals(39, wanted.width().inches());
    assertEquals(82 + 3 * 82 / 78.5, wanted.height().inches(), 1e-6);
    String said =
        cabin.plan().problems().stream()
            .filter(problem -> problem.code() == ProblemCode.OPENING_LEAF)
            .map(problem -> problem.said().in(Sentences.english()))
            .findFirst()
            .orElseThrow();
    assertTrue(said.contains("36 × 80") && said.contains("35 × 77"), said);
    assertTrue(said.contains("width of 39") && said.contains("head at 86"), said);
  }

  @Test
  void theSameOpeningCutsOtherLogsOfAWallLaidSecond() {
    OpeningCut window = only(Cabins.ofRounds(EIGHT).opening("E", 48, 36, 36, 70));
    assertEquals(
        "untouched untouched from_above through through from_below untouched untouched",
        kinds(window));
    assertEquals(List.of("5.25", "12.0", "12.0", "1.75"), depths(window));
    assertEquals("E6", window.header().orElseThrow().tags());
  }

  @Test
  void piecesAndOpeningAddUpToTheTrimmedLength() {
    OpeningCut door = only(Cabins.ofRounds(EIGHT).opening("S", 48, 36, 0, 82));
    for (LogCut cut : door.of(CutExtent.THROUGH)) {
      RemainingPieces sides = cut.sides().orElseThrow();
      assertEquals(51, sides.left().length().inches());
      assertEquals(240 - 84 + 3, sides.right().length().inches());
      assertEquals(246, sides.left().length().plus(sides.right().length()).inches() + 36);
      assertEquals(6 + 3 + 12, sides.left().least().inches());
      assertFalse(sides.tooShort());
    }
  }

  /**
   * A table of a wall laid first, W 192, o 2, D 16 to 13 1/2, g 1, a₁ 8: full cuts in rounds 1 to
   * 5, 1.375 in of round 6, pieces of 62 and 98 (worked independently of this program). Here a₁ is
   * L₁ = 3 3/4, so that all heights are 4 1/4 less; W is 240, so that the right piece is 48 longer.
   */
  @Test
  void agreesWithAnIndependentTableOfSixSizes() {
    OpeningCut door =
        only(
            Cabins.ofRounds(16, 15.5, 15, 14.5, 14, 13.5)
                .with(Setting.OVERHANG, Cabins.in(2))
                .opening("S", 60, 36, -4.25, 77.75));
    assertEquals("through through through through through from_below", kinds(door));
    assertEquals("1.375", depths(door).get(5));
    RemainingPieces sides = door.cuts().get(0).sides().orElseThrow();
    assertEquals(62, sides.left().length().inches());
    assertEquals(98 + 48, sides.right().length().inches());
  }

  /** Round 2 of a wall laid first lies from 9 3/4 to 21 3/4. */
  @ParameterizedTest(name = "{0} to {1}: {2}")
  @CsvSource({
    "21.75, 40, UNTOUCHED, 0",
    "0, 9.75, UNTOUCHED, 0",
    "9.75, 21.75, THROUGH, 12",
    "9.75, 21.74, FROM_BELOW, 11.99",
    "9.76, 21.75, FROM_ABOVE, 11.99",
    "21.7, 40, FROM_ABOVE, 0.05",
    "0, 9.8, FROM_BELOW, 0.05",
    "12, 20, INSIDE, 8"
  })
  void theLimitsAreAtCrownAndBelly(double sill, double head, CutExtent kind, double depth) {
    OpeningCut opening = only(Cabins.ofRounds(EIGHT).opening("N", 60, 30, sill, head));
    assertEquals(kind, opening.cuts().get(1).kind());
    assertEquals(depth, opening.cuts().get(1).depth().inches(), 1e-6);
  }

  @Test
  void theThickestPlaceOverTheOpeningCounts() {
    // The butt of an odd round lies right on every wall; 8 in of taper over 250 in.
    OpeningCut opening = only(Cabins.ofRounds(12, 12, 12).tapering(8).opening("N", 10, 30, 30, 50));
    double thickest = 12 + 8 * (125 - (2 + 246 - 43)) / 250.0;
    double crown = opening.cuts().get(2).log().round() * 13 - 13 + 2.75 + thickest / 2;
    assertEquals(crown - 30, opening.cuts().get(2).depth().inches(), 1e-5);
    assertEquals(thickest, opening.cuts().get(2).height().inches(), 1e-5);
  }

  @Test
  void twoOpeningsLeaveAPieceBetweenThem() {
    Takeoff takeoff =
        Cabins.ofRounds(EIGHT).opening("S", 30, 36, 0, 60).opening("S", 96, 40, 0, 60).takeoff();
    RemainingPieces first = takeoff.openings().get(0).cuts().get(1).sides().orElseThrow();
    RemainingPieces second = takeoff.openings().get(1).cuts().get(1).sides().orElseThrow();
    assertEquals(30, first.right().length().inches());
    assertEquals(30, second.left().length().inches());
    assertFalse(first.right().atCorner());
    assertEquals(12, first.right().least().inches());
    assertTrue(first.left().atCorner() && second.right().atCorner());
  }

  @Test
  void aPieceTooShortForItsNotchIsSaid() {
    OpeningCut door = only(Cabins.ofRounds(EIGHT).opening("S", 17.9, 36, 0, 60));
    assertTrue(door.cuts().get(0).sides().orElseThrow().left().tooShort());
    OpeningCut enough = only(Cabins.ofRounds(EIGHT).opening("S", 18, 36, 0, 60));
    assertFalse(enough.cuts().get(0).sides().orElseThrow().left().tooShort());
  }

  @ParameterizedTest
  @CsvSource({"5, 36, 0, 60", "200, 36, 0, 60", "60, 36, 60, 60", "60, 0, 0, 60"})
  void anOpeningOutsideItsWallIsLeftOut(double left, double width, double sill, double head) {
    Cabins cabin = Cabins.ofRounds(EIGHT).opening("S", left, width, sill, head);
    assertEquals(List.of(), cabin.takeoff().openings());
    assertEquals(
        Cabins.ofRounds(EIGHT).takeoff().chinking().run(), cabin.takeoff().chinking().run());
  }

  /**
   * Logs of 12 in: a head may take 6 in of one; where it takes more, the next log is the header.
   */
  @Test
  void aLogThatLosesMoreThanHalfIsNoHeader() {
    Cabins cabin = Cabins.ofRounds(EIGHT);
    double bottom = centre(cabin, "S7") - 6;
    assertEquals("S7", header(bottom + 6));
    assertEquals("S8", header(bottom + 6.5));
    double last = centre(cabin, "S8") - 6;
    assertEquals("S8", header(last + 9), "there is none above it");
  }

  private static String header(double head) {
    OpeningCut cut = only(Cabins.ofRounds(EIGHT).opening("S", 48, 36, 0, head));
    return cut.header().orElseThrow().tags();
  }

  private static double centre(Cabins cabin, String tag) {
    return cabin.stack().courses().stream()
        .flatMap(course -> course.places().stream())
        .filter(log -> log.tags().equals(tag))
        .mapToDouble(log -> cabin.stack().centre(log).inches())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anOpeningUnderNoLogHasNoHeader() {
    assertTrue(only(Cabins.ofRounds(12, 12).opening("S", 48, 36, 0, 82)).header().isEmpty());
  }

  /**
   * Engelmann spruce loses 3.8 % radially and 7.1 % tangentially from green to ovendry (Wood
   * Handbook, Table 4-3), so at 12 % moisture 0.6 of that: 3.27 % of the mean, 4.26 % tangentially.
   */
  @Test
  void aDoorGetsRoomForItsWholeHeight() {
    OpeningCut.Frame frame = only(Cabins.ofRounds(EIGHT).opening("S", 48, 36, 0, 82)).frame();
    assertEquals(82 * 0.0327, frame.clearance().inches(), 1e-6);
    assertEquals(3.5, frame.most().inches(), "82 × 0.0426 = 3.4932, up to the next sixteenth");
    assertEquals(82 - 3.5 - 1.5, frame.leg().inches(), "one buck board: the head");
    assertFalse(frame.sillPiece());
    assertEquals(2 * 77 + 36, frame.board().inches());
    assertEquals(2 * 77, frame.keys().inches());
    assertEquals(44, frame.pinLeft().inches());
    assertEquals(88, frame.pinRight().inches());
  }

  @Test
  void aWindowGetsRoomForTheHeightOverItsSillOnly() {
    OpeningCut.Frame frame = only(Cabins.ofRounds(EIGHT).opening("E", 48, 36, 36, 70)).frame();
    assertEquals(34 * 0.0327, frame.clearance().inches(), 1e-6);
    assertEquals(1.5, frame.most().inches(), "34 × 0.0426 = 1.4484, up to the next sixteenth");
    assertEquals(34 - 1.5 - 3, frame.leg().inches(), "two buck boards: head and sill");
  }
}
