package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import roundbook.balance.BalanceTask.RingPlace;

/** No choice is under the bound: neither the best of all nor any that a search finds. */
class BoundTest {
  /** Ticks of a two-thousandth of an inch against exact inches. */
  private static final double TICKS = 0.002;

  private static final long INCH = 16_000;

  /** Rounds of prices that are enough here. */
  private static final int TURNS = 120;

  private static double bound(BalanceTask task, double known) {
    int[] turns = {0};
    return Bound.of(task, known, Effort.usual(0).until(() -> ++turns[0] > TURNS));
  }

  /** All 362,880 ways to build two rounds of four from nine logs, as scored in binary inches. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void neverAboveTheBestOfAllWays(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<double[]> logs = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      double mid = 10 + random.nextInt(16) / 4.0;
      double butt = mid + 0.5 + random.nextInt(6) / 4.0;
      double tip = mid - 0.5 - random.nextInt(4) / 4.0;
      logs.add(new double[] {0, 0, 200 + random.nextInt(12), butt, mid, tip});
    }
    YardFile yard =
        new YardFile("two rounds", List.of(new double[] {0, 0, 2, 190, 190, 190, 190}), logs);
    BalanceTask task = yard.task(false, false);
    double best = new AllWays(task, false).best();
    double bound = bound(task, 1.4 * best);
    assertTrue(bound <= best * (1 + TICKS), bound + " of " + best);
    assertTrue(bound > 0, "what these logs differ within a round is most of it");
  }

  /**
   * Tasks of every kind: several cuts a log, two length classes, three to five sides, two
   * buildings, pins, kept logs, places for some logs only, refused tips, sizes that are bound.
   */
  @Test
  void neverAboveAChoiceThatIsFound() {
    int compared = 0;
    double shares = 0;
    for (long seed = 1; seed <= 24; seed++) {
      BalanceResult found =
          Balancer.search()
              .solve(task(new SplittableRandom(seed)), Effort.usual(1).withMoves(40_000));
      double score = found.score().total();
      if (score > 0 && found.score().faults().refused() == 0) {
        double bound = bound(found.task(), 1.5 * score);
        assertTrue(bound <= score * (1 + 1e-9), "seed " + seed + ": " + bound + " of " + score);
        shares += bound(found.task(), score) / score;
        compared++;
      }
    }
    assertTrue(compared >= 14, compared + " compared");
    assertTrue(shares / compared > 0.05, "a mean share of " + shares / compared);
  }

  private static BalanceTask task(SplittableRandom random) {
    BalanceTask.Builder task = BalanceTask.builder(INCH, 8, Aims.usual(INCH));
    task.lengthClass(200 * INCH);
    task.lengthClass(240 * INCH);
    int buildings = 1 + random.nextInt(2);
    int places = 0;
    for (int b = 0; b < buildings; b++) {
      int sides = 3 + random.nextInt(buildings == 1 ? 3 : 1);
      int rounds = 1 + random.nextInt(2);
      task.building(rounds);
      for (int side = 0; side < sides; side++) {
        task.side(random.nextInt(3) / 2, side % 2 == 0);
      }
      places += sides * rounds;
    }
    int logs = places + random.nextInt(4);
    for (int log = 0; log < logs; log++) {
      boolean longer = random.nextInt(3) > 0;
      List<Cut> cuts = cuts(random);
      task.log(List.of(cuts, longer ? cuts : List.of()));
    }
    restrict(task, random, logs);
    return task.build();
  }

  private static List<Cut> cuts(SplittableRandom random) {
    List<Cut> cuts = new ArrayList<>();
    long mid = INCH * (80 + random.nextInt(24)) / 8;
    long half = INCH * (4 + random.nextInt(8)) / 8;
    for (int i = 0; i <= random.nextInt(3); i++) {
      long at = mid - i * INCH / 8;
      Cut cut = Cut.of(at + half, at, at - half).wasting(i * INCH, 0.01 * i);
      cuts.add(random.nextInt(6) == 0 ? cut.upTo(at + INCH / 4) : cut);
    }
    return cuts;
  }

  private static void restrict(BalanceTask.Builder task, SplittableRandom random, int logs) {
    RingPlace low = new RingPlace(0, 0, random.nextInt(3));
    if (random.nextInt(3) == 0) {
      task.only(low, List.of(0, 1, 2, 3, 4));
    } else if (random.nextInt(2) == 0) {
      task.keep(random.nextInt(logs), List.of(low, new RingPlace(0, 0, 0)));
    }
    if (random.nextInt(4) == 0) {
      task.size(0, 0, INCH * 23 / 2);
    }
  }

  /** More logs than can be told apart on one way. */
  @Test
  void manyLogsAreBoundedToo() {
    SplittableRandom random = new SplittableRandom(8);
    BalanceTask.Builder task = BalanceTask.builder(INCH, 8, Aims.usual(INCH));
    task.lengthClass(200 * INCH);
    task.building(2);
    for (int side = 0; side < 4; side++) {
      task.side(0, side % 2 == 0);
    }
    for (int log = 0; log < 68; log++) {
      task.log(List.of(cuts(random).subList(0, 1)));
    }
    BalanceTask built = task.build();
    double found =
        Balancer.search().solve(built, Effort.usual(1).withMoves(400_000)).score().total();
    int[] turns = {0};
    double bound = Bound.of(built, 1.5 * found, Effort.usual(0).until(() -> ++turns[0] > 20));
    assertTrue(bound >= 0 && bound <= found, bound + " of " + found);
  }

  @Test
  void whatCannotBeReckonedIsZero() {
    BalanceTask task = YardFile.read("t3_0").task(false, false);
    assertEquals(0, bound(YardFile.read("t3_0").task(true, false), 3));
    assertEquals(0, Bound.of(task, 3, Effort.usual(0).until(() -> true)));
    assertEquals(0, bound(task, 0));
  }

  /** Yards of 12 to 24 places, whose best scores other searches came to: no choice is better. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"t3_0", "t4_0", "t4_2", "t5_0", "t5_2", "t6_0"})
  void smallYardsAreProven(String name) {
    BalanceTask task = YardFile.read(name).task(false, false);
    double best = YardFile.best(name).rounded();
    double known = Balancer.search().solve(task, Effort.usual(1)).score().total();
    assertEquals(best, known, 1e-3 * best);
    assertEquals(known, Bound.of(task, known, Effort.usual(0)), 0, "proven");
  }

  /** Where a worse choice was known, the best is found on the way: the bound is what it costs. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"t3_0", "t4_0", "t5_0", "t6_0"})
  void theBestIsFoundFromAWorseOne(String name) {
    BalanceTask task = YardFile.read(name).task(false, false);
    double best = Balancer.search().solve(task, Effort.usual(1)).score().total();
    assertEquals(best, Bound.of(task, 1.1 * best, Effort.usual(0)), 1e-5 * best);
  }

  /** Thirty-two places out of forty logs, which takes half a minute. */
  @Test
  @Tag("long")
  void aCabinIsProven() {
    BalanceTask task = YardFile.read("r08_x125_U").task(false, false);
    double known = Balancer.search().solve(task, Effort.usual(1)).score().total();
    assertEquals(YardFile.best("r08_x125_U").rounded(), known, 1e-4 * known);
    assertEquals(known, Bound.of(task, known, Effort.usual(0).onAnyThreads()), 0, "proven");
  }

  /** As many threads as there are find the same. */
  @Test
  void threadsChangeNothing() {
    BalanceTask task = YardFile.read("t6_0").task(false, false);
    double known = 1.05 * YardFile.best("t6_0").rounded();
    Effort effort = Effort.usual(0);
    assertEquals(Bound.of(task, known, effort), Bound.of(task, known, effort.onAnyThreads()));
  }
}
