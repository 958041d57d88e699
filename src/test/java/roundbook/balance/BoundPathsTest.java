package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The cheapest ways of one side and of two against all ways, one by one. */
class BoundPathsTest {
  private static final long INCH = 16_000;
  private static final int ROUNDS = 4;

  private static Model model(SplittableRandom random, int logs) {
    BalanceTask.Builder task = BalanceTask.builder(INCH, 8, Aims.usual(INCH));
    task.lengthClass(200 * INCH);
    task.building(ROUNDS);
    for (int side = 0; side < 4; side++) {
      task.side(0, side % 2 == 0);
    }
    for (int log = 0; log < logs; log++) {
      long mid = INCH * (80 + random.nextInt(12)) / 8;
      long half = INCH * (4 + random.nextInt(6)) / 8;
      task.log(List.of(List.of(Cut.of(mid + half, mid, mid - half))));
    }
    return new Model(task.build());
  }

  private static BoundPrices prices(BoundCosts costs, List<BoundSide> sides, SplittableRandom by) {
    BoundPrices prices = BoundPrices.none(costs, sides);
    for (int log = 0; log < prices.log.length; log++) {
      prices.log[log] = by.nextInt(BoundCosts.KNOWN / 20);
    }
    return prices;
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void noWayIsCheaper(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Model model = model(random, 9);
    BoundCosts costs = new BoundCosts(model, new BoundSizes(model, 8), 8);
    List<BoundSide> sides = BoundSide.of(model);
    assertEquals(2, sides.size());
    BoundPrices prices = prices(costs, sides, random);
    BoundGraph lone =
        new BoundGraphs(costs, Long.MAX_VALUE, () -> false).of(sides.get(0)).orElseThrow();
    BoundPaths paths = checked(lone, prices);
    paths.findBack();
    double gap = 0.3 * BoundCosts.KNOWN;
    BoundGraph pair = BoundPairs.of(costs, paths, paths, gap, Long.MAX_VALUE).orElseThrow();
    assertTrue(cheapest(pair, prices) < Shortlists.NEVER, "there are ways");
    checked(pair, prices);
    checked(pair.of((r, s) -> (s + r) % 3 > 0), prices);
  }

  /** A side that has too many steps, or is stopped, has no graph. */
  @Test
  void tooManyStepsOfASideAreNone() {
    Model model = model(new SplittableRandom(5), 9);
    BoundCosts costs = new BoundCosts(model, new BoundSizes(model, 8), 8);
    BoundSide side = BoundSide.of(model).get(0);
    assertTrue(new BoundGraphs(costs, 10, () -> false).of(side).isEmpty());
    assertTrue(new BoundGraphs(costs, Long.MAX_VALUE, () -> true).of(side).isEmpty());
  }

  /** Pairs too many for the most that is let are none. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {5})
  void tooManyStepsAreNone(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Model model = model(random, 9);
    BoundCosts costs = new BoundCosts(model, new BoundSizes(model, 8), 8);
    List<BoundSide> sides = BoundSide.of(model);
    BoundPaths paths =
        new BoundPaths(
            new BoundGraphs(costs, Long.MAX_VALUE, () -> false).of(sides.get(0)).orElseThrow());
    paths.find(prices(costs, sides, random));
    paths.findBack();
    assertTrue(BoundPairs.of(costs, paths, paths, BoundCosts.KNOWN, 10).isEmpty());
  }

  private static BoundPaths checked(BoundGraph graph, BoundPrices prices) {
    BoundPaths paths = new BoundPaths(graph);
    int found = paths.find(prices);
    int best = cheapest(graph, prices);
    assertTrue(found <= best, found + " over " + best);
    assertTrue(
        best >= Shortlists.NEVER || found > best - BoundCosts.KNOWN / 50, found + " " + best);
    BoundGraph left = paths.pruned(best - found);
    if (best < Shortlists.NEVER) {
      assertEquals(best, cheapest(left, prices), "what is as good stays");
      assertTrue(left.steps() <= graph.steps());
    }
    return paths;
  }

  /** Returns what the cheapest way costs on which no log lies twice within three rounds. */
  private static int cheapest(BoundGraph graph, BoundPrices prices) {
    int[][] priced = new int[ROUNDS][];
    Arrays.setAll(priced, r -> prices.priced(graph, r));
    return cheapest(graph, priced, new ArrayList<>());
  }

  private static int cheapest(BoundGraph graph, int[][] all, List<Integer> way) {
    int r = way.size();
    if (r == graph.rounds()) {
      return 0;
    }
    int[] priced = all[r];
    int best = Shortlists.NEVER;
    int low = r == 0 ? -1 : way.get(r - 1);
    int from = r == 0 ? 0 : graph.first[r - 1][low];
    int to = r == 0 ? priced.length : graph.first[r - 1][low + 1];
    for (int i = from; i < to; i++) {
      int s = r == 0 ? i : graph.to[r - 1][i];
      if (r < 2 || !graph.meet(r, s, r - 2, way.get(r - 2))) {
        way.add(s);
        int step = r == 0 ? 0 : graph.cost[r - 1][i];
        best = Math.min(best, priced[s] + step + cheapest(graph, all, way));
        way.remove(r);
      }
    }
    return best;
  }
}
