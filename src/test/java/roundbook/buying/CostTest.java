package roundbook.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Price;
import roundbook.job.Price.Basis;
import roundbook.wood.RoundProfile;

/** Quantities and money, against values computed apart and printed tables. */
class CostTest {
  /**
   * A log of 12 in by 20 ft: 80 by the printed Doyle table; 107.2 by Scribner's formula, to the
   * foot 107; 126.94 by International, 125 as printed (Michigan Compiled Laws 290.401).
   */
  @ParameterizedTest
  @CsvSource({
    "DOYLE, 0.60, 80, 48.00",
    "SCRIBNER, 1, 107, 107.00",
    "INTERNATIONAL_QUARTER, 1, 125, 125.00",
    "FOOT, 3.00, 20, 60.00",
    "TON, 90, 0.5065, 45.59",
    "EACH, 55.5, 1, 55.50",
    "TONNE, 100, 0.4595, 45.95",
    "CUBIC_FOOT, 2, 28.94, 57.88",
    "CUBIC_METRE, 100, 0.8195, 81.95",
    "METRE, 10, 6.096, 60.96",
    "CORD, 200, 0.3647, 72.94"
  })
  void aLogIsPaidByItsBasis(Basis basis, String price, String quantity, String cost) {
    RoundProfile profile = RoundProfile.ofEven(240, 14.6, 12);
    BigDecimal many = new Quantities(profile, 28.94, 1013, 20).in(basis);
    assertEquals(0, new BigDecimal(quantity).compareTo(many), many.toString());
    assertEquals(
        new BigDecimal(cost),
        many.multiply(new BigDecimal(price)).setScale(2, RoundingMode.HALF_UP));
  }

  @Test
  void theFirstPriceThatIsForALineCounts() {
    Order order = OrderTest.narrow();
    List<Price> prices =
        List.of(price(Basis.FOOT, "3", 1, 2), price(Basis.EACH, "50"), price(Basis.EACH, "9", 3));
    Cost cost = Cost.of(order, OrderTest.rules("1 1/2"), prices, OptionalInt.empty());
    assertEquals(order.lines().size(), cost.lines().size());
    // Line 1: four logs of 24 ft at 3; line 3: four logs at 50, not at 9.
    assertEquals(new BigDecimal("288.00"), cost.of(order.lines().get(0)).orElseThrow().cost());
    assertEquals(new BigDecimal("200.00"), cost.of(order.lines().get(2)).orElseThrow().cost());
    assertEquals(2, Cost.offers(order.lines().get(2), OrderTest.rules("1 1/2"), prices).size());
  }

  @Test
  void sparesAndWasteAreTheirShares() {
    Order order = OrderTest.narrow();
    Price each = price(Basis.EACH, "100");
    Cost cost = Cost.of(order, OrderTest.rules("1 1/2"), List.of(each), OptionalInt.empty());
    assertEquals(new BigDecimal("3800.00"), cost.logs());
    assertEquals(new BigDecimal("1000.00"), cost.spares());
    // Line 1: three butt logs of 24 ft 6 in, of which 20 ft 6 in lie in the wall.
    assertEquals(new BigDecimal("48.98"), cost.of(order.lines().get(0)).orElseThrow().waste());
  }

  @Test
  void bringingTheLoadsIsPaidByTheLoad() {
    Price price =
        new Price(Basis.EACH, BigDecimal.TEN, Set.of(), Optional.of(new BigDecimal("75.50")));
    Order order = OrderTest.narrow();
    Cost known = Cost.of(order, OrderTest.rules("1 1/2"), List.of(price), OptionalInt.of(3));
    assertEquals(new BigDecimal("606.50"), known.total());
    Cost unknown = Cost.of(order, OrderTest.rules("1 1/2"), List.of(price), OptionalInt.empty());
    assertTrue(unknown.delivery().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "bd ft Doyle, DOYLE",
    "per board foot Doyle, DOYLE",
    "bd ft International 1/4-inch, INTERNATIONAL_QUARTER",
    "ft³, CUBIC_FOOT",
    "Each, EACH",
    "per ton, TON"
  })
  void aBasisIsKnownByItsWords(String words, Basis basis) {
    assertEquals(Optional.of(basis), Basis.of(words));
  }

  @Test
  void aBoardFootWithoutItsRuleIsNoBasis() {
    assertTrue(Basis.of("board foot").isEmpty());
  }

  private static Price price(Basis basis, String money, Integer... lines) {
    return new Price(basis, new BigDecimal(money), Set.of(lines), Optional.empty());
  }
}
