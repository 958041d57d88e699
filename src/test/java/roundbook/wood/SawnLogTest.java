package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import roundbook.wood.Pieces.Drawn;

/** Sawn and round volumes and balance points, against values and integrals found apart. */
class SawnLogTest {
  /** Computed apart in another language; the last column is a solid modeller's volume. */
  @ParameterizedTest(name = "{0} {4}")
  @CsvSource({
    "V02, 6, 196, 14.2|13.1|12.4, round, 26864.2404917, 26863.5662",
    "V02, 6, 196, 14.2|13.1|12.4, sawn, 14969.705502, 14969.5032",
    "V02, 6, 196, 14.2|13.1|12.4, middle, 75.7582039988, 75.7582039988",
    "V04, 5, 120, 11|10.5|10, round, 10398.6716834, 10398.4107",
    "V04, 5, 120, 11|10.5|10, sawn, 6052.84064186, 6052.7582",
    "V04, 5, 120, 11|10.5|10, middle, 50.4422262279, 50.4422262279"
  })
  void volumesOfPieces(
      String piece, double t, double length, String d, String of, double sum, double modelled) {
    SawnLog log = new SawnLog(RoundProfile.ofEven(length, diameters(d)), t);
    double found =
        switch (of) {
          case "round" -> log.roundVolume();
          case "sawn" -> log.volume();
          default -> log.sectionAt(length / 2);
        };
    assertEquals(sum, found, 1e-9 * sum);
    assertEquals(modelled, found, 1e-4 * sum);
  }

  static double[] diameters(String cell) {
    return Stream.of(cell.split("\\|")).mapToDouble(Double::parseDouble).toArray();
  }

  static List<Drawn> randomPieces() {
    return Pieces.draw(7100, 120);
  }

  /** Apache Commons Math, Gauss and Legendre, on the section alone. */
  @ParameterizedTest
  @MethodSource("randomPieces")
  void closedFormAgreesWithNumericIntegration(Drawn drawn) {
    SawnLog log = new SawnLog(drawn.profile(), drawn.thickness());
    double volume = Pieces.integrate(log::sectionAt, kinks(drawn));
    assertEquals(volume, log.volume(), 1e-8 * volume, drawn.toString());
    double moment = Pieces.integrate(u -> u * log.sectionAt(u), kinks(drawn));
    assertEquals(moment / volume, log.balancePoint(), 1e-7 * moment / volume, drawn.toString());
    double circle = Pieces.integrate(u -> circleAt(drawn.profile(), u), kinks(drawn));
    assertEquals(circle, log.roundVolume(), 1e-9 * circle, drawn.toString());
  }

  private static TreeSet<Double> kinks(Drawn drawn) {
    TreeSet<Double> kinks = new TreeSet<>();
    drawn.profile().addKinks(drawn.thickness(), kinks);
    return kinks;
  }

  private static double circleAt(RoundProfile profile, double u) {
    return Math.PI / 4 * profile.at(u) * profile.at(u);
  }

  /** Geometry: a circle where no face is sawn, a face of no height where the two just meet. */
  @ParameterizedTest
  @CsvSource({
    "6, 6, 0, 28.274333882308138",
    "5, 6, 0, 19.634954084936208",
    "10, 6, 4, 56.17505543969422",
    "6.0000000001, 6, 0.000017320508, 28.2743338832"
  })
  void sectionsNearTheThickness(double d, double t, double reach, double area) {
    assertEquals(reach, SawnLog.faceReach(d, t), 1e-9);
    assertEquals(area, SawnLog.section(d, t), 1e-9);
  }

  /** Geometry: a piece without taper balances in its middle, a full cone at three quarters. */
  @Test
  void balancePointsKnownBeforehand() {
    assertEquals(60, new SawnLog(RoundProfile.ofEven(120, 12, 12), 6).balancePoint(), 1e-9);
    assertEquals(90, new SawnLog(RoundProfile.ofEven(120, 0, 12), 20).balancePoint(), 1e-9);
    RoundProfile log = RoundProfile.ofEven(196, 14.2, 13.1, 12.4);
    double butt = new SawnLog(log, 6).balancePoint();
    assertEquals(196, butt + new SawnLog(log.reversed(), 6).balancePoint(), 1e-9);
    assertTrue(butt < 98);
    double shifted = new SawnLog(log.between(20, 196), 6).balancePoint();
    assertTrue(shifted < 88 && shifted > butt - 20);
  }

  /** Two cuts leave as much as the whole less what fell off. */
  @Test
  void cutPiecesAddUp() {
    RoundProfile log = RoundProfile.ofEven(200, 15, 11.2, 5.1);
    double whole = new SawnLog(log, 6).volume();
    double parts = 0;
    for (double[] cut : new double[][] {{0, 31}, {31, 100}, {100, 177.7}, {177.7, 200}}) {
      parts += new SawnLog(log.between(cut[0], cut[1]), 6).volume();
    }
    assertEquals(whole, parts, 1e-9 * whole);
  }

  @Test
  void refusesWhatIsNoLog() {
    assertThrows(IllegalArgumentException.class, () -> RoundProfile.ofEven(0, 12, 11));
    assertThrows(IllegalArgumentException.class, () -> RoundProfile.ofEven(10, 12, -1));
    assertThrows(IllegalArgumentException.class, () -> RoundProfile.ofEven(10, 12, Double.NaN));
    RoundProfile fine = RoundProfile.ofEven(10, 12, 11);
    assertThrows(IllegalArgumentException.class, () -> new SawnLog(fine, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new RoundProfile(fine.stations().subList(0, 1)));
  }

  /** Straight lines between stations, and on beyond them. */
  @ParameterizedTest
  @CsvSource({"0, 14", "50, 13", "100, 12", "150, 11.5", "200, 11", "220, 10.8", "-10, 14.2"})
  void diametersAlongALog(double distance, double diameter) {
    assertEquals(diameter, RoundProfile.ofEven(200, 14, 12, 11).at(distance), 1e-12);
  }
}
