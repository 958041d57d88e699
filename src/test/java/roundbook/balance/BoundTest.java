package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
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
  private static final int TURNS = 600;

  private static double bound(BalanceTask task, double known) {
    int[] turns = {0};
    return Bound.of(task, known, Effort.usual(0).until(() -> ++turns[0] > TURNS)).score();
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
    int others = 0;
    double shares = 0;
    for (long seed = 1; seed <= 24; seed++) {
      BalanceResult found =
          Balancer.search()
              .solve(task(new SplittableRandom(seed)), Effort.usual(1).withMoves(40_000));
      double score = found.score().total();
      if (score > 0 && found.score().faults().refused() == 0) {
        int[] turns = {0};
        Effort effort = Effort.usual(0).until(() -> ++turns[0] > TURNS);
        Bound bound = Bound.of(found.task(), 1.5 * score, effort);
        String of = "seed " + seed + ": " + bound + " of " + score;
        assertTrue(bound.score() <= score * (1 + 1e-9), of);
        bound.better().ifPresent(better -> assertBetter(found.task(), better, 1.5 * score, bound));
        others += bound.better().isPresent() ? 1 : 0;
        shares += bound(found.task(), score) / score;
        compared++;
      }
    }
    assertTrue(compared >= 14, compared + " compared");
    assertTrue(others >= 10, others + " choices come upon");
    assertTrue(shares / compared > 0.05, "a mean share of " + shares / compared);
  }

  /** A choice that is come upon has every log once, where it may lie, and is as good as told. */
  private static void assertBetter(
      BalanceTask task, BalanceResult better, double known, Bound bound) {
    assertTrue(better.isComplete());
    double score = better.score().total();
    assertTrue(score < known && bound.score() <= score * (1 + 1e-9), score + " of " + known);
    assertEquals(0, better.score().faults().refused());
    Map<RingPlace, Integer> logs = new HashMap<>();
    Map<RingPlace, Integer> cuts = new HashMap<>();
    for (int b = 0; b < task.buildings(); b++) {
      for (int round = 0; round < task.rounds(b); round++) {
        for (int side = 0; side < task.sides(b); side++) {
          RingPlace place = new RingPlace(b, round, side);
          logs.put(place, better.log(place));
          cuts.put(place, better.cut(place));
        }
      }
    }
    assertEquals(task.places(), new HashSet<>(logs.values()).size(), "each log once");
    task.kept()
        .forEach(
            (log, places) ->
                logs.forEach((place, there) -> assertTrue(there != log || places.contains(place))));
    task.only().forEach((place, allowed) -> assertTrue(allowed.get(logs.get(place))));
    task.pins().forEach((place, log) -> assertEquals(log, logs.get(place)));
    BalanceResult again = Mender.mend(task, logs, cuts, 1e9).result();
    assertEquals(score, again.score().total(), 1e-9 * known);
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
    double bound =
        Bound.of(built, 1.5 * found, Effort.usual(0).until(() -> ++turns[0] > 20)).score();
    assertTrue(bound >= 0 && bound <= found, bound + " of " + found);
  }

  /** Wherever it is stopped, what it says by then holds. */
  @Test
  void itMayBeStoppedAnywhere() {
    BalanceTask task = YardFile.read("t3_0").task(false, false);
    double best = YardFile.best("t3_0").rounded();
    for (int most = 0; most < 900; most += 30) {
      int last = most;
      int[] turns = {0};
      Bound bound = Bound.of(task, 1.2 * best, Effort.usual(0).until(() -> ++turns[0] > last));
      assertTrue(bound.score() <= best * (1 + TICKS), bound + " of " + best);
    }
  }

  @Test
  void whatCannotBeReckonedIsZero() {
    BalanceTask task = YardFile.read("t3_0").task(false, false);
    assertEquals(0, bound(YardFile.read("t3_0").task(true, false), 3));
    assertEquals(0, Bound.of(task, 3, Effort.usual(0).until(() -> true)).score());
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
    assertEquals(known, Bound.of(task, known, Effort.usual(0)).score(), 0, "proven");
  }

  /** Where a worse choice was known, the best is come upon on the way, and proved. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"t3_0", "t4_0", "t5_0", "t6_0"})
  void theBestIsFoundFromAWorseOne(String name) {
    BalanceTask task = YardFile.read(name).task(false, false);
    double best = Balancer.search().solve(task, Effort.usual(1)).score().total();
    Bound bound = Bound.of(task, 1.1 * best, Effort.usual(0));
    assertBetter(task, bound.better().orElseThrow(), 1.1 * best, bound);
    assertEquals(best, bound.better().orElseThrow().score().total(), 1e-5 * best);
    assertEquals(best, bound.score(), 1e-5 * best);
  }

  /** Thirty-two places out of forty logs, which takes half a minute. */
  @Test
  @Tag("long")
  void aCabinIsProven() {
    BalanceTask task = YardFile.read("r08_x125_U").task(false, false);
    double known = Balancer.search().solve(task, Effort.usual(1)).score().total();
    assertEquals(YardFile.best("r08_x125_U").rounded(), known, 1e-4 * known);
    assertEquals(known, Bound.of(task, known, Effort.usual(0).onAnyThreads()).score(), 0, "proven");
  }

  /** As many threads as there are find the same. */
  @Test
  void threadsChangeNothing() {
    BalanceTask task = YardFile.read("t6_0").task(false, false);
    double known = 1.05 * YardFile.best("t6_0").rounded();
    Effort effort = Effort.usual(0);
    Bound one = Bound.of(task, known, effort);
    Bound many = Bound.of(task, known, effort.onAnyThreads());
    assertEquals(one.score(), many.score());
    assertArrayEquals(one.better().orElseThrow().unused(), many.better().orElseThrow().unused());
  }
}
