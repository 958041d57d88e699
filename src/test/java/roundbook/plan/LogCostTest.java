package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import roundbook.job.Job;
import roundbook.job.Price;
import roundbook.job.Price.Basis;
import roundbook.wood.LogRule;

/** What the logs of a tally are by each way of selling, against the table of scales. */
class LogCostTest {
  private static final Plan PLAN = planned();

  private static Plan planned() {
    List<Price> prices =
        Arrays.stream(Basis.values())
            .map(basis -> new Price(basis, BigDecimal.ONE, Set.of(), Optional.empty()))
            .toList();
    Job job = PlanFixtures.inches().plan(2).job();
    return Planner.of(job.withPrices(prices), PlanFixtures.inches().plan(2).choice());
  }

  @Test
  void boardFeetAndVolumeAreThoseOfTheScale() {
    assertEquals(scaled(LogRule.DOYLE), all(Basis.DOYLE), 1e-3);
    assertEquals(scaled(LogRule.SCRIBNER), all(Basis.SCRIBNER), 1e-3);
    assertEquals(scaled(LogRule.SCRIBNER_DECIMAL_C), all(Basis.SCRIBNER_DECIMAL_C), 1e-3);
    assertEquals(scaled(LogRule.INTERNATIONAL_QUARTER), all(Basis.INTERNATIONAL_QUARTER), 1e-3);
    assertEquals(scaled(LogRule.HUBER), all(Basis.CUBIC_FOOT), 1e-3);
  }

  @Test
  void piecesFeetAndMetresAreThoseOfTheTally() {
    assertEquals(PLAN.uses().size(), all(Basis.EACH));
    double inches = PLAN.uses().stream().mapToDouble(use -> use.log().length().inches()).sum();
    assertEquals(inches / 12, all(Basis.FOOT), 5e-3);
    assertEquals(inches * 0.0254, all(Basis.METRE), 5e-3);
  }

  @Test
  void metricBasesAreTheSameWood() {
    assertEquals(all(Basis.CUBIC_FOOT) * 0.3048 * 0.3048 * 0.3048, all(Basis.CUBIC_METRE), 5e-3);
    assertEquals(all(Basis.TON) * 2000 * 0.45359237 / 1000, all(Basis.TONNE), 5e-3);
  }

  /** By the foot, what is cut off is the length of the logs in the walls less what is left. */
  @Test
  void wasteByTheFootIsWhatIsCutOff() {
    double inches =
        PLAN.pieces().stream()
            .flatMap(piece -> piece.logs().stream())
            .map(placed -> placed.piece())
            .mapToDouble(piece -> piece.cutOffButt().inches() + piece.fallsOff().inches())
            .sum();
    double waste = LogCost.of(PLAN).get(Basis.FOOT.ordinal()).waste().doubleValue();
    assertTrue(waste > 0);
    assertEquals(inches / 12, waste, 5e-3);
  }

  /** The walls are 24 by 18 ft, as high as their last logs' crowns. */
  @Test
  void theWallsAreAsLargeAsTheirTops() {
    double squareFeet = LogCost.wallArea(PLAN) / 144;
    double low = 84 * 2 * 10 / 12.0;
    double high = 84 * 3 * 16 / 12.0;
    assertTrue(low < squareFeet && squareFeet < high, "" + squareFeet);
  }

  private static double scaled(LogRule rule) {
    return PLAN.takeoff().scale().total(rule);
  }

  private static double all(Basis basis) {
    return LogCost.of(PLAN).get(basis.ordinal()).all().doubleValue();
  }
}
