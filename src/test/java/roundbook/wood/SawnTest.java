package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Piece;
import roundbook.plan.Jobs;
import roundbook.units.Length;

/** Volumes and balance points against values computed apart and a numeric integrator. */
class SawnTest {
  private static final IterativeLegendreGaussIntegrator INTEGRATOR =
      new IterativeLegendreGaussIntegrator(16, 1e-9, 1e-9);

  /** Computed apart in binary floating point. */
  @ParameterizedTest
  @CsvSource({
    "6, 196, 14.2, 13.1, 12.4, 26864.2404917, 14969.705502",
    "5, 120, 11, 10.5, 10, 10398.6716834, 6052.84064186"
  })
  void volumesOfPieces(
      long t, long trimmed, String butt, String mid, String tip, double round, double sawn) {
    Length length = Length.ofInches(trimmed);
    Piece piece = new Piece(Jobs.log("1", length, butt, mid, tip), Length.ZERO, length);
    SawnPiece cut = new SawnPiece(piece, Length.ofInches(t));
    assertEquals(round, cut.roundCubicInches(), 1e-6 * round);
    assertEquals(sawn, cut.cubicInches(), 1e-6 * sawn);
  }

  /** Forest Functions (D. R. Larsen, University of Missouri): a frustum 10 and 12 in, 16 ft. */
  @Test
  void roundVolumeOfAPublishedFrustum() {
    assertEquals(10.588, Sawn.round(10, 12, 16 * 12) / 1728, 0.0005);
  }

  @Test
  void closedFormsAgreeWithIntegration() {
    long seed = 99;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 300; i++) {
      double low = 5 + random.nextDouble() * 10;
      double high = low + random.nextDouble() * 6;
      double length = 60 + random.nextDouble() * 240;
      double t = 4 + random.nextDouble() * 4;
      double expected =
          INTEGRATOR.integrate(
              200_000, u -> Sawn.section(low + (high - low) * u / length, t), 0, length);
      assertEquals(
          expected, Sawn.volume(high, low, length, t), 2e-4 * expected, "seed " + seed + ", " + i);
    }
  }

  @Test
  void balanceLiesTowardTheButt() {
    Length length = Length.ofInches(240);
    Piece tapered = new Piece(Jobs.log("1", length, "16", "14", "12"), Length.ZERO, length);
    Piece even = new Piece(Jobs.log("1", length, "14", "14", "14"), Length.ZERO, length);
    Length t = Length.ofInches(6);
    double expected =
        INTEGRATOR.integrate(200_000, u -> u * Sawn.section(16 - u / 60, 6), 0, 240)
            / INTEGRATOR.integrate(200_000, u -> Sawn.section(16 - u / 60, 6), 0, 240);
    assertEquals(expected, new SawnPiece(tapered, t).balance().inches(), 1e-4);
    assertEquals(120, new SawnPiece(even, t).balance().inches(), 1e-6);
  }

  /** US Forest Service, Forest Inventory and Analysis: green weight of wood. */
  @ParameterizedTest
  @CsvSource({
    "Norway spruce, 35.8, true", "spruce norway, 35.8, true", "Fichte, 35.8, true",
    "Tamarack, 47.0, true", "'Cedar, western red', 27.0, true", "western red cedar, 27.0, true"
  })
  void weightsAreThoseOfTheTable(String name, double pounds, boolean exact) {
    GreenWeight weight = GreenWeight.of(name);
    assertEquals(pounds, weight.poundsPerCubicFoot(), 0.05);
    assertEquals(exact, weight.exact());
  }

  @Test
  void genericNamesTakeAMeanAndSaySo() {
    GreenWeight pine = GreenWeight.of("pine");
    assertFalse(pine.exact());
    assertTrue(pine.poundsPerCubicFoot() > 35 && pine.poundsPerCubicFoot() < 60);
    assertFalse(GreenWeight.of("").exact());
  }
}
