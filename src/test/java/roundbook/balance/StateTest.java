package roundbook.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether a trial that ends early says the same as a whole one, and the sum of parts the whole. */
class StateTest {
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void endsEarlyOnlyAboveTheBound(boolean exact) {
    Model model = new Model(YardFile.read("r08_x125_U").task(exact, true));
    State state = new State(model);
    state.set(SortAndDeal.deal(model));
    SplittableRandom random = new SplittableRandom(5);
    int kept = 0;
    int early = 0;
    for (int i = 0; i < 20_000; i++) {
      Exchange exchange = Exchange.any(state, random);
      if (exchange == null) {
        continue;
      }
      exchange.put(state);
      long whole = state.trial();
      state.undo();
      exchange.put(state);
      long most = whole + (long) (Math.abs(whole) * random.nextDouble(-2, 2));
      long said = state.trial(most);
      if (whole <= most) {
        assertEquals(whole, said);
      } else {
        assertTrue(said > most && said <= whole);
        early += said < whole ? 1 : 0;
      }
      if (whole <= most && whole <= 0) {
        state.keep();
        kept++;
      } else {
        state.undo();
      }
    }
    State anew = new State(model);
    anew.set(state.variant.clone());
    assertEquals(anew.total, state.total);
    assertTrue(kept > 0);
    assertTrue(early > 0);
  }

  /** Two variants for two slots. */
  private record Exchange(int slot, int variant, int other, int otherVariant) {
    static Exchange any(State state, SplittableRandom random) {
      Model model = state.model;
      int slot = random.nextInt(model.slots.count);
      int other = random.nextInt(model.slots.count);
      int log = state.logAt(slot);
      int there = state.logAt(other);
      if (slot == other || !model.fits(there, slot) || !model.fits(log, other)) {
        return null;
      }
      return new Exchange(
          slot,
          model.firstVariant(there, slot) + random.nextInt(model.variants(there, slot)),
          other,
          model.firstVariant(log, other) + random.nextInt(model.variants(log, other)));
    }

    void put(State state) {
      state.put(other, otherVariant);
      state.put(slot, variant);
    }
  }
}
