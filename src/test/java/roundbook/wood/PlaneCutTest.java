package roundbook.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What level planes cut off sawn logs, against integrals found apart. */
class PlaneCutTest {
  /** Apache Commons Math on the height over the plane, across the log. */
  @ParameterizedTest(name = "d {0} T {1} k {2}")
  @CsvSource({
    "14, 6, 3",
    "14, 6, 6.5",
    "14, 6, 0",
    "14, 6, -4",
    "14, 6, -6.9",
    "12, 6, 5.196",
    "5, 6, 1",
    "12, 6, 6",
    "12, 6, 7",
    "12, 6, -7",
    "9, 8.9, 0.6"
  })
  void areaIsThatOverThePlane(double d, double t, double k) {
    double r = d / 2;
    double half = Math.min(t / 2, r);
    double found =
        new IterativeLegendreGaussIntegrator(32, 1e-9, 1e-9)
            .integrate(
                5_000_000,
                v -> {
                  double reach = Math.sqrt(r * r - v * v);
                  return Math.max(0, reach - Math.max(k, -reach));
                },
                -half,
                half);
    assertEquals(found, PlaneCut.area(d, t, k), 2e-4);
  }

  @Test
  void aPlaneThroughTheCentreCutsHalf() {
    SawnLog log = new SawnLog(RoundProfile.ofEven(100, 14, 12), 6);
    assertEquals(log.volume() / 2, new PlaneCut(log, 0).volume(), 1e-6);
  }

  static List<Pieces.Drawn> randomPieces() {
    return Pieces.draw(8800, 40);
  }

  /** Both sides of a plane make the whole log; the volume is the integral of the area. */
  @ParameterizedTest
  @MethodSource("randomPieces")
  void volumeIsTheIntegralOfTheArea(Pieces.Drawn drawn) {
    SawnLog log = new SawnLog(drawn.profile(), drawn.thickness());
    double k = drawn.profile().at(drawn.profile().length() / 2) / 3;
    TreeSet<Double> kinks = new TreeSet<>();
    drawn.profile().addKinks(drawn.thickness(), kinks);
    drawn.profile().addKinks(2 * k, kinks);
    double integral =
        Pieces.integrate(u -> PlaneCut.area(drawn.profile().at(u), drawn.thickness(), k), kinks);
    double found = new PlaneCut(log, k).volume();
    assertEquals(integral, found, 1e-4 * log.volume());
    assertEquals(log.volume(), found + new PlaneCut(log, -k).volume(), 1e-5 * log.volume());
  }
}
