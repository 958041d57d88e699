package roundbook.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Conversions against the factors of NIST Special Publication 811, Guide for the Use of the SI,
 * appendix B.8 (the values from memory): foot 0.3048 m, square foot 0.092 903 04 m², cubic foot
 * 0.028 316 846 592 m³, US gallon 3.785 411 784 L, avoirdupois pound 0.453 592 37 kg.
 */
class BulkTest {
  private static final Bulk FEET = new Bulk(false);
  private static final Bulk METRES = new Bulk(true);

  @Test
  void oneOfEachInchMeasure() {
    assertEquals(1, FEET.length(12), 1e-12);
    assertEquals(1, FEET.area(144), 1e-12);
    assertEquals(1, FEET.volume(1728), 1e-12);
    assertEquals(1, FEET.pails(231), 1e-12);
    assertEquals(7, FEET.weight(7), 0);
    assertEquals("ft", FEET.symbol());
  }

  @Test
  void theSameInMetricMeasure() {
    assertEquals(0.3048, METRES.length(12), 1e-12);
    assertEquals(0.09290304, METRES.area(144), 1e-12);
    assertEquals(0.028316846592, METRES.volume(1728), 1e-12);
    assertEquals(3.785411784, METRES.pails(231), 1e-9);
    assertEquals(0.45359237 * 7, METRES.weight(7), 1e-12);
    assertEquals("m", METRES.symbol());
  }

  @Test
  void unitsAreFoundByTheirSymbols() {
    for (LengthUnit unit : LengthUnit.values()) {
      assertEquals(
          unit, LengthUnit.ofSymbol(" " + unit.symbol().toUpperCase() + " ").orElseThrow());
      assertEquals(unit, LengthReader.unitOf(unit.symbol() + ".").orElseThrow());
    }
    assertTrue(LengthUnit.ofSymbol("furlong").isEmpty());
    assertTrue(LengthReader.unitOf("furlong").isEmpty());
    assertTrue(LengthUnit.CENTIMETRE.metric());
    assertTrue(!LengthUnit.FOOT.metric() && !LengthUnit.INCH.metric());
  }
}
