package roundbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.DiameterProfile.Station;
import roundbook.units.Length;

/** A log's diameter anywhere along it, against straight lines drawn by a library of mathematics. */
class DiameterProfileTest {
  private static Length inches(double inches) {
    return Length.ofNanometres(Math.round(inches * 25_400_000));
  }

  /** By hand: 14 in at the butt, 12 in the middle of 20 ft, 11 at the tip. */
  @ParameterizedTest(name = "{0} in from the butt")
  @CsvSource({
    "0, 14",
    "60, 13",
    "120, 12",
    "180, 11.5",
    "240, 11",
    "-12, 14.2",
    "252, 10.9",
  })
  void goesStraightFromStationToStationAndOnBeyond(double at, double diameter) {
    DiameterProfile profile = DiameterProfile.of(inches(240), inches(14), inches(12), inches(11));
    assertEquals(inches(diameter), profile.at(inches(at)));
  }

  /** Apache Commons Math draws the same straight lines, in binary inches. */
  @Test
  void agreesWithALibrarysStraightLines() {
    SplittableRandom random = new SplittableRandom(4);
    for (int log = 0; log < 200; log++) {
      int count = random.nextInt(3, 12);
      double[] places = new double[count];
      double[] diameters = new double[count];
      List<Station> stations = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        places[i] = (i == 0 ? 0 : places[i - 1]) + random.nextInt(1, 64) / 4.0;
        diameters[i] = random.nextInt(20, 64) / 4.0;
        stations.add(new Station(inches(places[i]), inches(diameters[i])));
      }
      Collections.shuffle(stations, new java.util.Random(log));
      DiameterProfile profile = new DiameterProfile(stations);
      PolynomialSplineFunction lines = new LinearInterpolator().interpolate(places, diameters);
      for (int i = 0; i < 20; i++) {
        double at = places[0] + random.nextDouble() * (places[count - 1] - places[0]);
        Length exact = inches(at);
        assertEquals(
            lines.value(exact.inches()), profile.at(exact).inches(), 1e-7, "seed 4, log " + log);
      }
    }
  }

  @Test
  void twoStationsApartAreTheLeast() {
    Station one = new Station(inches(5), inches(12));
    assertThrows(IllegalArgumentException.class, () -> new DiameterProfile(List.of(one)));
    assertThrows(IllegalArgumentException.class, () -> new DiameterProfile(List.of(one, one)));
  }

  @Test
  void barkComesOffEveryStation() {
    DiameterProfile profile =
        DiameterProfile.of(inches(240), inches(14), inches(12), inches(11)).thinnedBy(inches(0.5));
    assertEquals(inches(13.5), profile.at(Length.ZERO));
    assertEquals(inches(11.5), profile.at(inches(120)));
    assertEquals(inches(10.5), profile.at(inches(240)));
  }
}
