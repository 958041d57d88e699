package roundbook.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules;
import roundbook.plan.Jobs;
import roundbook.units.Length;

/** Corner readings against the rule of the trade: low by e, leave e more wood (common practice). */
class LevellingTest {
  private static final Length PLANNED = Length.ofInches(74);
  private static final Length LOWER = Length.ofInchFraction(5, 2);
  private static final BuildRules RULES = Jobs.rules(false);

  /**
   * Readings in sixteenths above the plan; the next lower marks and what is pared in sixteenths.
   */
  @ParameterizedTest(name = "{0} -> {2}, pared {3}")
  @CsvSource({
    "0 0 0 0, true, 40 40 40 40, 0 0 0 0",
    "0 1 -1 0, true, 40 40 40 40, 0 0 0 0",
    "0 2 -2 0, true, 40 38 42 40, 0 0 0 0",
    "0 4 0 0, true, 40 40 40 40, 0 2 0 0",
    "0 5 0 0, false, 40 40 40 40, 0 3 0 0",
    "1 -1 -1 1, true, 40 40 40 40, 0 0 0 0",
    "0 3 -2 0, false, 40 37 42 40, 0 0 0 0",
    "-6 0 0 0, false, 46 40 40 40, 0 0 0 0",
    "-5 -5 -5 -5, true, 40 40 40 40, 0 0 0 0",
    "-4 -4 -4 -5, true, 40 40 40 40, 0 0 0 0",
    "6 6 0 0, false, 34 34 40 40, 0 0 0 0",
    "-12 -8 -8 -9, true, 44 40 40 41, 0 0 0 0",
    "-8 0 0 0, false, 48 40 40 40, 0 0 0 0",
    "-20 0 0 11, false, 48 40 40 37, 0 0 0 8"
  })
  void whatDiffersIsPutRightByOneRemedy(
      String readings, boolean level, String lower, String pared) {
    List<Length> read = sixteenths(readings).stream().map(each -> PLANNED.plus(each)).toList();
    Levelling levelling = Levelling.of(PLANNED, read, RULES);
    assertEquals(level, levelling.level());
    List<Length> next = read.stream().map(each -> levelling.nextLower(LOWER, each, RULES)).toList();
    assertEquals(sixteenths(lower), next);
    assertEquals(
        sixteenths(pared), read.stream().map(each -> levelling.pare(each, RULES)).toList());
  }

  /** A crew that pares as told and reads again is told the marks that it was told before. */
  @Test
  void marksStayWhenTopsArePared() {
    Random random = new Random(7);
    int pared = 0;
    for (int build = 0; build < 2000; build++) {
      List<Length> read =
          IntStream.range(0, 4)
              .mapToObj(i -> PLANNED.plus(Length.ofInchFraction(random.nextInt(17) - 6, 16)))
              .toList();
      Levelling before = Levelling.of(PLANNED, read, RULES);
      Levelling after =
          Levelling.of(
              PLANNED,
              read.stream().map(each -> each.minus(before.pare(each, RULES))).toList(),
              RULES);
      boolean done = after.readings().stream().allMatch(each -> after.pare(each, RULES).isZero());
      for (int i = 0; i < 4 && done; i++) {
        assertEquals(
            after.nextLower(LOWER, after.readings().get(i), RULES),
            before.nextLower(LOWER, read.get(i), RULES));
      }
      pared += after.equals(before) ? 0 : 1;
    }
    assertTrue(pared > 200, "pared in " + pared);
  }

  /** Walls that stand low as a whole are level, and so are they where the plan is in between. */
  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource({"-4 -4 -4 -5, -4", "-12 -8 -8 -9, -8", "-6 0 0 0, 0", "-4 -4 0 0, 0", "3 5, 3"})
  void theMiddleReadingsTellHowTheWallsStand(String readings, long common) {
    List<Length> read = sixteenths(readings).stream().map(each -> PLANNED.plus(each)).toList();
    assertEquals(Length.ofInchFraction(common, 16), Levelling.of(PLANNED, read, RULES).common());
  }

  @Test
  void readingsBetweenTheStepsGiveAMarkOnAStep() {
    Length reading = PLANNED.minus(Length.ofInchFraction(21, 64));
    Levelling levelling = Levelling.of(PLANNED, List.of(reading, PLANNED, PLANNED), RULES);
    assertEquals(Length.ofInchFraction(45, 16), levelling.nextLower(LOWER, reading, RULES));
  }

  @Test
  void inMetricWorkAChangeIsTwelveMillimetresAtMost() {
    BuildRules rules = Jobs.rules(true);
    Length planned = Length.ofMillimetres(1880);
    Length reading = Length.ofMillimetres(1860);
    Levelling levelling = Levelling.of(planned, List.of(reading, planned), rules);
    assertEquals(Length.ofMillimetres(20), levelling.low(reading));
    assertEquals(Length.ofMillimetres(20), levelling.spread());
    assertEquals(
        Length.ofMillimetres(76), levelling.nextLower(Length.ofMillimetres(64), reading, rules));
  }

  @Test
  void noReadingsAreLevel() {
    Levelling levelling = Levelling.of(PLANNED, List.of(), RULES);
    assertEquals(true, levelling.level());
    assertEquals(Length.ZERO, levelling.spread());
  }

  private static List<Length> sixteenths(String counts) {
    return Arrays.stream(counts.split(" "))
        .map(count -> Length.ofInchFraction(Long.parseLong(count), 16))
        .toList();
  }
}
