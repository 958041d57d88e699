package roundbook.stack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Building;
import roundbook.job.DiameterProfile;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.plan.Jobs;
import roundbook.units.Length;

/** Lengths, heights and gaps against facts of the trade and values computed apart. */
class StackTest {
  private static final BuildRules RULES = Jobs.rules(false);

  /** Common practice: 12 and 16 ft outside, 6 in logs, 2 in past the corner. */
  @Test
  void lengthsOfATwelveBySixteenBuilding() {
    Building building =
        Jobs.building(Length.ofInches(192), Length.ofInches(144), Length.ofInches(6));
    Length overhang = Length.ofInches(2);
    Wall north = building.walls().get(0);
    Wall east = building.walls().get(1);
    assertEquals(Length.ofInches(16 * 12 + 4), building.trimmed(north, overhang));
    assertEquals(Length.ofInches(12 * 12 + 4), building.trimmed(east, overhang));
    FilledPlace log = placed(north, building.trimmed(north, overhang), "15", "14", "13", true);
    Length near = log.nearShoulder(building, overhang);
    Length far = log.farShoulder(building, overhang);
    assertEquals(Length.ofInches(8), near);
    assertEquals(Length.ofInches(15 * 12), far.minus(near), "15 ft inside");
    assertEquals(Length.ofInches(8), log.trimmed().minus(far));
  }

  /** Computed apart: trimmed length and shoulders. */
  @ParameterizedTest
  @CsvSource({"240, 6, 2, 244, 8, 236, 228", "300, 5, 3, 306, 8, 298, 290"})
  void shouldersStandAtTheCrossingWall(
      String outside, String t, String o, String trimmed, String near, String far, String run) {
    Building building = Jobs.building(in(outside), in(outside), in(t));
    Wall wall = building.walls().get(0);
    FilledPlace log = placed(wall, building.trimmed(wall, in(o)), "15", "14", "13", true);
    assertEquals(in(trimmed), log.trimmed());
    assertEquals(in(near), log.nearShoulder(building, in(o)));
    assertEquals(in(far), log.farShoulder(building, in(o)));
    assertEquals(in(run), log.farShoulder(building, in(o)).minus(in(near)));
  }

  /** Computed apart: heights of centre lines from the first, here on a bed at 8 in. */
  @ParameterizedTest
  @CsvSource({
    "14|15|16, 1, 15.5|31.25|48, 0|23.25|39.5",
    "16|14, 1, 16.5|32, 0|24.5",
    "13|13.5, 1.5, 15.25|30.125, 0|22.625"
  })
  void heightsGrowByHalfTheCourse(String sizes, String gap, String second, String first) {
    BuildRules rules = RULES.with(Setting.CHINKING_GAP, in(gap), Origin.OPTION);
    Stack stack = stack(rules, sizes.split("\\|"));
    Length datum = in("8").minus(stack.firstHeights().get(0));
    String[] firsts = first.split("\\|");
    String[] seconds = second.split("\\|");
    for (int i = 0; i < seconds.length; i++) {
      assertEquals(in(seconds[i]), stack.secondHeights().get(i).plus(datum));
      if (i > 0) {
        assertEquals(in(firsts[i]), stack.firstHeights().get(i).plus(datum));
      }
    }
  }

  /** The nominal gap is {@code g + (D − D₊) / 4} on first-laid walls, minus it on the others. */
  @ParameterizedTest
  @CsvSource({"14|15, 0.75, 1.25", "16|14, 1.5, 0.5", "15|15, 1, 1"})
  void aStepOfSizesOpensOneGapAndClosesTheOther(String sizes, String first, String second) {
    Stack stack = stack(RULES, sizes.split("\\|"));
    Wall north = stack.building().walls().get(0);
    Wall east = stack.building().walls().get(1);
    assertEquals(in(first), stack.joints(north).get(0).middle());
    assertEquals(in(second), stack.joints(east).get(0).middle());
  }

  /** Computed apart: both logs cut at the tip only, nothing squared off the butt. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "G02, 240, 2, 16, 300|15.75|15|14.25, 300|15.75|15|14.25, 0.86, 0.86, 0.86",
    "G05, 300, 3, 15, 320|15.2|14|12.9, 330|16|15|13.8, 0.41375, 0.437386363636, 0.498210227273",
    "G06, 480, 2, 15.625, 500|17.5|15|12.8, 500|16.8|14.5|12.5, 0.569, 0.7982, 0.7562",
    "G08, 144, 2, 14.25, 160|13.6|12.6|12.4, 152|13.9|13.4|12.7,"
        + " 1.09473684211, 1.20592105263, 1.10131578947"
  })
  void gapsFollowBothProfiles(
      String name,
      String outside,
      String o,
      String spacing,
      String lower,
      String upper,
      double left,
      double middle,
      double right) {
    Building building = Jobs.building(in(outside), in(outside), Length.ofInches(6));
    Wall wall = building.walls().get(0);
    Length trimmed = building.trimmed(wall, in(o));
    Joint joint =
        Joint.of(
            tallied(wall, trimmed, lower, false),
            tallied(wall, trimmed, upper, true),
            in(spacing),
            building,
            in(o));
    assertEquals(left, joint.left().inches(), 1e-6, name);
    assertEquals(middle, joint.middle().inches(), 1e-6, name);
    assertEquals(right, joint.right().inches(), 1e-6, name);
  }

  /** Computed apart: a long log keeps its thick part, so its middle grows. */
  @ParameterizedTest
  @CsvSource({
    "312, 16.625, 15, 13.375, 292, 15.1041666667, 13.5833333333",
    "360, 16.875, 15, 13.125, 292, 15.3541666667, 13.8333333333"
  })
  void theMiddleIsThatOfTheTrimmedPiece(
      String length, String butt, String mid, String tip, String trimmed, double at, double end) {
    Piece piece = new Piece(Jobs.log("1", in(length), butt, mid, tip), Length.ZERO, in(trimmed));
    assertEquals(at, piece.mid().inches(), 1e-7);
    assertEquals(end, piece.tip().inches(), 1e-7);
  }

  /** Computed apart, with marks exact: foundation step under the second-laid walls. */
  @Test
  void theFoundationStepsByHalfACourse() {
    BuildRules rules = RULES.with(Setting.CHINKING_GAP, in("0.75"), Origin.OPTION);
    assertEquals(in("7.375"), stack(rules, "14", "14").foundationStep());
    Stack starter = stack(rules.with(Setting.FIRST_BED, "starter", Origin.OPTION), "14", "14");
    assertEquals(in("7.375"), starter.firstHeights().get(0));
  }

  /** Extremes lie at faces and kinks: no sample between passes them. */
  @Test
  void extremesLieAtFacesAndKinks() {
    Building building =
        Jobs.building(Length.ofInches(240), Length.ofInches(240), Length.ofInches(6));
    Wall wall = building.walls().get(0);
    Length trimmed = Length.ofInches(246);
    Joint joint =
        Joint.of(
            tallied(wall, trimmed, "260|16|13|12.5", false),
            tallied(wall, trimmed, "300|17|13.25|12", true),
            Length.ofInches(15),
            building,
            Length.ofInches(3));
    for (int at = 9; at <= 237; at++) {
      Length gap = joint.gapAt(Length.ofInches(at));
      assertEquals(true, !gap.isLessThan(joint.least()) && !gap.isMoreThan(joint.most()));
    }
    assertEquals(true, joint.most().isMoreThan(joint.middle()), "the kink lies beside the middle");
  }

  /** Flags compare the printed value: 15/32 in prints as 1/2 and is not small. */
  @ParameterizedTest
  @CsvSource({"0.46875, NONE", "0.46, SMALL", "1.78, NONE", "1.79, LARGE", "1, NONE"})
  void flagsCompareThePrintedValue(String gap, Joint.Flag flag) {
    assertEquals(flag, Joint.flag(in(gap), RULES));
  }

  private static Stack stack(BuildRules rules, String... sizes) {
    Building building =
        Jobs.building(Length.ofInches(240), Length.ofInches(168), rules.thickness());
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= sizes.length; round++) {
      List<FilledPlace> logs = new ArrayList<>();
      for (Wall wall : building.walls()) {
        Length trimmed = building.trimmed(wall, rules.overhang());
        String size = sizes[round - 1];
        Piece piece = new Piece(Jobs.log("1", trimmed, size, size, size), Length.ZERO, trimmed);
        logs.add(FilledPlace.of(piece, wall, round, rules.clockwise(round)));
      }
      courses.add(Course.of(round, logs, rules));
    }
    return Stack.of(rules, building, courses);
  }

  private static FilledPlace placed(
      Wall wall, Length trimmed, String butt, String mid, String tip, boolean start) {
    Piece piece = new Piece(Jobs.log("1", trimmed, butt, mid, tip), Length.ZERO, trimmed);
    return FilledPlace.of(piece, wall, 1, start);
  }

  private static FilledPlace tallied(Wall wall, Length trimmed, String numbers, boolean start) {
    String[] each = numbers.split("\\|");
    DiameterProfile profile =
        DiameterProfile.of(in(each[0]), in(each[1]), in(each[2]), in(each[3]));
    Piece piece = new Piece(Jobs.log("1", in(each[0]), profile), Length.ZERO, trimmed);
    return FilledPlace.of(piece, wall, 1, start);
  }

  private static Length in(String text) {
    return Length.of(new BigDecimal(text), roundbook.units.LengthUnit.INCH);
  }
}
