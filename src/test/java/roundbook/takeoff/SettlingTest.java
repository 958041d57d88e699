package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Setting;
import roundbook.takeoff.Settling.Source;
import roundbook.wood.Species.Grain;

/** How far the walls come down, and how the moisture is known. */
class SettlingTest {
  private static Settling settling(Cabins cabin) {
    return cabin.takeoff().settling();
  }

  @Test
  void greenLogsShrinkToTheDefaultMoistureAndThePageIsToldSo() {
    Settling settling = settling(Cabins.ofRounds(12, 12));
    assertEquals(Source.DEFAULT, settling.moisture().source());
    assertEquals(12, settling.moisture().service());
    assertTrue(settling.moisture().now().isEmpty());
    assertEquals(0.6 * 0.038, settling.radial().share(), 1e-12);
    assertEquals(0.6 * 0.0545, settling.mean().share(), 1e-12);
    assertEquals(0.6 * 0.071, settling.tangential().share(), 1e-12);
  }

  /** 70 °F and 50 % give 9.2 % (Wood Handbook, Table 4-2). */
  @Test
  void moistureFollowsFromTheAir() {
    Settling settling =
        settling(
            Cabins.ofRounds(12, 12)
                .with(Setting.AIR_TEMPERATURE, 70)
                .with(Setting.AIR_HUMIDITY, 50));
    assertEquals(Source.AIR, settling.moisture().source());
    assertEquals(9.2, settling.moisture().service(), 0.05);
    assertEquals(50, settling.moisture().air().orElseThrow().humidity());
  }

  @Test
  void aMoistureThatWasSetGoesBeforeTheAir() {
    Settling settling =
        settling(
            Cabins.ofRounds(12, 12)
                .with(Setting.AIR_TEMPERATURE, 70)
                .with(Setting.AIR_HUMIDITY, 50)
                .with(Setting.MOISTURE_IN_SERVICE, 14));
    assertEquals(Source.SET, settling.moisture().source());
    assertEquals(14, settling.moisture().service());
  }

  /** From 20 % to 12 %: 1 − (1 − 0.6 S) / (1 − S/3), S green to ovendry, saturation 30. */
  @Test
  void halfDryLogsLoseWhatIsLeftToLose() {
    Settling settling = settling(Cabins.ofRounds(12, 12).with(Setting.MOISTURE_NOW, 20));
    double s = 0.0545;
    assertEquals(1 - (1 - 0.6 * s) / (1 - s / 3), settling.mean().share(), 1e-12);
  }

  @Test
  void figuresFromMemoryAreTold() {
    assertFalse(settling(Cabins.ofRounds(12, 12)).fromMemory(), "read in a copy");
    assertTrue(settling(Cabins.ofRounds(12, 12).of("red spruce")).fromMemory());
    Settling unknown = settling(Cabins.ofRounds(12, 12).of("xyz"));
    assertTrue(unknown.kinds().get(0).match().standIn());
    assertEquals(8, unknown.kinds().get(0).logs());
  }

  @Test
  void theSpeciesThatLosesMostCounts() {
    Settling settling = settling(Cabins.ofRounds(12, 12).of("western larch"));
    assertEquals("western larch", settling.governing().name());
    double mean = settling.of(settling.governing(), Grain.MEAN).share();
    assertEquals((0.045 + 0.091) / 2 * (1 - 12 / 28.0), mean, 1e-12);
  }

  /**
   * Green to ovendry, Wood Handbook Table 4-3: lodgepole pine 4.3 and 6.7 %, Engelmann spruce 3.8
   * and 7.1 %. The pine loses more on the mean, the spruce tangentially; 80 in need 3.41 in.
   */
  @Test
  void framesGetTheRoomOfTheSpeciesThatLosesMostTangentially() {
    Settling settling = settling(Cabins.ofRounds(12, 12).of("lodgepole pine", Cabins.SPRUCE));
    assertEquals(2, settling.kinds().size());
    assertEquals(80 * 0.6 * 0.071, 80 * settling.tangential().share(), 1e-9);
    assertEquals(0.6 * 0.0545, settling.mean().share(), 1e-9);
  }

  @Test
  void theDefaultIsNoDefaultOnceAnOptionSetsIt() {
    Cabins cabin = Cabins.ofRounds(12, 12);
    cabin.with(Setting.MOISTURE_IN_SERVICE, 12);
    assertEquals(
        Origin.WORKBOOK, cabin.rules().value(Setting.MOISTURE_IN_SERVICE).orElseThrow().origin());
    assertEquals(Source.SET, settling(cabin).moisture().source());
  }
}
