package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.buying.Loads.Load;
import roundbook.job.Setting;
import roundbook.plan.PickOrder.Layer;
import roundbook.stack.PlacedLog;

/** In which order logs are picked from a pile, and what it takes to haul them there. */
class PickOrderTest {
  private static final Plan PLAN = PlanFixtures.inches().plan(8);
  private static final PickOrder ORDER = PickOrder.of(PLAN);

  @Test
  void everyRoundHasItsWallsLaidFirstBeforeTheOthers() {
    assertEquals(32, ORDER.logs().size());
    for (int at = 0; at < 32; at++) {
      PlacedLog log = ORDER.logs().get(at);
      assertEquals(at / 4 + 1, log.round());
      assertEquals(at % 4 < 2, log.wall().laidFirst(), log.toString());
    }
  }

  @ParameterizedTest
  @CsvSource({"2, 1-16 17-32", "3, 1-11 12-22 23-32", "4, 1-8 9-16 17-24 25-32"})
  void layersHoldAllLogsFromTheTopDown(int high, String layers) {
    String told =
        String.join(
            " ", ORDER.layers(high).stream().map(one -> one.from() + "-" + one.to()).toList());
    assertEquals(layers, told);
  }

  @Test
  void aPileOfFewLogsHasFewLayers() {
    PickOrder two = new PickOrder(ORDER.logs().subList(0, 2));
    assertEquals(List.of(new Layer(1, 1), new Layer(2, 2)), two.layers(4));
    assertEquals(List.of(), new PickOrder(List.of()).layers(3));
  }

  /** Taken in their order from a pile of such layers no log lies under one that is needed later. */
  @ParameterizedTest
  @CsvSource({"2", "3", "4", "5"})
  void noLogIsLiftedTwice(int high) {
    List<Layer> layers = ORDER.layers(high);
    IntStream.range(1, layers.size())
        .forEach(at -> assertTrue(layers.get(at - 1).to() < layers.get(at).from()));
    assertEquals(32, layers.get(layers.size() - 1).to());
  }

  @Test
  void allLogsBoughtAreHauledAndNoLoadIsTooHeavy() {
    Plan plan = PlanFixtures.inches().set(Setting.LOAD_MOST, new BigDecimal(9000)).plan(8);
    Haul haul = Haul.of(plan);
    assertEquals(plan.uses().size(), haul.logs());
    assertTrue(haul.usual() < haul.most());
    List<Load> loads = haul.loads().orElseThrow().loads();
    assertEquals(haul.logs(), loads.stream().mapToInt(load -> load.items().size()).sum());
    assertEquals(haul.most(), loads.stream().mapToDouble(Load::pounds).sum(), 1e-6);
    loads.forEach(load -> assertTrue(load.pounds() <= 9000, load::toString));
    assertTrue(loads.size() >= Math.ceil(haul.most() / 9000));
    assertFalse(haul.isRefused(plan.job().rules()));
  }

  @Test
  void aTrailerThatDoesNotTakeEveryLogHasNoLoads() {
    Plan plan = PlanFixtures.inches().set(Setting.LOAD_MOST, new BigDecimal(100)).plan(2);
    assertTrue(Haul.of(plan).isRefused(plan.job().rules()));
    Haul none = Haul.of(PLAN);
    assertTrue(none.loads().isEmpty());
    assertFalse(none.isRefused(PLAN.job().rules()));
  }
}
