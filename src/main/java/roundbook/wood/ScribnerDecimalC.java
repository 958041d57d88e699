package roundbook.wood;

import java.util.Map;
import java.util.Set;
import roundbook.wood.LogRule.Measure;

/**
 * The factors of the Scribner Decimal C rule and the exceptions of its printed table.
 *
 * <p>Source: USDA Forest Service volume library (public domain), its Scribner factors for small
 * ends of 1 to 40 in. Above 40 in, which no house log reaches, the Scribner formula is rounded to
 * tens.
 */
final class ScribnerDecimalC {
  /** Board feet for each foot of length, by the inch of small end, from 1 in. */
  private static final double[] FACTORS = {
    0.000, 0.143, 0.390, 0.676, 1.070, 1.160, 1.400, 1.501, 2.084, 3.126, 3.749, 4.900, 6.043,
    7.140, 8.880, 10.000, 11.528, 13.290, 14.990, 17.499, 18.990, 20.880, 23.510, 25.218, 28.677,
    31.249, 34.220, 36.376, 38.040, 41.060, 44.376, 45.975, 48.990, 50.000, 54.688, 57.660, 64.319,
    66.730, 70.000, 75.240
  };

  /** The same for 6 to 11 in where the log is 16 to 31 ft long. */
  private static final double[] LONG = {1.249, 1.608, 1.854, 2.410, 3.542, 4.167};

  /** The same for 6 to 11 in where the log is 32 to 40 ft long. */
  private static final double[] LONGEST = {1.570, 1.800, 2.200, 2.900, 3.815, 4.499};

  /** By length in feet: the small ends at which the printed table has ten more than the factor. */
  private static final Map<Integer, Set<Integer>> TEN_MORE =
      Map.of(
          5, Set.of(19, 21),
          6, Set.of(20, 21),
          7, Set.of(9),
          8, Set.of(24, 29, 38),
          9, Set.of(29),
          10, Set.of(9),
          11, Set.of(9),
          19, Set.of(13));

  /** By length in feet: the small ends at which the printed table has ten less. */
  private static final Map<Integer, Set<Integer>> TEN_LESS =
      Map.ofEntries(
          Map.entry(5, Set.of(10)),
          Map.entry(7, Set.of(11)),
          Map.entry(10, Set.of(23)),
          Map.entry(11, Set.of(25)),
          Map.entry(12, Set.of(10)),
          Map.entry(13, Set.of(6)),
          Map.entry(14, Set.of(6)),
          Map.entry(15, Set.of(6, 28)),
          Map.entry(19, Set.of(8, 9)),
          Map.entry(20, Set.of(8, 9)));

  private ScribnerDecimalC() {}

  static double boardFeet(Measure log) {
    int inches = (int) log.smallInch();
    int feet = (int) log.wholeFeet();
    if (inches < 1 || feet < 1) {
      return 0;
    }
    if (inches > FACTORS.length) {
      return BoardFeet.nearest(BoardFeet.scribnerExactly(inches, feet), 10);
    }
    return BoardFeet.nearest(factor(inches, feet) * feet, 10) + 10 * exception(inches, feet);
  }

  private static double factor(int inches, int feet) {
    boolean small = inches >= 6 && inches <= 11;
    if (small && feet >= 16 && feet <= 31) {
      return LONG[inches - 6];
    }
    if (small && feet >= 32 && feet <= 40) {
      return LONGEST[inches - 6];
    }
    return FACTORS[inches - 1];
  }

  private static int exception(int inches, int feet) {
    int more = TEN_MORE.getOrDefault(feet, Set.of()).contains(inches) ? 1 : 0;
    return more - (TEN_LESS.getOrDefault(feet, Set.of()).contains(inches) ? 1 : 0);
  }
}
