package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pulls of sling legs, by the multipliers that stand in every rigger's table for angles from the
 * level: 1.155, 1.414 and 2 times half of the load at 60, 45 and 30 degrees (from memory).
 */
class SlingPairTest {
  @ParameterizedTest
  @CsvSource({"90, 500", "60, 577", "45, 707", "30, 1000"})
  void eachLegOfTwoPullsMoreThanHalfOfTheLoad(double degrees, double pounds) {
    assertEquals(pounds, new SlingPair(degrees).pull(1000), 0.5);
  }

  @Test
  void legsOfTenFeetEightFeetApartStandSteep() {
    SlingPair legs = SlingPair.of(10, 8);
    assertEquals(66.4, legs.degrees(), 0.05);
    assertEquals(546, legs.pull(1000), 0.5);
    assertEquals(10.0 / 8, legs.legOfSpan(), 1e-12);
  }

  @Test
  void legsAsLongAsTheyAreApartStandAtSixtyDegrees() {
    assertEquals(60, SlingPair.of(7, 7).degrees(), 1e-9);
    assertEquals(1, new SlingPair(60).legOfSpan(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {8, 9, 100})
  void legsThatDoNotReachAreRefused(double apart) {
    assertThrows(IllegalArgumentException.class, () -> SlingPair.of(4, apart));
  }
}
