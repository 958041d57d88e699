package roundbook.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Slopes as carpenters write them. */
class SlopeTest {
  @ParameterizedTest
  @CsvSource({
    "1:3, 1:3",
    "1 in 3, 1:3",
    "1/3.0, 1:3",
    " 3 , 1:3",
    "1 IN 2.50, 1:2.5",
    "1:10, 1:10"
  })
  void readsEveryForm(String text, String canonical) {
    Slope slope = Slope.parse(text).orElseThrow();
    assertEquals(canonical, slope.toString());
    assertEquals(0, new BigDecimal(canonical.substring(2)).compareTo(slope.run()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0", "1:0", "2:3", "-3", "1:", "steep"})
  void refusesWhatIsNone(String text) {
    assertTrue(Slope.parse(text).isEmpty(), text);
  }

  @Test
  void dropsOneInTheRun() {
    Length six = Length.ofInches(6);
    assertEquals(Length.ofInches(2), new Slope(BigDecimal.valueOf(3)).dropOver(six));
    assertEquals(Length.ofInchFraction(12, 5), Slope.parse("2.5").orElseThrow().dropOver(six));
    assertEquals(0.4, Slope.parse("2.5").orElseThrow().ratio(), 1e-15);
    assertThrows(IllegalArgumentException.class, () -> new Slope(BigDecimal.valueOf(0)));
    assertThrows(IllegalArgumentException.class, () -> new Slope(BigDecimal.valueOf(-3)));
  }
}
