package roundbook.balance;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * How many moves a second the search tries, against summing up the whole score for every move.
 *
 * <p>Both take turns in one run, on one thread, in its processor time, at the temperatures of a
 * start; the first turns warm up and are not counted.
 */
class MoveBenchmark {
  private static final int TURNS = 12;
  private static final int WARM = 4;
  private static final long MOVES = 1_000_000;
  private static final long WHOLE_MOVES = 100_000;
  private static final Annealer.Schedule START = new Annealer.Schedule(30, 0.02);

  @Test
  void movesASecond() {
    System.out.println("| yard | sizes | million moves a second | of whole sums |");
    System.out.println("|---|---|--:|--:|");
    for (String name :
        new String[] {"r08_x125_U", "r12_x125_U", "r14_x10_U", "real060", "b4_200"}) {
      measure(name, false);
      measure(name, true);
    }
  }

  private static void measure(String name, boolean exact) {
    Model model = new Model(YardFile.read(name).task(exact, false));
    Dice dice = new Dice(1);
    Annealer annealer = exact ? new Anneal(model, dice, false) : new LooseAnneal(model, dice);
    int[] dealt = SortAndDeal.deal(model);
    double seconds = 0;
    double whole = 0;
    for (int turn = 0; turn < TURNS; turn++) {
      Clock clock = new Clock();
      annealer.from(dealt);
      annealer.run(START, MOVES, done -> true);
      double end = clock.seconds();
      new WholeSums(model, dealt).run();
      if (turn >= WARM) {
        seconds += end;
        whole += clock.seconds() - end;
      }
    }
    double speed = (TURNS - WARM) * MOVES / seconds;
    double slow = (TURNS - WARM) * WHOLE_MOVES / whole;
    System.out.println(
        String.format(
            Locale.ROOT,
            "| %s | %s | %.1f | %.1f |",
            name,
            exact ? "exact mean" : "half inch",
            speed / 1e6,
            speed / slow));
  }

  /** The same moves under the same temperatures, the whole score summed up for each. */
  private static final class WholeSums {
    private final Model model;
    private final Dice dice = new Dice(1);
    private final Moves moves;
    private final State state;
    private final int[] variants;
    private final int[] slotOf;

    WholeSums(Model model, int[] dealt) {
      this.model = model;
      moves = new Moves(model, dice);
      state = new State(model);
      variants = dealt.clone();
      slotOf = new int[model.logs];
      java.util.Arrays.fill(slotOf, -1);
      for (int slot = 0; slot < variants.length; slot++) {
        slotOf[model.variantLog[variants[slot]]] = slot;
      }
      state.set(variants);
    }

    void run() {
      double square = model.grains * model.grains;
      for (long done = 0; done < WHOLE_MOVES; done++) {
        step(square * START.at((double) done / WHOLE_MOVES));
      }
    }

    private void step(double heat) {
      int slot = moves.slot();
      int log = model.variantLog[variants[slot]];
      int other = moves.near(log);
      if (other < 0 || !model.fits(other, slot)) {
        return;
      }
      int there = slotOf[other];
      if (there >= 0 && !model.fits(log, there)) {
        return;
      }
      long before = state.total;
      lay(slot, other, there, log);
      state.set(variants);
      if (state.total - before > moves.bound(heat)) {
        lay(slot, log, there, other);
        state.total = before;
      }
    }

    private void lay(int slot, int log, int there, int otherLog) {
      variants[slot] = model.firstVariant(log, slot);
      slotOf[log] = slot;
      slotOf[otherLog] = there;
      if (there >= 0) {
        variants[there] = model.firstVariant(otherLog, there);
      }
    }
  }
}
