package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Half;

/** Which short logs lie beside openings, in cabins of cylinders that can be worked out by hand. */
class ShortLogsTest {
  /** A window that cuts one log of a wall laid first in two; pieces of 63 and 147 in. */
  private static Cabins cabin(boolean asked) {
    return Cabins.ofRounds(12, 12, 12, 12, 12, 12).opening("S", asked, 60, 36, 20, 48);
  }

  private static List<Half> halves(Cabins cabin) {
    return cabin.chosen().pieces().stream().map(PiecePlan::halves).flatMap(List::stream).toList();
  }

  private static List<String> tags(Cabins cabin) {
    return halves(cabin).stream().map(half -> half.placed().piece().log().tag()).toList();
  }

  @Test
  void twoShortLogsFillThePlaceOfALongOne() {
    List<Half> halves = halves(cabin(true).spare(70, 12).spare(151, 12));
    assertEquals(2, halves.size());
    assertEquals(3, halves.get(0).placed().round());
    assertEquals("S", halves.get(0).placed().wall().name());
    assertEquals("S901", halves.get(0).placed().piece().log().tag());
    assertEquals(63, halves.get(0).placed().piece().trimmed().inches());
    assertEquals("S902", halves.get(1).placed().piece().log().tag());
    assertEquals(147, halves.get(1).placed().piece().trimmed().inches());
  }

  /** Of logs that serve alike the one with the least waste is taken. */
  @Test
  void theShortestThatServesIsTakenAndNoneTwice() {
    Cabins cabin = cabin(true).spare(90, 12).spare(67, 12).spare(160, 12);
    assertEquals(List.of("S902", "S903"), tags(cabin));
  }

  @Test
  void nothingIsDoneUnlessItIsAskedFor() {
    assertTrue(halves(cabin(false).spare(70, 12).spare(151, 12)).isEmpty());
  }

  @Test
  void aLogWithoutWoodToSquareIsTooShort() {
    assertTrue(halves(cabin(true).spare(66.9, 12).spare(151, 12)).isEmpty());
  }

  @Test
  void aLogLongEnoughForTheWholeWallIsKept() {
    assertTrue(halves(cabin(true).spare(70, 12).spare(250, 12)).isEmpty());
  }

  /** A piece must reach 12 in past its neck of 9: one of 20 in does not hold. */
  @Test
  void aSideTooShortForItsNotchGetsNoShortLog() {
    Cabins near = Cabins.ofRounds(12, 12, 12, 12, 12, 12).opening("S", true, 17, 36, 20, 48);
    assertTrue(halves(near.spare(70, 12).spare(200, 12)).isEmpty());
  }

  /** With logs of 12 in all round, 14 in at one side leaves no gap, 10 in one of 2 in. */
  @Test
  void aLogThatWouldSpoilTheGapIsNotTaken() {
    assertTrue(halves(cabin(true).spare(70, 14).spare(151, 12)).isEmpty());
    assertTrue(halves(cabin(true).spare(70, 10).spare(151, 12)).isEmpty());
  }
}
