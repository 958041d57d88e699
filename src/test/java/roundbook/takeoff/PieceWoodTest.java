package roundbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import roundbook.job.Setting;
import roundbook.wood.LogRule;

/**
 * The wood of notched logs, counted cell by cell on a fine grid.
 *
 * <p>Cylinders of 14 in, gap 1: L 3 1/4, U 4 1/4, and every mark shows on the faces, so that the
 * trade's volume of the neck is exact.
 */
class PieceWoodTest {
  private static final double R = 7;
  private static final double LOWER = 3.25;
  private static final double UPPER = 4.25;
  private static final double NECK = 9;
  private static final int CELLS = 600;

  /** Counts the wood of a log between planes that depend on its length and width. */
  private static double count(double length, Planes planes) {
    double dv = 6.0 / CELLS;
    double total = 0;
    int steps = (int) (length * 4);
    for (int i = 0; i < steps; i++) {
      double u = (i + 0.5) / 4;
      for (int j = 0; j < CELLS; j++) {
        double v = -3 + (j + 0.5) * dv;
        double reach = Math.sqrt(R * R - v * v);
        double top = Math.min(reach, planes.top(u, v));
        double bottom = Math.max(-reach, planes.bottom(u, v));
        total += Math.max(0, top - bottom) * dv / 4;
      }
    }
    return total;
  }

  private interface Planes {
    double top(double u, double v);

    double bottom(double u, double v);
  }

  /** A log of so long with notches at both ends where it has them. */
  private static Planes notched(double length, boolean upper, DoubleUnaryOperator between) {
    return new Planes() {
      @Override
      public double top(double u, double v) {
        boolean neck = u < NECK || u > length - NECK;
        return neck && upper ? UPPER - (3 - v) / 3 : R;
      }

      @Override
      public double bottom(double u, double v) {
        double outward = u < NECK ? NECK - u : u > length - NECK ? u - (length - NECK) : -1;
        return outward >= 0 ? -LOWER - outward / 3 : between.applyAsDouble(u);
      }
    };
  }

  private static PieceWood wood(Cabins cabin, String tag) {
    return cabin.takeoff().wood().stream()
        .filter(wood -> wood.log().piece().log().tag().equals(tag))
        .findFirst()
        .orElseThrow();
  }

  private static void near(double counted, PieceWood wood) {
    assertEquals(counted, wood.finished(), 2e-4 * counted, wood.log().piece().log().tag());
  }

  @Test
  void aLogInTheMiddleHasFourCuts() {
    Cabins cabin = Cabins.ofRounds(14, 14, 14);
    near(count(246, notched(246, true, u -> -R)), wood(cabin, "N2"));
    near(count(174, notched(174, true, u -> -R)), wood(cabin, "E2"));
  }

  @Test
  void aFirstLogIsSawnFlatAllAlongWithoutLowerNotches() {
    Planes notched = notched(246, true, u -> -R);
    Planes flat =
        new Planes() {
          @Override
          public double top(double u, double v) {
            return notched.top(u, v);
          }

          @Override
          public double bottom(double u, double v) {
            return -LOWER;
          }
        };
    near(count(246, flat), wood(Cabins.ofRounds(14, 14, 14), "N1"));
  }

  @Test
  void aSecondFirstLogIsSawnFlatBetweenItsShoulders() {
    near(count(174, notched(174, true, u -> -LOWER)), wood(Cabins.ofRounds(14, 14, 14), "E1"));
    Cabins level = Cabins.ofRounds(14, 14, 14).with(Setting.FIRST_BED, "level");
    near(count(174, notched(174, true, u -> -R)), wood(level, "E1"));
    Cabins starter = Cabins.ofRounds(14, 14, 14).with(Setting.FIRST_BED, "starter");
    near(count(246, notched(246, true, u -> -R)), wood(starter, "N1"));
  }

  @Test
  void aLastSecondLaidLogHasNoUpperCuts() {
    near(count(174, notched(174, false, u -> -R)), wood(Cabins.ofRounds(14, 14, 14), "E3"));
  }

  /** First-laid centre lines lie at 3 1/4, 18 1/4, 33 1/4. */
  @ParameterizedTest
  @CsvSource({"N2, 11.25, 25.25", "N2, 0, 16", "N2, 20, 60", "N2, 15, 21"})
  void anOpeningTakesItsPart(String tag, double sill, double head) {
    Cabins cabin = Cabins.ofRounds(14, 14, 14).opening("N", 60, 40, sill, head);
    double whole = wood(Cabins.ofRounds(14, 14, 14), tag).finished();
    double from = Math.max(-R, sill - 18.25);
    double to = Math.min(R, head - 18.25);
    Planes between =
        new Planes() {
          @Override
          public double top(double u, double v) {
            return to;
          }

          @Override
          public double bottom(double u, double v) {
            return from;
          }
        };
    assertEquals(whole - count(40, between), wood(cabin, tag).finished(), 1);
  }

  /**
   * Engelmann spruce: 39 lb/ft³ green (USDA Forest Service weight table); specific gravity 0.33, so
   * 0.33 · 62.43 · 1.12 at 12 %; heartwood 51 % and sapwood 173 % wet (Wood Handbook, Table 4-1).
   */
  @Test
  void weightsFollowPublishedFigures() {
    PieceWood wood = wood(Cabins.ofRounds(14, 14, 14), "N2");
    double feet = wood.sawn() / 1728;
    assertEquals(39 * feet, wood.weights().green(), 1e-9);
    assertEquals(0.33 * 62.43 * 1.51 * feet, wood.weights().least(), 1e-9);
    assertEquals(0.33 * 62.43 * 2.73 * feet, wood.weights().most(), 1e-9);
    assertEquals(0.33 * 62.43 * 1.12 * wood.finished() / 1728, wood.weights().service(), 1e-9);
    assertEquals(Math.PI * 49 * 246, wood.round(), 1e-6);
    assertEquals(123, wood.balance().inches(), 1e-6, "a cylinder balances at its middle");
  }

  @Test
  void aTaperedLogBalancesNearerItsButt() {
    PieceWood wood = wood(Cabins.ofRounds(14, 14, 14).tapering(4), "N2");
    assertTrue(wood.balance().inches() < 120, wood.balance().toString());
    assertEquals(wood.round() - wood.sawn(), wood.slabs());
    assertEquals(wood.sawn() - wood.finished(), wood.cutAway());
  }

  /**
   * A 14 in log of 16 ft scales 100 by Doyle, 114 by Scribner's formula, 110 by Decimal C and 135
   * by International 1/4 (printed tables); of 250 in it is two segments, 10 and 10 ft: by Doyle
   * (10/4)² · 10 each, 63 a segment, halves up.
   */
  @Test
  void theTallyIsScaledInSegments() {
    LogScale scale = Cabins.ofRounds(14).takeoff().scale();
    assertEquals(4, scale.logs().size());
    Cabins oneLength = Cabins.ofRounds(14).with(Setting.SCALE_LENGTH_MOST, Cabins.in(120));
    double north = oneLength.takeoff().scale().logs().get(0).byRule().get(LogRule.DOYLE);
    assertEquals(63 + 63, north);
    double whole = scale.logs().get(0).byRule().get(LogRule.DOYLE);
    assertEquals(125, whole, "20 ft in one: 6.25 · 20");
    assertEquals(
        scale.total(LogRule.DOYLE),
        scale.total(LogRule.DOYLE, java.util.Set.of("N1", "E1", "S1", "W1")));
    assertEquals(whole, scale.total(LogRule.DOYLE, java.util.Set.of("N1")));
  }
}
