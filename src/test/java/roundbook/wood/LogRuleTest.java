package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.wood.LogRule.Measure;

/** Log rules against printed tables and printed examples, each named beside its check. */
class LogRuleTest {
  private static Measure log(double inches, double feet) {
    return new Measure(inches + 2, inches + 1, inches, feet);
  }

  /** Checks the cells of one row, for 8, 10 and so on to 20 ft. */
  private static void assertRow(LogRule rule, int inches, String cells, double unit) {
    double[] printed = Stream.of(cells.split(" ")).mapToDouble(Double::parseDouble).toArray();
    for (int i = 0; i < printed.length; i++) {
      double feet = 8 + 2 * i;
      String cell = rule + " " + inches + " in x " + feet + " ft";
      assertEquals(printed[i] * unit, rule.scale(log(inches, feet)), 1e-9, cell);
    }
  }

  /** Printed cells: tinytimbers.com/doylescale.htm, 8 to 20 ft by twos. */
  @ParameterizedTest
  @CsvSource({
    "8, 8 10 12 14 16 18 20",
    "10, 18 23 27 32 36 41 45",
    "12, 32 40 48 56 64 72 80",
    "14, 50 63 75 88 100 113 125",
    "16, 72 90 108 126 144 162 180",
    "18, 98 123 147 172 196 221 245",
    "20, 128 160 192 224 256 288 320",
    "22, 162 203 243 284 324 365 405",
    "24, 200 250 300 350 400 450 500",
    "26, 242 303 363 424 484 545 605",
    "28, 288 360 432 504 576 648 720",
    "30, 338 423 507 592 676 761 845"
  })
  void doyleAsPrinted(int inches, String cells) {
    assertRow(LogRule.DOYLE, inches, cells, 1);
  }

  /**
   * Computed apart, in another language: Scribner Decimal C from the factors and exceptions of the
   * US Forest Service volume library, in tens; International from the formula of Michigan Compiled
   * Laws 290.401, to the nearest five.
   */
  @ParameterizedTest
  @CsvSource({
    "6, 1 1 1 1 2 2 2, 10 10 15 15 20 20 25",
    "7, 1 1 2 2 3 3 3, 10 15 20 20 30 30 40",
    "8, 1 2 2 2 3 3 3, 15 20 25 30 40 45 50",
    "9, 2 3 3 3 4 4 4, 20 25 35 40 50 55 70",
    "10, 3 3 3 4 6 6 7, 30 35 45 50 65 70 85",
    "11, 3 4 4 5 7 8 8, 35 45 55 65 80 90 105",
    "12, 4 5 6 7 8 9 10, 45 55 70 80 95 105 125",
    "13, 5 6 7 8 10 11 12, 55 65 85 95 115 130 150",
    "14, 6 7 9 10 11 13 14, 65 80 100 115 135 150 175",
    "15, 7 9 11 12 14 16 18, 75 90 115 130 155 175 205",
    "16, 8 10 12 14 16 18 20, 85 105 130 150 180 200 235",
    "17, 9 12 14 16 18 21 23, 95 120 150 175 205 230 265",
    "18, 11 13 16 19 21 24 27, 110 135 170 195 230 260 300",
    "20, 14 17 21 24 28 31 35, 135 170 210 245 290 325 370",
    "24, 21 25 30 35 40 45 50, 205 255 310 360 425 475 540",
    "30, 33 41 49 57 66 74 82, 325 405 495 575 675 755 855"
  })
  void scribnerAndInternational(int inches, String tens, String fives) {
    assertRow(LogRule.SCRIBNER_DECIMAL_C, inches, tens, 10);
    assertRow(LogRule.INTERNATIONAL_QUARTER, inches, fives, 1);
  }

  /** International 1/4-inch table cells from memory, not read. */
  @ParameterizedTest
  @CsvSource({
    "10, 8, 30", "10, 16, 65", "12, 8, 45", "12, 12, 70", "12, 16, 95", "14, 8, 65",
    "14, 16, 135", "16, 8, 85", "16, 12, 130", "16, 16, 180", "18, 8, 110", "18, 16, 230",
    "20, 8, 135", "20, 12, 210", "20, 16, 290"
  })
  void internationalFromMemory(double inches, double feet, double boardFeet) {
    assertEquals(boardFeet, LogRule.INTERNATIONAL_QUARTER.scale(log(inches, feet)));
  }

  /**
   * Printed: 30 in by 16 ft is 66 tens in the Farm and Garden Rule Book (chestofbooks.com, Forest
   * Yields); its older table prints half a ten for 6 in by 8 ft, where the factors give one.
   */
  @Test
  void scribnerDecimalAsPrinted() {
    assertEquals(660, LogRule.SCRIBNER_DECIMAL_C.scale(log(30, 16)));
    assertEquals(10, LogRule.SCRIBNER_DECIMAL_C.scale(log(6, 8)));
  }

  /** Printed: Forest Functions, University of Missouri (cubicvolume, doyle, scribner pages). */
  @Test
  void forestFunctions() {
    assertEquals(10.647, LogRule.smalian(10 / 12.0, 1, 16), 0.0005);
    RoundProfile cone = RoundProfile.ofEven(16, 10 / 12.0, 1);
    assertEquals(10.588, LogRule.newton(cone), 0.0005);
    double cubeRoot = (Math.cbrt(100) + Math.cbrt(144)) / 2;
    double middle = Math.sqrt(cubeRoot * cubeRoot * cubeRoot) / 12;
    RoundProfile neiloid = RoundProfile.ofEven(16, 10 / 12.0, middle, 1);
    // The page cuts the last digit of 10.5689 off instead of rounding it.
    assertEquals(10.568, LogRule.newton(neiloid), 0.001);
    assertEquals(0.287848, LogRule.smalian(0.25, 0.29, 5), 5e-7);
    assertEquals(0.286801, LogRule.newton(RoundProfile.ofEven(5, 0.25, 0.29)), 5e-7);
    assertEquals(36, LogRule.DOYLE.scale(log(10, 16)));
    assertEquals(55, LogRule.SCRIBNER.scale(log(10, 16)));
  }

  /** 0.00272708 (d₁² + d₂²) L to a tenth: US Forest Service volume library. */
  @Test
  void smalianInCubicFeet() {
    assertEquals(10.6, LogRule.SMALIAN.scale(new Measure(12, 11, 10, 16.3)), 1e-9);
    assertEquals(10.6, LogRule.NEWTON.scale(new Measure(12, 11, 10, 16)), 1e-9);
    assertEquals(10.6, LogRule.HUBER.scale(new Measure(12, 11, 10, 16)), 1e-9);
  }

  /**
   * A butt log of a harvester file (StanForD 2010 sample): 247, 182 and 153 mm under bark, 3.04 m,
   * whose 10 cm sections sum to 0.0820 m³. The flare makes Smalian's rule read high.
   */
  @Test
  void aMeasuredButtLog() {
    double smalian = LogRule.smalian(0.247, 0.153, 3.04);
    double huber = LogRule.huber(0.182, 3.04);
    double newton = LogRule.newton(RoundProfile.ofEven(3.04, 0.247, 0.182, 0.153));
    assertEquals(0.1008, smalian, 5e-5);
    assertEquals(0.0791, huber, 5e-5);
    assertEquals(0.0863, newton, 5e-5);
    assertTrue(huber < 0.0820 && 0.0820 < newton && newton < smalian);
  }

  /** US Forest Service volume library, region 9: the nearest inch, an exact half falls. */
  @ParameterizedTest
  @CsvSource({"10, 10", "10.49, 10", "10.5, 10", "10.51, 11", "10.99, 11", "11.5, 11"})
  void endsAreReadToTheInch(double measured, double inches) {
    assertEquals(inches, log(measured, 16).smallInch());
  }

  /** No rule gives less than nothing for a pole, whatever its formula says. */
  @ParameterizedTest
  @CsvSource({"4, 8, 0, 0, 10, 5", "3, 8, 0, 0, 0, 0", "2, 16, 0, 0, 0, 0", "12, 0, 0, 0, 0, 0"})
  void polesScaleToLittle(
      double inches, double feet, double doyle, double scribner, double tens, double fives) {
    Measure pole = log(inches, feet);
    assertEquals(doyle, LogRule.DOYLE.scale(pole));
    assertEquals(scribner, LogRule.SCRIBNER.scale(pole));
    assertEquals(tens, LogRule.SCRIBNER_DECIMAL_C.scale(pole));
    assertEquals(fives, LogRule.INTERNATIONAL_QUARTER.scale(pole));
  }

  /** Even feet, as equal as can be, longer ones at the butt: US Forest Service volume library. */
  @ParameterizedTest
  @CsvSource({
    "16.5, 20, 16",
    "20.9, 20, 20",
    "21, 20, 11 10",
    "24, 20, 12 12",
    "26, 20, 14 12",
    "42.2, 20, 14 14 14",
    "44, 20, 16 14 14",
    "38, 40, 38",
    "0.4, 20, ''"
  })
  void longLogsAreScaledInSegments(double feet, double most, String lengths) {
    List<Double> expected =
        Stream.of(lengths.split(" ")).filter(s -> !s.isEmpty()).map(Double::valueOf).toList();
    assertEquals(expected, LogRule.segments(feet, most));
  }

  /** By hand: 26 ft, 16 to 10 in; 14 ft to 12.81 in and 12 ft to the tip, Doyle. */
  @Test
  void segmentsHaveTheirOwnSmallEnds() {
    RoundProfile log = RoundProfile.ofEven(26 * 12 + 4, 16, 10);
    assertEquals(71 + 27, LogRule.DOYLE.scale(log, 20));
    assertEquals(59, LogRule.DOYLE.scale(Measure.of(log)));
    assertTrue(LogRule.SMALIAN.scale(log, 20) < LogRule.SMALIAN.scale(Measure.of(log)));
    assertEquals(59, LogRule.DOYLE.scale(log, 32));
  }

  /**
   * By hand from the rules' formulas in cubic metres: 25 and 29 cm, 5 m; with 27 cm in the middle;
   * 18.2 cm in the middle of 3.04 m. Whole inches and feet would give a third of them otherwise.
   */
  @Test
  void metricLogsAreVolumesAsMeasured() {
    RoundProfile log = centimetres(500, 29, 27, 25);
    assertEquals(0.2878, metres(LogRule.SMALIAN.asMeasured(log, 20)), 5e-5);
    assertEquals(0.2868, metres(LogRule.NEWTON.asMeasured(log, 20)), 5e-5);
    RoundProfile thin = centimetres(304, 18.2, 18.2, 18.2);
    assertEquals(0.0791, metres(LogRule.HUBER.asMeasured(thin, 20)), 5e-5);
    RoundProfile board = RoundProfile.ofEven(26 * 12 + 4, 16, 10);
    assertEquals(
        LogRule.DOYLE.scale(board, 20), LogRule.DOYLE.asMeasured(board, 20), "board feet as ever");
  }

  private static RoundProfile centimetres(double length, double... diameters) {
    return RoundProfile.ofEven(
        length / 2.54, DoubleStream.of(diameters).map(d -> d / 2.54).toArray());
  }

  private static double metres(double cubicFeet) {
    return cubicFeet * 0.3048 * 0.3048 * 0.3048;
  }

  @Test
  void measuresTurnAroundFreely() {
    RoundProfile log = RoundProfile.ofEven(200, 15.2, 13, 12.1);
    assertEquals(Measure.of(log), Measure.of(log.reversed()));
    assertEquals(new Measure(15.2, 13, 12.1, 200 / 12.0), Measure.of(log));
  }

  @Test
  void everyRuleIsNamed() {
    for (LogRule rule : LogRule.values()) {
      assertTrue(rule.title().length() > 4, rule.name());
      boolean cubic = List.of(LogRule.HUBER, LogRule.SMALIAN, LogRule.NEWTON).contains(rule);
      assertEquals(cubic ? LogRule.Unit.CUBIC_FEET : LogRule.Unit.BOARD_FEET, rule.unit());
    }
  }

  /** Beyond the factors the formula goes on without a jump. */
  @Test
  void greatLogs() {
    double fortieth = LogRule.SCRIBNER_DECIMAL_C.scale(log(40, 16));
    double next = LogRule.SCRIBNER_DECIMAL_C.scale(log(41, 16));
    assertEquals(1200, fortieth, 5);
    assertTrue(next > fortieth && next < 1.08 * fortieth, fortieth + " then " + next);
  }
}
