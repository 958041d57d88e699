package roundbook.bucking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import roundbook.balance.Aims;
import roundbook.balance.Effort;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.BuckingTask.Settled;
import roundbook.bucking.BuckingTask.Side;

/** Cross-cuts chosen with the plan, from measured stems. */
class JointSearchTest {
  private static final int INCH = MeasuredStems.STEPS;

  private static BuckingTask measured() throws IOException {
    return MeasuredStems.task(MeasuredStems.boles(MeasuredStems.stations()), 0.001);
  }

  private static void assertGood(BuckingTask task, long seed) {
    BuckingResult result = JointSearch.solve(task, INCH, Effort.usual(seed)).orElseThrow();
    assertEquals(List.of(), OverlapCheck.faults(task, result.cuts()));
    assertTrue(result.score() <= 1.5, "seed " + seed + ": " + result.score());
    assertEquals(0, result.gapsOutside(5_000, 17_500));
  }

  @Test
  void leavesNoGapOutsideItsLimits() throws IOException {
    assertGood(measured(), 1);
  }

  @Tag("long")
  @Test
  void leavesNoneForAnyOfNineSeeds() throws IOException {
    for (int seed = 1; seed <= 9; seed++) {
      assertGood(measured(), seed);
    }
  }

  @Test
  void givesTheSamePiecesForTheSameSeed() throws IOException {
    Effort few = Effort.usual(5).withMoves(60_000);
    assertEquals(
        JointSearch.solve(measured(), INCH, few).orElseThrow().cuts(),
        JointSearch.solve(measured(), INCH, few).orElseThrow().cuts());
  }

  /** Every stem has a crook of two feet somewhere, and saw cuts take a quarter inch. */
  @Test
  void cutsThroughNoBadStretch() throws IOException {
    List<Bole> boles = new ArrayList<>();
    for (double[][] stem : MeasuredStems.stations()) {
      int from = (60 + 7 * boles.size()) * INCH;
      boles.add(
          Bole.of(
              MeasuredStems.diameters(stem),
              List.of(new Stretch(from, from + 24 * INCH)),
              8 * MeasuredStems.INCH));
    }
    BuckingTask plain = MeasuredStems.task(boles, 0.001);
    BuckingTask task =
        new BuckingTask(
            plain.aims(),
            plain.unit(),
            boles,
            plain.sides(),
            5,
            1,
            0,
            Settled.NOTHING,
            Parting.NONE);
    BuckingResult result =
        JointSearch.solve(task, INCH, Effort.usual(1).withMoves(300_000)).orElseThrow();
    assertEquals(List.of(), OverlapCheck.faults(task, result.cuts()));
  }

  @Test
  void keepsWhatIsSettledAndWhatAStemMayServe() throws IOException {
    Cut sill = new Cut(0, 40, MeasuredStems.SIDES.get(0).raw());
    Settled settled =
        new Settled(
            new Cut[] {sill},
            new long[] {0, 115_000},
            (bole, place) -> bole != 4 || place / MeasuredStems.SIDES.size() == 3);
    BuckingTask plain = measured();
    BuckingTask task =
        new BuckingTask(
            plain.aims(),
            plain.unit(),
            plain.boles(),
            plain.sides(),
            4,
            1,
            0,
            settled,
            Parting.NONE);
    BuckingResult result =
        JointSearch.solve(task, INCH, Effort.usual(1).withMoves(300_000)).orElseThrow();
    assertEquals(sill, result.cuts().get(0));
    assertEquals(115_000, result.sizes().get(1));
    for (int place = 0; place < task.places(); place++) {
      assertTrue(result.cuts().get(place).bole() != 4 || place >= 12);
    }
    assertEquals(List.of(), OverlapCheck.faults(task, result.cuts()));
  }

  /** Two rounds of two sides from four cylinders of two pieces: every way is tried. */
  @Test
  void findsWhatTryingEveryWayFinds() {
    int[] thick = {130, 128, 121, 119};
    List<Bole> boles = new ArrayList<>();
    for (int each : thick) {
      int[] taper = new int[201];
      Arrays.setAll(taper, i -> each - i / 20);
      boles.add(Bole.of(taper, List.of(), 0));
    }
    List<Side> sides = List.of(new Side(90, 2, true), new Side(90, 2, false));
    Aims aims = Aims.usual(10);
    BuckingTask task =
        new BuckingTask(aims, 10, boles, sides, 2, 2, 0, Settled.NOTHING, Parting.NONE);
    double best = Double.MAX_VALUE;
    List<Cut> ways = new ArrayList<>();
    for (int bole = 0; bole < boles.size(); bole++) {
      for (int from = 0; from <= 110; from++) {
        ways.add(new Cut(bole, from, 90));
      }
    }
    best = least(task, ways, new ArrayList<>(), best);
    BuckingResult found =
        JointSearch.solve(task, 1, Effort.usual(1).withMoves(200_000)).orElseThrow();
    assertEquals(best, found.score(), 1e-9);
  }

  /** Tries every fifth way of each place; the search may do no worse. */
  private static double least(BuckingTask task, List<Cut> ways, List<Cut> cuts, double known) {
    if (cuts.size() == task.places()) {
      return OverlapCheck.faults(task, cuts).isEmpty()
          ? Math.min(known, BuckingResult.of(task, cuts).score())
          : known;
    }
    double best = known;
    for (int way = 0; way < ways.size(); way += 37) {
      cuts.add(ways.get(way));
      best = least(task, ways, cuts, best);
      cuts.remove(cuts.size() - 1);
    }
    return best;
  }

  @Test
  void saysWhereTheStemsDoNotHoldThePieces() throws IOException {
    BuckingTask task = measured().withRounds(12);
    assertEquals(11, Counts.rounds(task));
    assertEquals(Optional.empty(), JointSearch.solve(task, INCH, Effort.usual(1)));
  }
}
