package roundbook.picture.full;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Setting;
import roundbook.picture.Drawings;
import roundbook.picture.RandomStacks;
import roundbook.picture.canvas.Picture;
import roundbook.picture.canvas.Pixels;
import roundbook.plan.PlanFixtures;
import roundbook.stack.Stack;

/** What prints at full size measures what it should, counted in pixels of 1/200 inch. */
class FullSizeTest {
  private static final double PIXELS = 200;

  @ParameterizedTest
  @CsvSource({"false, 200", "true, 196.85"})
  void theCheckBarIsOneInchOrTwentyFiveMillimetres(boolean metric, double wanted) {
    Pixels pixels = new Pixels(drawings(stack(metric, 3)).template());
    int row = (int) ((1.1 + 6 / 72.0) * PIXELS);
    int from = (int) (5.65 * PIXELS);
    int column = from + 2;
    while (pixels.black(column, row)) {
      column++;
    }
    assertEquals(wanted, column - from, 2.5);
  }

  @ParameterizedTest
  @CsvSource({"2, false", "3, false", "4, true", "6, true"})
  void theSlopingEdgeLeavesTheStraightOneByTheSlope(int run, boolean metric) {
    Pixels pixels = new Pixels(drawings(stack(metric, run)).template());
    int high = (int) (1.25 * PIXELS);
    int low = (int) (4.25 * PIXELS);
    double away = edge(pixels, low) - edge(pixels, high);
    assertEquals(3 * PIXELS / run, away, 2);
  }

  @ParameterizedTest
  @CsvSource({"1", "2", "3", "4", "6"})
  void theWedgeFitsThePaperHoweverSteep(int run) {
    Stack stack = stack(false, run);
    Picture picture = drawings(stack).template();
    assertTrue(picture.widthInches() <= 7.47 && picture.heightInches() <= 9.9);
    Pixels pixels = new Pixels(picture);
    for (int row = 0; row < 1000; row++) {
      assertTrue(!pixels.black((int) (5.55 * PIXELS), row), "row " + row);
    }
  }

  /** Returns the first black column right of the wedge's straight edge. */
  private static int edge(Pixels pixels, int row) {
    int column = (int) (1.3 * PIXELS);
    while (!pixels.black(column, row)) {
      column++;
    }
    return column;
  }

  private static Stack stack(boolean metric, int run) {
    PlanFixtures fixtures = metric ? PlanFixtures.metric() : PlanFixtures.inches();
    return fixtures.set(Setting.SLOPE_RUN, BigDecimal.valueOf(run)).plan(5).stack();
  }

  private static Drawings drawings(Stack stack) {
    return new Drawings(stack, RandomStacks.wording(stack));
  }
}
