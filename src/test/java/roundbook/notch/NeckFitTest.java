package roundbook.notch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.notch.NeckFit.Grade;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.units.Slope;

/** What an end loses, and how it is graded: 6 in thick, 3 in past the corner, template 1 in 3. */
class NeckFitTest {
  /** The cut-offs, computed apart from the area of the bearing and the reach of the face. */
  @ParameterizedTest(name = "{0} in of {1}: {2}")
  @CsvSource({
    "9.99, 13, STOP", "10.01, 13, LOOK", "10.81, 13, LOOK", "10.82, 13, NORMAL",
    "9.60, 12, STOP", "9.61, 12, LOOK", "10.40, 12, LOOK", "10.41, 12, NORMAL"
  })
  void endsAreGradedByWhatTheyLose(String diameter, String size, Grade grade) {
    assertEquals(grade, fit(size, diameter, "0.5").grade());
  }

  /** The bearing alone: 5 % gone at 10.67 in of a round of 13 and at 10.23 of 12, 20 % at 9.85. */
  @ParameterizedTest
  @CsvSource({"13, 10.67, 0.05", "12, 10.23, 0.05", "13, 9.849, 0.2", "14, 10.315, 0.2"})
  void theBearingRunsOffByShares(String size, String diameter, double gone) {
    assertEquals(1 - gone, fit(size, diameter, "0").bearingShare(), 5e-4);
  }

  /** The chord of the round log, integrated along the neck by a general-purpose library. */
  @ParameterizedTest
  @CsvSource({"13, 13", "13, 11", "13, 10.3", "13, 8", "13, 6.5", "13, 5", "12, 9.1", "17, 12.7"})
  void theBearingIsTheChordAlongTheNeck(String size, String diameter) {
    NeckFit fit = fit(size, diameter, "0.5");
    double radius = Double.parseDouble(diameter) / 2;
    double lower = (Double.parseDouble(size) - 1) / 4;
    UnivariateFunction chord =
        along -> {
          double depth = lower + along / 3;
          return Math.min(6, 2 * Math.sqrt(Math.max(0, radius * radius - depth * depth)));
        };
    double sum = 0;
    for (int part = 0; part < 600; part++) {
      sum +=
          new IterativeLegendreGaussIntegrator(4, 1e-9, 1e-9)
              .integrate(10_000, chord, part / 100.0, (part + 1) / 100.0);
    }
    assertEquals(sum / 36, fit.bearingShare(), 3e-5);
  }

  /** A log as thick as its round bears on all of it. */
  @Test
  void aThickLogLosesNothing() {
    NeckFit fit = fit("13", "13.5", "1.5");
    assertEquals(1, fit.bearingShare(), 1e-9);
    assertEquals(100, fit.bearingPercent());
    assertFalse(fit.isFlagged());
    assertFalse(fit.hasWaneyTail());
  }

  /** Past the corner the mark lies 6 in down: a face that reaches so far is 13.416 in thick. */
  @Test
  void waneOnTheTailAloneIsNormal() {
    assertTrue(fit("13", "13.41", "0.5").hasWaneyTail());
    assertFalse(fit("13", "13.42", "0.5").hasWaneyTail());
    assertEquals(Grade.NORMAL, fit("13", "13.41", "0.5").grade());
  }

  /** What is told is rounded down, so that it never promises more than there is. */
  @Test
  void whatIsToldIsRoundedDown() {
    NeckFit fit = fit("13", "10.67", "0.5");
    assertEquals(0.4116, fit.woodAboveUpperInches(), 1e-4);
    assertEquals(Length.ofInchFraction(6, 16), fit.woodAboveUpper());
    assertEquals(94, fit.bearingPercent());
    assertEquals(0.5, fit("13", "10.81666", "0.5").woodAboveUpper().inches(), 1e-9);
  }

  @Test
  void aLogNoThickerThanTheWallHasNoFace() {
    NeckFit fit = fit("13", "6", "0.5");
    assertTrue(fit.hasNoFace());
    assertEquals(0, fit.reachInches(), 0);
    assertEquals(Grade.STOP, fit.grade());
  }

  /** An inch over nine, 3 in past a wall of 6: a third of it at the corner line. */
  @Test
  void theNeckIsStraightFromItsEndToTheShoulder() {
    NeckFit.Neck neck = NeckFit.Neck.straight(inches("10"), inches("11"), inches("6"), inches("3"));
    assertEquals(10 + 1 / 3.0, neck.line().inches(), 1e-6);
    assertEquals(neck.line(), neck.bearing());
    NeckFit.Neck butt = NeckFit.Neck.straight(inches("12"), inches("11"), inches("6"), inches("3"));
    assertEquals(inches("11"), butt.bearing());
  }

  /** The face over UPPER is that at the shoulder, the bearing goes by the corner line. */
  @Test
  void eachIsMeasuredWhereItLies() {
    NeckFit even = fit("13", "11", "0.5");
    NeckFit.Neck tapered = new NeckFit.Neck(inches("11"), inches("10"), inches("9.5"));
    NeckFit fit = new NeckFit(even.notch(), even.corner(), tapered);
    assertEquals(even.woodAboveUpperInches(), fit.woodAboveUpperInches(), 0);
    assertEquals(fit("13", "10", "0.5").bearingShare(), fit.bearingShare(), 0);
  }

  private static NeckFit fit(String size, String diameter, String overUpper) {
    Notch notch =
        new Notch(
            inches(size),
            inches("1"),
            new Slope(BigDecimal.valueOf(3)),
            Length.ofInchFraction(1, 16));
    NeckFit.Limits limits = new NeckFit.Limits(inches(overUpper), 0.05, 0.2);
    NeckFit.Corner corner = new NeckFit.Corner(inches("6"), inches("6"), inches("3"), limits);
    return new NeckFit(notch, corner, NeckFit.Neck.even(inches(diameter)));
  }

  private static Length inches(String text) {
    return Length.of(new BigDecimal(text), LengthUnit.INCH);
  }
}
