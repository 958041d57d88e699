package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is kept up to date move by move is the score that the whole choice has. */
class LooseStateTest {
  private static final int MOVES = 20_000;

  @ParameterizedTest
  @CsvSource({"r08_x125_U, false", "r08_x125_U, true", "r12_x125_M, true", "t3_0, false"})
  void keepsTheScore(String yard, boolean free) {
    Model model = new Model(YardFile.read(yard).task(false, free));
    LooseState state = new LooseState(model);
    State whole = new State(model);
    state.set(SortAndDeal.deal(model));
    state.strictness(JointTables.UNIT / 1000.0);
    Dice dice = new Dice(5);
    int compared = 0;
    for (int i = 0; i < MOVES; i++) {
      boolean taken = move(model, state, dice, JointTables.UNIT / 20);
      if (taken && state.misfit == 0) {
        compared++;
        whole.set(straight(model, state));
        assertEquals(model.area(whole.total), (double) state.total / JointTables.UNIT, 2e-3);
      }
    }
    assertTrue(compared > 100, "compared " + compared);
  }

  private static int[] straight(Model model, LooseState state) {
    LooseState other = new LooseState(model);
    other.set(state.variant);
    return other.straight();
  }

  private static boolean move(Model model, LooseState state, Dice dice, long bound) {
    int s = dice.below(model.slots.count);
    int kind = dice.below(4);
    if (kind == 0) {
      return state.step(model.slots.courseOf[s], dice.next() < 0 ? 1 : -1, bound);
    }
    int log = dice.below(model.logs);
    int t = state.slotOf[log];
    if (!model.fits(log, s) || t >= 0 && !model.fits(state.log(s), t)) {
      return false;
    }
    int v = kind == 1 ? any(model, log, s, dice) : state.bestCut(log, s);
    return t < 0 || t == s
        ? state.put(s, v, bound)
        : state.put(s, v, t, any(model, state.log(s), t, dice), bound);
  }

  private static int any(Model model, int log, int slot, Dice dice) {
    return model.firstVariant(log, slot) + dice.below(model.variants(log, slot));
  }
}
