package roundbook.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.problem.ProblemCode;
import roundbook.problem.Read;
import roundbook.problem.words.Sentences;
import roundbook.units.Length;

/** Sizes and heights before a log is owned, against values computed apart. */
class SizesTest {
  private static final Building WALLS =
      Jobs.building(Length.ofInches(240), Length.ofInches(192), Length.ofInches(6));

  @Test
  void eightRoundsOfThirteenStandAsHighAsComputedApart() {
    Sizes sizes = new Sizes(java.util.Collections.nCopies(8, inches("13")), inches("1"), false);
    assertEquals(inches("114.5"), sizes.height());
    assertEquals(inches("107.5"), sizes.firstLaidHeight());
  }

  @Test
  void eightRoundsInMillimetresToo() {
    List<Length> sizes = java.util.Collections.nCopies(8, Length.ofMillimetres(330));
    Sizes metric = new Sizes(sizes, Length.ofMillimetres(25), false);
    assertEquals(2903.75, metric.height().nanometres() / 1e6, 1e-9);
  }

  @Test
  void aHeightTakesTheNearestNumberOfRounds() {
    Sizes sizes = Sizes.of(height("102"), WALLS).value().orElseThrow();
    assertEquals(
        "13.5 13 13 12.5 12 12 11.5",
        sizes.rounds().stream()
            .map(size -> BigDecimal.valueOf(size.inches()).stripTrailingZeros().toPlainString())
            .collect(Collectors.joining(" ")));
    assertEquals(inches("96.625"), sizes.height());
  }

  @Test
  void onATieTheFewerRoundsStand() {
    Length six = Sizes.of(Jobs.rules(false), 6).height();
    Length seven = Sizes.of(Jobs.rules(false), 7).height();
    BuildRules rules =
        Jobs.rules(false).with(Setting.WALL_HEIGHT, six.plus(seven).dividedBy(2), Origin.OPTION);
    assertEquals(6, Sizes.of(rules, WALLS).value().orElseThrow().count());
  }

  /** A half log under the second-laid walls lifts all by the upper mark of the first round. */
  @Test
  void aStarterLiftsTheWalls() {
    BuildRules flat = Jobs.rules(false);
    BuildRules starter = flat.with(Setting.FIRST_BED, "starter", Origin.OPTION);
    Length lift = Sizes.of(starter, 7).height().minus(Sizes.of(flat, 7).height());
    assertEquals(Sizes.of(flat, 7).notch(1, flat).upper(), lift);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "WALL_HEIGHT=6|ORDER_HEIGHT|within half a course of 6 in: 1 comes to 17 1/8 in",
        "GAP_MOST=2|ORDER_HEIGHT|neither Wall_height nor Rounds",
        "WALL_HEIGHT=29|ORDER_BAND|sizes step by 2 in",
        "WALL_HEIGHT=102 MID_TOP=9|ORDER_BAND|a round of 9 in is too thin",
        "WALL_HEIGHT=102 NECK_LEAST=6|ORDER_BAND|a round of 11 1/2 in is too thin"
      })
  void whatNoWallCouldBeIsRefusedInOneLine(String settings, ProblemCode code, String message) {
    BuildRules rules = Jobs.rules(false);
    for (String each : settings.split(" ")) {
      String[] parts = each.split("=");
      rules = rules.with(Setting.valueOf(parts[0]), inches(parts[1]), Origin.OPTION);
    }
    Read<Sizes> read = Sizes.of(rules, WALLS);
    assertTrue(read.value().isEmpty());
    assertEquals(1, read.problems().size());
    assertEquals(code, read.problems().get(0).code());
    assertTrue(
        Sentences.english().message(read.problems().get(0)).contains(message),
        read.problems().toString());
  }

  /** Rounds that are asked for stand, and a height beside them that they miss is said. */
  @ParameterizedTest
  @CsvSource({
    "7, 96 5/8, ''",
    "7, 102, ''",
    "7, 104, order-height.rounds",
    "1, 60, order-height.rounds.one"
  })
  void roundsGoBeforeAHeight(int rounds, String height, String said) {
    BuildRules rules = height(height).with(Setting.ROUNDS, new BigDecimal(rounds), Origin.OPTION);
    Read<Sizes> read = Sizes.of(rules, WALLS);
    assertEquals(rounds, read.value().orElseThrow().count());
    assertEquals(
        said,
        read.problems().stream().map(each -> each.said().key()).collect(Collectors.joining()));
  }

  /** The first size that bears whole, by trying sizes one after another. */
  @ParameterizedTest
  @CsvSource({"6, 1, 3", "6, 0, 3", "8, 1, 3", "5, 1 1/2, 3", "6, 1, 4"})
  void theLeastSizeIsTheFirstThatBearsWhole(String thickness, String gap, int run) {
    BuildRules rules =
        Jobs.rules(false)
            .with(Setting.LOG_THICKNESS, inches(thickness), Origin.OPTION)
            .with(Setting.CHINKING_GAP, inches(gap), Origin.OPTION)
            .with(Setting.SLOPE_RUN, new BigDecimal(run), Origin.OPTION);
    Building walls = Jobs.building(inches("240"), inches("192"), inches(thickness));
    double t = inches(thickness).inches();
    double g = inches(gap).inches();
    double size = t;
    while (!bears(size, t, g, run)) {
      size += 0.001;
    }
    assertEquals(size, Sizes.least(rules, walls).inches(), 0.0015);
  }

  /**
   * Half of the crown stands over the flat by {@code h = sqrt(D^2 - T^2) / 2}. The upper mark lies
   * {@code (D + 3 g) / 4} over the centre line and the lower {@code (D - g) / 4} below it; the
   * lower neck slopes on by T / run across the log; the neck between is Neck_least thick at the
   * least.
   */
  private static boolean bears(double d, double t, double g, int run) {
    double half = Math.sqrt(d * d - t * t) / 2;
    double lower = (d - g) / 4;
    double upper = lower + g;
    boolean neck = lower + upper - t / run >= 4;
    return upper <= half && lower + t / run <= half && neck;
  }

  private static BuildRules height(String text) {
    return Jobs.rules(false).with(Setting.WALL_HEIGHT, inches(text), Origin.OPTION);
  }

  private static Length inches(String text) {
    return Jobs.inches(text);
  }
}
