package roundbook.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.buying.Line.From;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.OtherLog;
import roundbook.job.Setting;
import roundbook.plan.Jobs;
import roundbook.problem.CellRef;
import roundbook.problem.ProblemCode;
import roundbook.units.Length;

/** The lines of an order against values computed apart, for a house of 20 by 16 ft. */
class OrderTest {
  static final Building WALLS =
      Jobs.building(Length.ofInches(240), Length.ofInches(192), Length.ofInches(6));

  /** Returns an order in narrow bands, 8 ft 6 in high. */
  static Order narrow() {
    return Order.of(rules("1 1/2"), WALLS).value().orElseThrow();
  }

  static BuildRules rules(String band) {
    return Jobs.rules(false)
        .with(Setting.WALL_HEIGHT, Length.ofInches(102), Origin.OPTION)
        .with(Setting.BAND_MOST, Jobs.inches(band), Origin.OPTION);
  }

  @Test
  void roundsStandOnOneLineForAsLongAsTheBandHoldsThem() {
    assertEquals(
        "1-3 12.5-14.0, 4-6 11.5-13.0, 7 11.0-12.0",
        narrow().lines().stream()
            .filter(line -> line.use().equals("N S") && line.from() == From.BUTT)
            .map(
                line ->
                    line.roundsText()
                        + " "
                        + line.band().from().inches()
                        + "-"
                        + line.band().to().inches())
            .collect(Collectors.joining(", ")));
  }

  /**
   * Plates and the like stand behind the walls' lines, are weighed and hauled, and have no spares;
   * a middle that was not told is the tip and 0.13 in a foot of half the length.
   */
  @Test
  void logsForOtherPlacesAreLinesOfTheOrder() {
    Order order = narrow();
    OtherLog purlin = other("purlin", 4, 11, 0);
    OtherLog post = other("post", 2, 0, 8);
    OtherLog unknown = other("tie", 3, 0, 0);
    Order whole = order.with(rules("1 1/2"), List.of(purlin, post, unknown));
    assertEquals(order.count() + 6, whole.count());
    assertEquals(order.logs(), whole.logs());
    assertEquals(order.spares(), whole.spares());
    assertEquals(List.of(unknown), Order.unmeasured(List.of(purlin, post, unknown)));
    List<Line> lines = whole.lines().subList(order.lines().size(), whole.lines().size());
    assertEquals("purlin post", lines.get(0).use() + " " + lines.get(1).use());
    assertEquals(Length.ofInches(11), lines.get(0).band().from());
    // 240 in: 8 + 0.13 x 10 = 9.3, to a sixteenth 9 5/16.
    assertEquals(Jobs.inches("9 5/16"), lines.get(1).band().from());
    assertEquals(6, whole.items().size() - order.items().size());
    assertTrue(lines.get(0).pounds() > 0);
    assertEquals("", lines.get(0).roundsText());
  }

  private static OtherLog other(String name, int count, int mid, int tip) {
    return new OtherLog(
        name,
        count,
        Length.ofInches(240),
        Length.ofInches(mid),
        Length.ofInches(tip),
        Optional.empty(),
        "",
        CellRef.ofFile(""));
  }

  @Test
  void theUsualBandPutsAllRoundsOnOneLineAClass() {
    List<Line> lines = Order.of(rules("3"), WALLS).value().orElseThrow().lines();
    assertEquals(4, lines.size());
    assertEquals("1-7", lines.get(0).roundsText());
    assertEquals(Jobs.inches("11"), lines.get(0).band().from());
    assertEquals(Jobs.inches("14"), lines.get(0).band().to());
  }

  @ParameterizedTest
  @CsvSource({
    "246, false, 250, 264",
    "246, true, 274, 288",
    "198, false, 202, 216",
    "198, true, 226, 240"
  })
  void lengthsToAskForHoldTheLeast(int trimmed, boolean butt, int least, int ask) {
    LogLengths lengths = LogLengths.of(rules("3"), Length.ofInches(trimmed), butt);
    assertEquals(Length.ofInches(least), lengths.least());
    assertEquals(Length.ofInches(ask), lengths.ask());
    assertEquals(Length.ofInches(ask + 6), lengths.delivered());
  }

  @Test
  void theMiddleIsThatOfTheTrimmedLogAboveTheFlare() {
    LogLengths butt = LogLengths.of(rules("3"), Length.ofInches(246), true);
    assertEquals(Length.ofInches(24 + 2 + 123), butt.midAt());
  }

  @Test
  void withoutAStepTheLeastIsAskedFor() {
    BuildRules exact = rules("3").with(Setting.LENGTH_STEP, Length.ZERO, Origin.OPTION);
    LogLengths lengths = LogLengths.of(exact, Length.ofInches(246), false);
    assertEquals(Length.ofInches(250), lengths.delivered());
  }

  @ParameterizedTest
  @CsvSource({"13.5, 10.201, 11.877, 12.750", "11.5, 9.411, 11.026, 11.877"})
  void leastTips(String size, double top, double bottom, double shoulder) {
    BuildRules rules = rules("3").with(Setting.SHOULDER_LEAST, Jobs.inches("1.5"), Origin.OPTION);
    LeastTips tips = LeastTips.of(rules, WALLS, WALLS.walls().get(0), Jobs.inches(size));
    assertEquals(top, tips.least().inches(), 5e-4);
    assertEquals(bottom, tips.bottom().inches(), 5e-4);
    assertEquals(shoulder, tips.better().inches(), 5e-4);
  }

  /** Six logs and two spares; of half butt logs 23 1/2 ft long in the mean, 13 1/4 in thick. */
  @Test
  void aLineHasSparesOfItsOwnAndAVolume() {
    Line butt = narrow().lines().get(0);
    Line second = narrow().lines().get(1);
    assertEquals(6, butt.count().logs() + second.count().logs());
    assertEquals(2, butt.count().spares() + second.count().spares());
    double mean = (butt.cubicFeet() + second.cubicFeet()) / 2;
    assertEquals(22.50, mean, 0.005);
    assertEquals(788, mean * 35, 0.5);
  }

  /**
   * Computed apart with half a butt log on each odd line: 24,640 lb; whole butt logs are 50 lb
   * more.
   */
  @Test
  void theWholeOrderIsCountedAndWeighed() {
    Order order = narrow();
    assertEquals(38, order.count());
    assertEquals(28, order.logs());
    double pounds = order.total(line -> line.cubicFeet() * 35);
    assertEquals(24_690, pounds, 5);
    List<Loads.Item> items =
        order.lines().stream()
            .flatMap(
                line ->
                    java.util.Collections.nCopies(
                        line.count().all(),
                        new Loads.Item(
                            line.number(), line.lengths().delivered(), line.cubicFeet() * 35))
                        .stream())
            .toList();
    assertEquals(3, Loads.packed(items, 10_000).loads().size());
  }

  @Test
  void aQuarterIsSpareUnlessTheBuilderSaysOtherwise() {
    BuildRules none = rules("3").with(Setting.SPARES_PERCENT, BigDecimal.ZERO, Origin.WORKBOOK);
    assertEquals(36, Order.of(rules("3"), WALLS).value().orElseThrow().count());
    assertEquals(30, Order.of(none, WALLS).value().orElseThrow().count());
  }

  @Test
  void whereButtLogsAreNoLongerAnyLogWillDo() {
    BuildRules flat = rules("3").with(Setting.BUTT_SPARE, Length.ZERO, Origin.OPTION);
    List<Line> lines = Order.of(flat, WALLS).value().orElseThrow().lines();
    assertEquals(2, lines.size());
    assertTrue(lines.stream().allMatch(line -> line.from() == From.ANY));
  }

  @Test
  void aBandNarrowerThanARoundMaySpreadIsRefused() {
    assertEquals(ProblemCode.ORDER_BAND, Order.of(rules("1/2"), WALLS).problems().get(0).code());
  }
}
