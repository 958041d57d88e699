package roundbook.bucking;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import roundbook.bucking.LaidPieces.Laid;

/** What pieces cost that change one by one is what the same pieces cost reckoned from nothing. */
class JointStateTest {
  private static final BuckingTask TASK = PartingTest.task(4, 20, 90);

  private final SplittableRandom dice = new SplittableRandom(5);
  private final JointState state = new JointState(TASK);
  private int parted;
  private int joined;
  private int exchanged;

  private static long afresh(Laid laid) {
    JointState other = new JointState(TASK);
    other.lay(laid);
    return other.total();
  }

  /** Begins a change of any kind that may be made; returns whether there is one. */
  private boolean change() {
    int slot = dice.nextInt(state.bole.length);
    if (state.isParted(0) && dice.nextInt(4) == 0) {
      state.change(state.rightOf(0), -1, 0, false);
      state.change(0, spare(), 0, false);
      joined++;
      return true;
    }
    if (!state.isParted(0) && slot == state.rightOf(0)) {
      state.change(0, 4, dice.nextInt(3), dice.nextBoolean());
      state.change(slot, 5, dice.nextInt(3), dice.nextBoolean());
      parted++;
      return true;
    }
    int other = dice.nextInt(TASK.places());
    if (dice.nextBoolean() && other != slot && state.raw(other) == state.raw(slot)) {
      int mine = state.bole[slot];
      int from = state.from[slot];
      state.change(slot, state.bole[other], state.from[other], false);
      state.change(other, mine, from, false);
      exchanged++;
      return true;
    }
    if (state.bole[slot] < 0) {
      return false;
    }
    state.change(slot, state.bole[slot], state.from[slot], !state.turned[slot]);
    return true;
  }

  /** Returns a long stem that lies nowhere. */
  private int spare() {
    return IntStream.range(0, 4).filter(stem -> state.count[stem] == 0).findFirst().orElseThrow();
  }

  @Test
  void changesCostWhatTheyDoReckonedAnew() {
    assertTrue(new FirstDeal(TASK, state).lay());
    for (int i = 0; i < 3_000; i++) {
      long before = state.total();
      Laid laid = state.laid();
      if (change()) {
        long more = state.changed();
        assertEquals(afresh(state.laid()), before + more);
        assertEquals(before + more, state.total());
        if (dice.nextBoolean()) {
          state.keep();
        } else {
          state.undo();
          assertEquals(before, state.total());
          assertArrayEquals(laid.bole(), state.bole);
          assertArrayEquals(laid.from(), state.from);
        }
      }
    }
    assertTrue(Math.min(parted, Math.min(joined, exchanged)) > 100, "all kinds were tried");
  }
}
