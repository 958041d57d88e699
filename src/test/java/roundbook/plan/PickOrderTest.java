package roundbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.buying.Loads.Load;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.plan.PickOrder.Layer;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

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
  @CsvSource({"2, 1-16 17-32", "3, 1-10 11-21 22-32", "4, 1-8 9-16 17-24 25-32"})
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
    assertEquals(plan.uses().size(), haul.logs().size());
    assertTrue(haul.usual() < haul.most());
    List<Load> loads = haul.loads().orElseThrow().loads();
    assertEquals(haul.logs().size(), loads.stream().mapToInt(load -> load.items().size()).sum());
    assertEquals(haul.most(), loads.stream().mapToDouble(Load::pounds).sum(), 1e-6);
    loads.forEach(load -> assertTrue(load.pounds() <= 9000, load::toString));
    assertTrue(loads.size() >= Math.ceil(haul.most() / 9000));
    assertEquals(List.of(), haul.left());
    List<Log> hauled = loads.stream().flatMap(load -> haul.logs(load).stream()).toList();
    assertEquals(Set.copyOf(haul.logs()), Set.copyOf(hauled));
    for (Load load : loads) {
      for (int at = 0; at < load.items().size(); at++) {
        assertEquals(load.items().get(at).length(), haul.logs(load).get(at).length());
      }
    }
  }

  @Test
  void logsThatATrailerDoesNotTakeAreNamedAndTheOthersPacked() {
    Plan small = PlanFixtures.inches().set(Setting.LOAD_MOST, new BigDecimal(100)).plan(2);
    assertTrue(Haul.of(small).loads().isEmpty());
    assertEquals(Haul.of(small).logs(), Haul.of(small).left());
    Length longest = PLAN.job().logs().stream().map(Log::length).reduce(Length.ZERO, Length::most);
    Plan shorter =
        PlanFixtures.inches()
            .set(Setting.LOAD_MOST, new BigDecimal(9000))
            .set(Setting.BED_LENGTH, longest.minus(Length.ofInches(1)))
            .plan(8);
    List<Log> left = Haul.of(shorter).left();
    assertTrue(left.stream().allMatch(log -> log.length().equals(longest)));
    int packed =
        Haul.of(shorter).loads().orElseThrow().loads().stream()
            .mapToInt(load -> load.items().size())
            .sum();
    assertEquals(shorter.uses().size(), packed + left.size());
    assertTrue(Haul.of(PLAN).loads().isEmpty());
    assertEquals(List.of(), Haul.of(PLAN).left());
  }

  /** Piles of two, three and four laid at random ten thousand times: counted, not reckoned. */
  @ParameterizedTest
  @CsvSource({"2, 8", "3, 12", "4, 15"})
  void logsPiledAsTheyComeAreLiftedMoreOften(int high, int lifts) {
    assertEquals(lifts, Math.round(ORDER.extraLifts(high)));
    Random random = new Random(7);
    double counted = 0;
    for (int time = 0; time < 10_000; time++) {
      List<Integer> numbers = new ArrayList<>(IntStream.rangeClosed(1, 32).boxed().toList());
      Collections.shuffle(numbers, random);
      List<Layer> layers = ORDER.layers(high);
      for (int column = 0; column < 32; column++) {
        int least = Integer.MAX_VALUE;
        for (int at = layers.size() - 1; at >= 0; at--) {
          Layer layer = layers.get(at);
          if (column <= layer.to() - layer.from()) {
            int own = numbers.get(layer.from() - 1 + column);
            counted += own > least ? 1 : 0;
            least = Math.min(least, own);
          }
        }
      }
    }
    assertEquals(counted / 10_000, ORDER.extraLifts(high), 0.1);
  }

  @Test
  void everyLogKnowsWhenItIsNeededAndInWhichLayerItLies() {
    Log first = ORDER.logs().get(0).piece().log();
    Log last = ORDER.logs().get(31).piece().log();
    assertEquals(OptionalInt.of(1), ORDER.number(first));
    assertEquals(OptionalInt.of(32), ORDER.number(last));
    assertEquals(OptionalInt.empty(), ORDER.number(last.tagged("no such tag")));
    assertEquals(List.of(1, 1, 2, 2, 3), layersOf(3, 1, 10, 11, 21, 22));
  }

  private static List<Integer> layersOf(int high, int... numbers) {
    return IntStream.of(numbers).mapToObj(number -> ORDER.layer(high, number)).toList();
  }
}
