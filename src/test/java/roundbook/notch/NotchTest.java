package roundbook.notch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;
import roundbook.units.Slope;

/** Notch numbers against facts of the trade and against values computed apart. */
class NotchTest {
  private static final Length SIXTEENTH = Length.ofInchFraction(1, 16);

  /** Common practice, no source: half-inch sizes with a one-inch gap, ties up. */
  @Test
  void fourLogsTakeTheNearestHalfInch() {
    List<Length> mids = Stream.of("14.75", "15", "15", "15").map(NotchTest::inches).toList();
    RoundSize size = RoundSize.of(mids, inches("0.5"));
    Notch notch = new Notch(size.taken(), inches("1"), new Slope(BigDecimal.valueOf(3)), SIXTEENTH);
    assertEquals(inches("14.9375"), size.mean());
    assertEquals(inches("15"), size.taken());
    assertEquals(inches("3.5"), notch.lower());
    assertEquals(inches("4.5"), notch.upper());
  }

  /** Common practice: a rule laid on such a log read about 2 7/16, within a sixteenth. */
  @Test
  void theOutsideMarkFallsTwoInchesOverSix() {
    Notch notch = new Notch(inches("15"), inches("1"), new Slope(BigDecimal.valueOf(3)), SIXTEENTH);
    assertEquals(inches("2.5"), notch.upperOutside(inches("6")));
    assertEquals(2.4375, notch.upperOutside(inches("6")).inches(), 1 / 16.0);
  }

  /** Common practice: the crew's chart, by half inches, for a one-inch gap. */
  @ParameterizedTest
  @CsvSource({
    "10, 2 1/4, 3 1/4", "10.5, 2 3/8, 3 3/8", "11, 2 1/2, 3 1/2", "11.5, 2 5/8, 3 5/8",
    "12, 2 3/4, 3 3/4", "12.5, 2 7/8, 3 7/8", "13, 3, 4", "13.5, 3 1/8, 4 1/8",
    "14, 3 1/4, 4 1/4", "14.5, 3 3/8, 4 3/8", "15, 3 1/2, 4 1/2", "15.5, 3 5/8, 4 5/8",
    "16, 3 3/4, 4 3/4", "16.5, 3 7/8, 4 7/8", "17, 4, 5", "17.5, 4 1/8, 5 1/8",
    "18, 4 1/4, 5 1/4"
  })
  void theChartFollowsTheRule(String size, String lower, String upper) {
    Notch notch = new Notch(inches(size), inches("1"), new Slope(BigDecimal.valueOf(3)), SIXTEENTH);
    LengthFormat format = LengthFormat.forJob(LengthUnit.INCH, SIXTEENTH);
    assertEquals(lower, format.mark(notch.lower()));
    assertEquals(upper, format.mark(notch.upper()));
  }

  /** Ties go up, however the logs add up to them. */
  @ParameterizedTest
  @CsvSource({
    "14.25|14.25|14.25|14.25, 14.5",
    "13.9|14.3|14.6, 14.5",
    "14.6|14.9, 15",
    "14.75|14.75|14.75|14.7499, 14.5",
    "14.74999999|14.75|14.75|14.75, 15"
  })
  void sizesRoundTiesUp(String mids, String taken) {
    List<Length> lengths = Stream.of(mids.split("\\|")).map(NotchTest::inches).toList();
    assertEquals(inches(taken), RoundSize.of(lengths, inches("0.5")).taken());
  }

  /** Computed apart in binary floating point from the formulas, before any rounding. */
  @ParameterizedTest(name = "{0} {6}")
  @CsvSource({
    "N03, 12, 0.5, 5, 3, 3, exactLower, 2.875",
    "N03, 12, 0.5, 5, 3, 3, neck, 6.25",
    "N03, 12, 0.5, 5, 3, 3, outside, 1.70833333333",
    "N03, 12, 0.5, 5, 3, 3, corner, 4.54166666667",
    "N03, 12, 0.5, 5, 3, 3, end, 5.54166666667",
    "N03, 12, 0.5, 5, 3, 3, thinnest, 4.58333333333",
    "N04, 10, 1, 4, 2, 4, exactLower, 2.25",
    "N04, 10, 1, 4, 2, 4, neck, 5.5",
    "N04, 10, 1, 4, 2, 4, outside, 2.25",
    "N04, 10, 1, 4, 2, 4, corner, 3.25",
    "N04, 10, 1, 4, 2, 4, end, 3.75",
    "N04, 10, 1, 4, 2, 4, thinnest, 4.5",
    "N06, 16.5, 0.75, 7, 1.5, 3.33333333333, exactLower, 3.9375",
    "N06, 16.5, 0.75, 7, 1.5, 3.33333333333, neck, 8.625",
    "N06, 16.5, 0.75, 7, 1.5, 3.33333333333, outside, 2.5875",
    "N06, 16.5, 0.75, 7, 1.5, 3.33333333333, corner, 6.0375",
    "N06, 16.5, 0.75, 7, 1.5, 3.33333333333, end, 6.4875",
    "N06, 16.5, 0.75, 7, 1.5, 3.33333333333, thinnest, 6.525",
    "N07, 13, 1.25, 6, 0, 3, exactLower, 2.9375",
    "N07, 13, 1.25, 6, 0, 3, neck, 7.125",
    "N07, 13, 1.25, 6, 0, 3, outside, 2.1875",
    "N07, 13, 1.25, 6, 0, 3, corner, 4.9375",
    "N07, 13, 1.25, 6, 0, 3, end, 4.9375",
    "N07, 13, 1.25, 6, 0, 3, thinnest, 5.125",
    "N09, 15, 0, 6, 2, 3, exactLower, 3.75",
    "N09, 15, 0, 6, 2, 3, neck, 7.5",
    "N09, 15, 0, 6, 2, 3, outside, 1.75",
    "N09, 15, 0, 6, 2, 3, corner, 5.75",
    "N09, 15, 0, 6, 2, 3, end, 6.41666666667",
    "N09, 15, 0, 6, 2, 3, thinnest, 5.5",
    "N11, 11.5, 0.375, 5.5, 2.25, 3, exactLower, 2.78125",
    "N11, 11.5, 0.375, 5.5, 2.25, 3, neck, 5.9375",
    "N11, 11.5, 0.375, 5.5, 2.25, 3, outside, 1.32291666667",
    "N11, 11.5, 0.375, 5.5, 2.25, 3, corner, 4.61458333333",
    "N11, 11.5, 0.375, 5.5, 2.25, 3, end, 5.36458333333",
    "N11, 11.5, 0.375, 5.5, 2.25, 3, thinnest, 4.10416666667"
  })
  void exactMarksFollowTheFormulas(
      String name,
      String d,
      String g,
      String t,
      String o,
      BigDecimal run,
      String quantity,
      double expected) {
    Notch notch = new Notch(inches(d), inches(g), new Slope(run), Length.ZERO);
    Length thickness = inches(t);
    Length found =
        switch (quantity) {
          case "exactLower" -> notch.exactLower();
          case "neck" -> notch.neckHeight();
          case "outside" -> notch.upperOutside(thickness);
          case "corner" -> notch.lowerCorner(thickness);
          case "end" -> notch.lowerEnd(thickness, inches(o));
          default -> notch.thinnest(thickness);
        };
    assertEquals(expected, found.inches(), 1e-7, name);
  }

  /** Marks are rounded so that the course, not each mark, is nearest: computed apart. */
  @ParameterizedTest
  @CsvSource({"14.5, 0.3, 3.5625, 3.8125", "13.5, 0.625, 3.25, 3.8125"})
  void marksRoundTheCourseOnce(String d, String g, String lower, String upper) {
    Notch notch = new Notch(inches(d), inches(g), new Slope(BigDecimal.valueOf(3)), SIXTEENTH);
    assertEquals(inches(lower), notch.lower());
    assertEquals(inches(upper), notch.upper());
  }

  /** The reach of the face and least diameters, computed apart. */
  @ParameterizedTest(name = "{0} {8}")
  @CsvSource({
    "F04, 18, 1.5, 8, 2, 3, 2, 16, face_half_height, 6.92820323028",
    "F04, 18, 1.5, 8, 2, 3, 2, 16, wood_above_upper_mark_inside_face, 1.30320323028",
    "F04, 18, 1.5, 8, 2, 3, 2, 16, dmin_upper_shoulder_m, 17.2209900993",
    "F04, 18, 1.5, 8, 2, 3, 2, 16, dmin_bearing_top, 13.8044376923",
    "F04, 18, 1.5, 8, 2, 3, 2, 16, dmin_bearing_bottom, 15.7641030333",
    "F05, 10, 0.5, 5, 3, 4, 1, 9, face_half_height, 3.74165738677",
    "F05, 10, 0.5, 5, 3, 4, 1, 9, wood_above_upper_mark_inside_face, 0.866657386774",
    "F05, 10, 0.5, 5, 3, 4, 1, 9, dmin_upper_shoulder_m, 9.22293337285",
    "F05, 10, 0.5, 5, 3, 4, 1, 9, dmin_bearing_top, 7.61987532706",
    "F05, 10, 0.5, 5, 3, 4, 1, 9, dmin_bearing_bottom, 8.8069574769",
    "F07, 20, 2, 10, 4, 5, 2, 18, face_half_height, 7.48331477355",
    "F07, 20, 2, 10, 4, 5, 2, 18, wood_above_upper_mark_inside_face, 0.983314773548",
    "F07, 20, 2, 10, 4, 5, 2, 18, dmin_upper_shoulder_m, 19.7230829233",
    "F07, 20, 2, 10, 4, 5, 2, 18, dmin_bearing_top, 16.4012194669",
    "F07, 20, 2, 10, 4, 5, 2, 18, dmin_bearing_bottom, 16.4012194669",
    "F08, 13, 0.75, 7, 0, 3, 1, 12, face_half_height, 4.8733971724",
    "F08, 13, 0.75, 7, 0, 3, 1, 12, wood_above_upper_mark_inside_face, 1.0608971724",
    "F08, 13, 0.75, 7, 0, 3, 1, 12, dmin_upper_shoulder_m, 11.9012866951",
    "F08, 13, 0.75, 7, 0, 3, 1, 12, dmin_bearing_top, 10.3508755668",
    "F08, 13, 0.75, 7, 0, 3, 1, 12, dmin_bearing_bottom, 12.8631282915"
  })
  void endsAreJudgedByTheirRoundProfile(
      String name,
      String d,
      String g,
      String t,
      String o,
      long run,
      String m,
      String tip,
      String quantity,
      String expected) {
    Notch notch = new Notch(inches(d), inches(g), new Slope(BigDecimal.valueOf(run)), Length.ZERO);
    NeckFit.Limits limits = new NeckFit.Limits(inches(m), 0.05, 0.2);
    NeckFit fit =
        new NeckFit(
            notch,
            new NeckFit.Corner(inches(t), inches(t), inches(o), limits),
            NeckFit.Neck.even(inches(tip)));
    double found =
        switch (quantity) {
          case "face_half_height" -> fit.reachInches();
          case "wood_above_upper_mark_inside_face" -> fit.woodAboveUpperInches();
          case "dmin_upper_shoulder_m" -> fit.leastForShoulder().inches();
          case "dmin_bearing_top" -> fit.leastForTop().inches();
          case "dmin_bearing_bottom" -> fit.leastForBottom().inches();
          default -> throw new IllegalArgumentException(quantity);
        };
    assertEquals(Double.parseDouble(expected), found, 1e-7, name);
  }

  private static Length inches(String text) {
    return Length.of(new BigDecimal(text), LengthUnit.INCH);
  }
}
