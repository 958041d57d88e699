package roundbook.bucking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import roundbook.balance.Aims;
import roundbook.balance.Effort;
import roundbook.bucking.BuckingResult.PartedCut;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.BuckingTask.Settled;
import roundbook.bucking.BuckingTask.Side;
import roundbook.bucking.Parting.PartedPlace;

/**
 * Two rounds of two sides of 90 steps; beside an opening in the first place lie pieces of 50 and 30
 * steps, a step squared off each end. What a choice costs is reckoned here by another way.
 */
class PartingTest {
  private static final int[] WHOLE = {131, 127, 126, 120};
  private static final int[] SHORT = {129, 124, 122};
  private static final int[] AT = {2, 45, 88, 49, 61};
  private static final int ASKED = 4;

  /** Either way round, off the tip, off the butt or half off each. */
  private static final int WAYS = 4 * 3 * 3;

  private static List<Bole> boles(int whole) {
    List<Bole> boles = new ArrayList<>();
    for (int i = 0; i < whole; i++) {
      boles.add(bole(90, WHOLE[i], 18 - 3 * i));
    }
    for (int i = 0; i < SHORT.length; i++) {
      boles.add(bole(54 + 2 * i, SHORT[i], 9));
    }
    return boles;
  }

  private static Bole bole(int length, int butt, int taper) {
    int[] thick = new int[length + 1];
    Arrays.setAll(thick, i -> butt - i / taper);
    return Bole.of(thick, List.of(), 0).alreadyCut().giving(1).losing(3);
  }

  static BuckingTask task(int whole, long most, long thinner) {
    Parting parting =
        new Parting(List.of(new PartedPlace(0, 50, 30)), 1, 5, most, thinner, prices(whole), true);
    List<Side> sides = List.of(new Side(90, 2, true), new Side(90, 2, false));
    return new BuckingTask(
        Aims.usual(10), 10, boles(whole), sides, 2, 1, 0, Settled.NOTHING, parting);
  }

  /** Each whole log costs four in the place that is cut through. */
  private static double[][] prices(int whole) {
    double[][] prices = new double[whole + SHORT.length][4 + 2];
    Arrays.stream(prices).forEach(each -> each[0] = ASKED);
    return prices;
  }

  private static Optional<BuckingResult> solved(BuckingTask task) {
    return JointSearch.solve(task, 1, Effort.usual(1).withMoves(60_000));
  }

  @Test
  void findsWhatTryingEveryWayFinds() {
    BuckingTask task = task(4, 20, 90);
    BuckingResult found = solved(task).orElseThrow();
    assertEquals(1, found.parted().size());
    assertEquals(least(task), found.score(), 1e-9);
  }

  @Test
  void aPairLiesWhereALogIsMissing() {
    assertEquals(1, solved(task(3, 6, 0)).orElseThrow().parted().size());
    assertEquals(Optional.empty(), solved(task(2, 20, 90)));
  }

  @Test
  void noneLiesWhereItSpoilsAGapOrAnEnd() {
    assertEquals(1, solved(task(4, 20, 90)).orElseThrow().parted().size());
    assertEquals(List.of(), solved(task(4, 6, 90)).orElseThrow().parted());
    assertEquals(List.of(), solved(task(4, 20, -20)).orElseThrow().parted());
  }

  @Test
  void piecesLieWithinTheirLogs() {
    BuckingTask task = task(4, 20, 90);
    PartedCut pair = solved(task).orElseThrow().parted().get(0);
    assertEquals(50, pair.left().raw());
    assertEquals(30, pair.right().raw());
    for (Cut cut : List.of(pair.left(), pair.right())) {
      int room = task.boles().get(cut.bole()).length() - cut.raw();
      assertTrue(List.of(0, room / 2, room).contains(cut.from()), cut.toString());
    }
  }

  /** Tries every way to lay the four whole logs, or three and two short ones either way round. */
  private static double least(BuckingTask task) {
    double least = Double.MAX_VALUE;
    for (int[] order : orders()) {
      double[][] here = new double[4][];
      for (int place = 1; place < 4; place++) {
        here[place] = whole(task.boles().get(order[place]), place < 2);
      }
      here[0] = whole(task.boles().get(order[0]), true);
      least = Math.min(least, ASKED + cost(here, 3));
      for (int left = 4; left < 7; left++) {
        for (int right = 4; right < 7; right++) {
          for (int way = 0; way < (left == right ? 0 : WAYS); way++) {
            here[0] = pair(task.boles().get(left), task.boles().get(right), way);
            least = Math.min(least, cost(here, 5));
          }
        }
      }
    }
    return least;
  }

  private static List<int[]> orders() {
    List<int[]> orders = new ArrayList<>();
    for (int code = 0; code < 256; code++) {
      int[] order = {code % 4, code / 4 % 4, code / 16 % 4, code / 64};
      if (Arrays.stream(order).distinct().count() == 4) {
        orders.add(order);
      }
    }
    return orders;
  }

  private static double[] whole(Bole bole, boolean buttLeft) {
    return Arrays.stream(AT)
        .mapToDouble(at -> bole.atHalf(2 * (buttLeft ? at : 90 - at)))
        .toArray();
  }

  private static double[] pair(Bole left, Bole right, int way) {
    int from = (left.length() - 50) * (way / 4 % 3) / 2;
    int start = (right.length() - 30) * (way / 12) / 2;
    boolean leftOut = way % 2 == 0;
    boolean rightOut = way / 2 % 2 == 0;
    return Arrays.stream(AT)
        .mapToDouble(
            at ->
                at <= 49
                    ? left.atHalf(2 * (from + (leftOut ? at : 50 - at)))
                    : right.atHalf(2 * (start + (rightOut ? 90 - at : at - 60))))
        .toArray();
  }

  /** Returns the squares of what gaps, rounds and spreads are off, in tens squared. */
  private static double cost(double[][] at, int stations) {
    double low = size(at[0][1], at[1][1]);
    double high = size(at[2][1], at[3][1]);
    double sum = 10 * Math.pow(Math.max(0, high - low), 2);
    for (int round = 0; round < 2; round++) {
      double spread = Math.abs(at[2 * round][1] - at[2 * round + 1][1]);
      sum += 20 * Math.pow(Math.max(0, spread - 10), 2);
    }
    for (int side = 0; side < 2; side++) {
      double spacing = 10 + (side == 0 ? 3 * low + high : low + 3 * high) / 4;
      for (int k = 0; k < (side == 0 ? stations : 3); k++) {
        double gap = spacing - (at[side][k] + at[side + 2][k]) / 2;
        double lack = Math.max(0, 5 - gap);
        sum += Math.pow(gap - 10, 2) + 20 * lack * lack;
      }
    }
    return sum / 100;
  }

  private static double size(double one, double other) {
    return 5 * Math.floor((one + other) / 10 + 0.5);
  }
}
