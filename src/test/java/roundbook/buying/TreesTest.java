package roundbook.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.buying.Line.From;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.units.Length;
import roundbook.wood.StemTaper;

/** Breast-height diameters of trees that hold a log of a 20 ft wall, 25 m tall. */
class TreesTest {
  private static final Length TALL = Length.ofMillimetres(25_000);

  /** Computed apart from the same published models. */
  @ParameterizedTest
  @CsvSource({
    "NORWAY_SPRUCE, 4.0846, 15.71",
    "NORWAY_SPRUCE, 10.4346, 21.23",
    "WHITE_PINE, 4.0846, 15.67"
  })
  void aThirteenInchMiddleAsksForATreeOf(StemTaper model, double metres, double inches) {
    Length breast = Trees.breast(model, Length.ofInches(13), metres, TALL).orElseThrow();
    assertEquals(inches, breast.inches(), 0.01);
  }

  /** An 18 in spruce of 25 m has middles of 14.71 in on its butt log and 11.53 on the second. */
  @Test
  void oneTreeFeedsALowRoundAndAHighOne() {
    double breast = 18 * 2.54;
    assertEquals(14.71, StemTaper.NORWAY_SPRUCE.diameter(4.0846, breast, 25) / 2.54, 0.01);
    assertEquals(11.53, StemTaper.NORWAY_SPRUCE.diameter(10.4346, breast, 25) / 2.54, 0.01);
  }

  @Test
  void theSecondLogGrewOverTheButtLogOfTheSameWall() {
    List<Line> lines = OrderTest.narrow().lines();
    BuildRules rules = OrderTest.rules("1 1/2");
    assertEquals(From.BUTT, lines.get(0).from());
    assertEquals(Length.ofInches(149), Trees.midAbove(lines.get(0), rules));
    assertEquals(Length.ofInches(274 + 125), Trees.midAbove(lines.get(1), rules));
  }

  @Test
  void aTreeTooLowForTheLogHasNoDiameter() {
    Length low = Length.ofMillimetres(9_000);
    assertTrue(Trees.breast(StemTaper.NORWAY_SPRUCE, Length.ofInches(13), 10.4, low).isEmpty());
  }

  @Test
  void withoutAHeightNoTreeIsTold() {
    BuildRules rules = OrderTest.rules("1 1/2");
    assertTrue(Trees.of(OrderTest.narrow(), rules).isEmpty());
    BuildRules told =
        rules
            .with(Setting.TREE_HEIGHT, Jobs.inches("984"), Origin.OPTION)
            .with(Setting.SPECIES, "Eastern white pine", Origin.OPTION);
    Trees trees = Trees.of(OrderTest.narrow(), told).orElseThrow();
    assertEquals(StemTaper.WHITE_PINE, trees.model());
    assertTrue(trees.certain());
  }
}
