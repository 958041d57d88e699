package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The joint between two logs, against values and integrals found apart. */
class ChinkJointTest {
  private static final Map<String, ChinkJoint> JOINTS =
      Map.of(
          "J03", joint(180, 14, 15, 15.5, 13, 15.5, 8),
          "J04", joint(120, 12.5, 11.5, 11.5, 12.5, 12.75, 5),
          "J06", joint(96, 10, 9, 9, 10, 10.5, 4));

  private static ChinkJoint joint(double length, double... of) {
    RoundProfile lower = RoundProfile.ofEven(length, of[0], of[1]);
    return new ChinkJoint(lower, RoundProfile.ofEven(length, of[2], of[3]), of[4], of[5]);
  }

  /** Computed apart in another language from the formulas. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "J03, crown, 1.125",
    "J03, face, 3.55706848124",
    "J03, faceLeft, 3.11747832979",
    "J03, section, 15.2487526716",
    "J03, volume, 2747.0095598",
    "J03, area, 641.332807308",
    "J03, deep, 2.43717763142",
    "J03, length, 180",
    "J04, crown, 0.75",
    "J04, face, 1.84128788536",
    "J04, faceLeft, 1.843701587",
    "J04, section, 5.53438865948",
    "J04, volume, 664.269702089",
    "J04, area, 221.050991691",
    "J04, deep, 1.13104996138",
    "J04, length, 120",
    "J06, crown, 1",
    "J06, face, 1.88315603019",
    "J06, faceLeft, 1.88629543089",
    "J06, section, 5.15473771735",
    "J06, volume, 494.97348535",
    "J06, area, 180.883267487",
    "J06, deep, 1.2129121895",
    "J06, length, 96"
  })
  void numbersOfJoints(String name, String of, double value) {
    assertEquals(value, number(JOINTS.get(name), of), 1e-9 * value);
  }

  private static double number(ChinkJoint joint, String of) {
    double middle = joint.length() / 2;
    return switch (of) {
      case "crown" -> joint.crownGap(middle);
      case "face" -> joint.faceHeight(middle);
      case "faceLeft" -> joint.faceHeight(0);
      case "section" -> joint.section(middle);
      case "volume" -> joint.volume();
      case "area" -> joint.stripArea();
      case "deep" -> joint.heightAtDepth(middle, 1);
      default -> joint.length();
    };
  }

  /** Volumes and strip areas of a solid modeller's joints, which are of many flats. */
  @ParameterizedTest
  @CsvSource({"J03, 2747.2851, 641.2507", "J04, 664.3629, 221.0161", "J06, 495.0207, 180.8512"})
  void modelledJoints(String name, double volume, double area) {
    assertEquals(volume, JOINTS.get(name).volume(), 2e-4 * volume);
    assertEquals(area, JOINTS.get(name).stripArea(), 2e-4 * area);
  }

  static LongStream seeds() {
    return LongStream.range(8200, 8280);
  }

  private static ChinkJoint drawn(long seed) {
    Random random = new Random(seed);
    double length = 60 + 200 * random.nextDouble();
    RoundProfile lower = Pieces.profile(random, length);
    RoundProfile upper = Pieces.profile(random, length);
    return new ChinkJoint(lower, upper, 18 + random.nextDouble(), 4 + 5 * random.nextDouble());
  }

  /** Apache Commons Math on the heights and sections alone. */
  @ParameterizedTest
  @MethodSource("seeds")
  void closedFormsAgreeWithNumericIntegration(long seed) {
    ChinkJoint joint = drawn(seed);
    TreeSet<Double> kinks = new TreeSet<>();
    joint.lower().addKinks(joint.thickness(), kinks);
    joint.upper().addKinks(joint.thickness(), kinks);
    double volume = Pieces.integrate(joint::section, kinks);
    double area = Pieces.integrate(joint::faceHeight, kinks);
    assertEquals(volume, joint.volume(), 1e-7 * volume, "seed " + seed);
    assertEquals(area, joint.stripArea(), 1e-5 * area, "seed " + seed);
  }

  /** Two half strips are the joint; a thinner strip is half of what a thinner wall lacks of it. */
  @ParameterizedTest
  @MethodSource("seeds")
  void stripsAddUp(long seed) {
    ChinkJoint joint = drawn(seed);
    double thick = joint.thickness();
    assertEquals(joint.volume(), 2 * joint.stripVolume(thick / 2), 1e-7, "seed " + seed);
    double depth = thick / 5;
    ChinkJoint core =
        new ChinkJoint(joint.lower(), joint.upper(), joint.spacing(), thick - 2 * depth);
    double strip = (joint.volume() - core.volume()) / 2;
    assertEquals(strip, joint.stripVolume(depth), 1e-7 * strip, "seed " + seed);
  }

  /** No station between the kinks is beyond what is told of the kinks. */
  @ParameterizedTest
  @MethodSource("seeds")
  void extremesAreFound(long seed) {
    ChinkJoint joint = drawn(seed);
    double widest = joint.widestAtDepth(0.7);
    IntStream.rangeClosed(0, 500)
        .mapToDouble(i -> joint.length() * i / 500)
        .forEach(
            x -> {
              String at = "seed " + seed + " at " + x;
              assertTrue(joint.heightAtDepth(x, 0.7) <= widest + 1e-9, at);
            });
  }

  /** Geometry: a 1 in gap over 13 in logs in a 6 in wall is nearly 2 1/2 in at the faces. */
  @Test
  void anInchAtTheCrown() {
    ChinkJoint joint = joint(100, 13, 13, 13, 13, 14, 6);
    assertEquals(1, joint.crownGap(50), 1e-12);
    assertEquals(2.467, joint.faceHeight(50), 5e-4);
  }

  /** Common practice: backer a quarter thicker than the joint, the next size sold. */
  @ParameterizedTest
  @CsvSource({"0.4, 0.5", "0.8, 1", "0.81, 1.25", "2.437, 4", "3.2, 4", "3.21, "})
  void backerSizes(double height, Double size) {
    OptionalDouble found = BackerStock.inches().sizeFor(height);
    assertEquals(size == null ? OptionalDouble.empty() : OptionalDouble.of(size), found);
  }

  @Test
  void backerInMillimetres() {
    assertEquals(OptionalDouble.of(40), BackerStock.millimetres().sizeFor(28));
    assertEquals(62.5, BackerStock.millimetres().wanted(50), 1e-12);
    BackerStock own = new BackerStock(List.of(3.0, 1.0), 0);
    assertEquals(OptionalDouble.of(1), own.sizeFor(1));
  }

  @Test
  void refusesWhatIsNoJoint() {
    RoundProfile log = RoundProfile.ofEven(100, 12, 11);
    RoundProfile longer = RoundProfile.ofEven(101, 12, 11);
    assertThrows(IllegalArgumentException.class, () -> new ChinkJoint(log, longer, 13, 6));
    ChinkJoint joint = new ChinkJoint(log, log, 13, 6);
    assertThrows(IllegalArgumentException.class, () -> joint.stripVolume(3.1));
  }
}
