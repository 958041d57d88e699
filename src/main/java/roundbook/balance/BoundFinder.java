package roundbook.balance;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import roundbook.balance.Annealer.Schedule;
import roundbook.balance.BoundWay.Pick;

/**
 * Makes choices of the cheapest ways that a bound comes upon, and keeps the best.
 *
 * <p>On such ways a log may lie twice or a round have several sizes. Each log stays where it lies
 * first, others go where none is left, and a short warm spell mends what does not agree.
 */
final class BoundFinder {
  /** Moves a place of a spell. */
  private static final long MOVES = 4_000;

  /** Temperatures of a spell, in scores of a place. */
  private static final double WARM = 1.5;

  private static final double COLD = 0.05;

  /** Steps that are followed for a move of a spell, so that spells take a small share. */
  private static final long STEPS = 20;

  private final Model model;
  private final Effort effort;
  private final double known;
  private LooseAnneal annealer;
  private int[] best;
  private double least;
  private long steps;

  /**
   * Knows of no choice yet.
   *
   * @param known the score of the choice that is to be bettered, in unit²
   */
  BoundFinder(Model model, double known, Effort effort) {
    this.model = model;
    this.known = known;
    this.effort = effort;
    least = known;
  }

  /** Returns another, which knows of no choice yet, for a part that is looked at beside others. */
  BoundFinder another() {
    return new BoundFinder(model, known, effort);
  }

  /** Returns the best choice found, with a score that no choice is under: its own if nearly so. */
  Bound bound(double under) {
    double score = under > least * (1 - BoundSearch.NOTHING_LEFT) ? least : Math.max(0, under);
    if (best == null) {
      return new Bound(score, Optional.empty());
    }
    State state = new State(model);
    state.set(best);
    return new Bound(score, Optional.of(new BalanceResult(state, model.task)));
  }

  /** Returns what a choice costs that needs not be looked at, in units. */
  double all() {
    return BoundCosts.KNOWN * (1 - BoundSearch.NOTHING_LEFT / 2) * least / known;
  }

  /** Takes what another has found. */
  void join(BoundFinder other) {
    offer(other.best, other.least);
  }

  /** Makes a choice of the ways of a part now and then, after so many steps were followed. */
  void pass(List<Pick> picks, long followed) {
    steps += followed;
    if (steps >= STEPS * MOVES * model.slots.count) {
      steps = 0;
      look(picks);
    }
  }

  /** Makes a choice of some ways. */
  void look(List<Pick> picks) {
    if (annealer == null) { // its tables are large, and a part may never be looked at
      annealer = new LooseAnneal(model, new Dice(effort.seed()));
    }
    int places = model.slots.count;
    double each = least / places;
    Schedule heats = new Schedule(WARM * each, COLD * each);
    annealer.from(laid(picks));
    annealer.run(heats, 0, done -> true);
    annealer.run(heats, MOVES * places, done -> !effort.stop().getAsBoolean());
    offer(annealer.best(), model.area(annealer.bestTotal()));
  }

  private void offer(int[] variants, double score) {
    if (variants != null && score < least) {
      best = variants;
      least = score;
    }
  }

  /** Returns a variant for each slot, as many as can be from where ways have them. */
  private int[] laid(List<Pick> picks) {
    int[] variants = new int[model.slots.count];
    int[] wanted = new int[model.slots.count];
    int[] slotOf = new int[model.logs];
    Arrays.fill(variants, -1);
    Arrays.fill(wanted, -1);
    Arrays.fill(slotOf, -1);
    for (Pick pick : picks) {
      int log = model.variantLog[pick.variant()];
      for (int i = 0; i < pick.count(); i++) {
        int slot = pick.side().slot(pick.round(), wanted);
        wanted[slot] = model.mids[pick.variant()];
        if (slotOf[log] < 0) {
          slotOf[log] = slot;
          variants[slot] = pick.variant();
        }
      }
    }
    for (int slot = 0; slot < variants.length; slot++) {
      if (variants[slot] < 0) {
        fill(slot, wanted[slot], variants, slotOf, new boolean[model.logs]);
      }
    }
    return variants;
  }

  /** Fills a slot with a log of about a middle diameter; logs may change places for it. */
  private boolean fill(int slot, int mid, int[] variants, int[] slotOf, boolean... seen) {
    int[] logs =
        IntStream.range(0, model.logs)
            .filter(log -> !seen[log] && model.fits(log, slot))
            .boxed()
            .sorted(
                Comparator.<Integer, Boolean>comparing(log -> slotOf[log] >= 0)
                    .thenComparing(
                        log -> Math.abs(model.mids[model.firstVariant(log, slot)] - mid)))
            .mapToInt(log -> log)
            .toArray();
    for (int log : logs) {
      int there = slotOf[log];
      if (!seen[log]) {
        seen[log] = true;
        if (there < 0 || fill(there, model.mids[variants[there]], variants, slotOf, seen)) {
          slotOf[log] = slot;
          variants[slot] = model.firstVariant(log, slot);
          return true;
        }
      }
    }
    return false;
  }
}
