package roundbook.bucking;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import roundbook.balance.Aims;
import roundbook.bucking.BuckingTask.Settled;
import roundbook.bucking.BuckingTask.Side;

/** How many rounds stems hold, against trying every way to cut them. */
class CountsTest {
  private static Bole cylinder(int length) {
    int[] thick = new int[length + 1];
    Arrays.fill(thick, 12);
    return Bole.of(thick, List.of(), 0);
  }

  private static BuckingTask task(List<Bole> boles, int rounds) {
    List<Side> sides =
        List.of(
            new Side(30, 1, true),
            new Side(22, 1, false),
            new Side(30, 1, true),
            new Side(22, 1, false));
    return new BuckingTask(
        Aims.usual(1), 1, boles, sides, rounds, 1, 0, Settled.NOTHING, Parting.NONE);
  }

  @Test
  void holdsAsManyRoundsAsAnyWayOfCuttingDoes() {
    Random random = new Random(7);
    for (int draw = 0; draw < 40; draw++) {
      List<Bole> boles = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        Bole bole = cylinder(20 + random.nextInt(80));
        boles.add(random.nextInt(4) == 0 ? bole.giving(1) : bole);
      }
      BuckingTask task = task(boles, 5);
      int rounds = Counts.rounds(task);
      assertEquals(tried(boles), rounds, "draw " + draw);
      List<BuckingTask.Cut> cuts = Counts.cuts(task.withRounds(rounds)).orElseThrow();
      assertEquals(4 * rounds, cuts.size());
    }
  }

  /** Two logs of 26 ft hold a round of 12' 6" and 10' 6", and fourteen hold seven. */
  @Test
  void cutsLongLogsInTwo() {
    List<Bole> logs = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      logs.add(cylinder(312));
    }
    List<Side> sides =
        List.of(
            new Side(154, 2, true),
            new Side(130, 2, false),
            new Side(154, 2, true),
            new Side(130, 2, false));
    assertEquals(
        7,
        Counts.rounds(
            new BuckingTask(
                Aims.usual(1), 1, logs, sides, 9, 1, 0, Settled.NOTHING, Parting.NONE)));
  }

  private static int tried(List<Bole> boles) {
    int rounds = 0;
    while (rounds < 5 && holds(boles, 0, 2 * rounds + 2, 2 * rounds + 2)) {
      rounds++;
    }
    return rounds;
  }

  private static boolean holds(List<Bole> boles, int at, int longs, int shorts) {
    if (longs <= 0 && shorts <= 0) {
      return true;
    }
    if (at == boles.size()) {
      return false;
    }
    Bole bole = boles.get(at);
    for (int a = 0; 31 * a <= bole.length() + 1; a++) {
      for (int b = 0; 31 * a + 23 * b <= bole.length() + 1; b++) {
        if (a + b <= bole.most() && holds(boles, at + 1, longs - a, shorts - b)) {
          return true;
        }
      }
    }
    return false;
  }
}
