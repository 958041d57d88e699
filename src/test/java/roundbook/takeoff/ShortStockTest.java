package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Short logs that stand for long ones beside openings. */
class ShortStockTest {
  /** A window that cuts rounds 3 and 4 of a wall laid first in two; pieces of 63 and 147 in. */
  private static Cabins cabin(boolean asked) {
    return Cabins.ofRounds(12, 12, 12, 12, 12, 12).opening("S", asked, 60, 36, 20, 48);
  }

  @Test
  void twoShortLogsFreeALongOne() {
    List<ShortStock> stock = cabin(true).spare(70, 12).spare(151, 12).takeoff().shortStock();
    assertEquals(1, stock.size());
    assertEquals("S3", stock.get(0).freed().piece().log().tag());
    assertEquals("S901", stock.get(0).left().log().tag());
    assertEquals(63, stock.get(0).left().length().inches());
    assertEquals("S902", stock.get(0).right().log().tag());
    assertEquals(147, stock.get(0).right().length().inches());
  }

  @Test
  void theShortestThatServesIsTakenAndNoneTwice() {
    List<ShortStock> stock =
        cabin(true).spare(90, 12).spare(67, 12).spare(160, 12).takeoff().shortStock();
    assertEquals(List.of("S902"), stock.stream().map(each -> each.left().log().tag()).toList());
  }

  @Test
  void nothingIsOfferedUnlessItIsAskedFor() {
    assertTrue(cabin(false).spare(70, 12).spare(151, 12).takeoff().shortStock().isEmpty());
  }

  @Test
  void aLogWithoutWoodToSquareIsTooShort() {
    assertTrue(cabin(true).spare(66.9, 12).spare(151, 12).takeoff().shortStock().isEmpty());
  }

  @Test
  void aLogLongEnoughForTheWholeWallIsKept() {
    assertTrue(cabin(true).spare(70, 12).spare(250, 12).takeoff().shortStock().isEmpty());
  }

  /** 13.1 in beside neighbours of 12 leave a gap under 1/2 in; 10.4 in leave one over 1 3/4 in. */
  @Test
  void aLogThatWouldSpoilTheGapIsNoStock() {
    assertTrue(cabin(true).spare(70, 13.1).spare(151, 12).takeoff().shortStock().isEmpty());
    assertTrue(cabin(true).spare(70, 10.4).spare(151, 12).takeoff().shortStock().isEmpty());
  }
}
