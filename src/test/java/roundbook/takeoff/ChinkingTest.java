package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import roundbook.job.Building;
import roundbook.job.Setting;

/** The filling of the joints of cylinders 12 in thick, 13 in apart, hewn to 6 in. */
class ChinkingTest {
  /** From shoulder to shoulder: 240 + 2·3 − 2·9, and 168 + 6 − 18. */
  private static final double LONG = 228;

  private static final double SHORT = 156;

  private static double integral(double from, double to) {
    return new IterativeLegendreGaussIntegrator(16, 1e-10, 1e-10)
        .integrate(100_000, v -> 13 - 2 * Math.sqrt(36 - v * v), from, to);
  }

  private static Chinking chinking(Cabins cabin) {
    return cabin.takeoff().chinking();
  }

  @Test
  void oneJointHasItsRunHeightsSectionAndVolume() {
    Chinking.Fill fill = chinking(Cabins.ofRounds(12, 12)).joints().get(0);
    assertEquals(LONG, fill.run(), 1e-9);
    double face = 13 - 2 * Math.sqrt(27);
    assertEquals(face, fill.faceLeast(), 1e-9);
    assertEquals(face, fill.faceMost(), 1e-9);
    assertEquals(integral(-3, 3), fill.section(), 1e-7);
    assertEquals(integral(-3, 3) * LONG, fill.gapVolume(), 1e-5);
    assertEquals(face * LONG, fill.faceArea(), 1e-7);
    assertEquals(2 * integral(2, 3) * LONG, fill.stripVolume(), 1e-5);
    assertEquals(13 - 2 * Math.sqrt(32), fill.widest(), 1e-9, "1 in deep");
  }

  /** 1.686 in high at its depth, and a quarter more: 2.108, so 2 1/2 in stock. */
  @Test
  void backerIsTheNextStockSizeUp() {
    assertEquals(
        OptionalDouble.of(2.5), chinking(Cabins.ofRounds(12, 12)).joints().get(0).backer());
    Cabins lessSqueezed = Cabins.ofRounds(12, 12).with(Setting.BACKER_SQUEEZE, 10);
    assertEquals(OptionalDouble.of(2.0), chinking(lessSqueezed).joints().get(0).backer());
  }

  @Test
  void aGapTooWideForEveryStockSizeIsToldApart() {
    Chinking wide = chinking(Cabins.ofRounds(12, 12).with(Setting.CHINKING_GAP, Cabins.in(4)));
    assertTrue(wide.joints().get(0).backer().isEmpty());
    assertEquals(Map.of(Double.POSITIVE_INFINITY, 2 * wide.run()), wide.backer());
  }

  @Test
  void wallsAddUpToTheWhole() {
    Cabins cabin = Cabins.ofRounds(13, 12.5, 12, 11.5).tapering(2);
    Chinking all = chinking(cabin);
    Building building = cabin.stack().building();
    double parts = building.walls().stream().mapToDouble(wall -> all.of(wall).gapVolume()).sum();
    assertEquals(12, all.joints().size());
    assertEquals(parts, all.gapVolume(), 1e-6);
    assertEquals(3 * 2 * (LONG + SHORT), all.run(), 1e-6);
    assertEquals(all.stripVolume() + all.cavity(), all.gapVolume(), 1e-9);
    assertEquals(1.1 * all.stripVolume(), all.toBuy(), 1e-9, "10 % waste by default");
  }

  /** A window of 40 in from 20 to 48 takes the joints whose gaps lie at 22 1/4 and 35 1/4. */
  @Test
  void anOpeningIsTakenOffTheJointsItCuts() {
    Chinking cut = chinking(Cabins.ofRounds(12, 12, 12, 12, 12).opening("S", 60, 40, 20, 48));
    Chinking whole = chinking(Cabins.ofRounds(12, 12, 12, 12, 12));
    assertEquals(whole.run() - 2 * 40, cut.run(), 1e-6);
    double each = integral(-3, 3) * 40;
    assertEquals(whole.gapVolume() - 2 * each, cut.gapVolume(), 1e-4);
    double[] runs =
        cut.joints().stream().mapToDouble(Chinking.Fill::run).skip(8).limit(4).toArray();
    assertEquals(LONG, runs[0], 1e-6);
    assertEquals(LONG - 40, runs[1], 1e-6);
    assertEquals(LONG - 40, runs[2], 1e-6);
    assertEquals(LONG, runs[3], 1e-6);
  }

  @Test
  void overlappingOpeningsAreTakenOffOnce() {
    Chinking cut =
        chinking(
            Cabins.ofRounds(12, 12, 12, 12, 12)
                .opening("S", 60, 40, 20, 48)
                .opening("S", 80, 40, 20, 48));
    assertEquals(chinking(Cabins.ofRounds(12, 12, 12, 12, 12)).run() - 2 * 60, cut.run(), 1e-6);
  }
}
