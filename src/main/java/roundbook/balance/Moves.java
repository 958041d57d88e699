package roundbook.balance;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What to try next: a slot by chance, and for its log another one of like size.
 *
 * <p>How far off in the ranking by diameter the other log stands is drawn log-uniformly, so that
 * small and large exchanges are tried alike often whatever the size of the pile.
 */
final class Moves {
  private static final int TABLE = 1 << 11;

  private final Model model;
  private final Dice dice;
  private final int[] ranked;
  private final int[] rank;
  private final int[] free;
  private final int[] stride = new int[TABLE];
  private final double[] minusLog = new double[TABLE];
  private int reach = TABLE;

  Moves(Model model, Dice dice) {
    this.model = model;
    this.dice = dice;
    ranked =
        IntStream.range(0, model.logs)
            .filter(log -> model.logPin[log] == -1)
            .boxed()
            .sorted(Comparator.comparingLong(log -> SortAndDeal.mid(model, log)))
            .mapToInt(Integer::intValue)
            .toArray();
    rank = new int[model.logs];
    for (int i = 0; i < ranked.length; i++) {
      rank[ranked[i]] = i;
    }
    free = IntStream.range(0, model.slots.count).filter(s -> model.slotPin[s] < 0).toArray();
    double reach = StrictMath.log(Math.max(2, ranked.length));
    for (int i = 0; i < TABLE; i++) {
      double u = (i + 0.5) / TABLE;
      stride[i] = (int) StrictMath.exp(u * reach);
      minusLog[i] = -StrictMath.log(u);
    }
  }

  /** Returns whether every slot is pinned, so that there is nothing to try. */
  boolean none() {
    return free.length == 0;
  }

  /**
   * Returns how much worse the next choice may be at a temperature, as Metropolis would have it.
   */
  long bound(double heat) {
    return (long) (heat * minusLog[(int) (dice.next() >>> 53)]);
  }

  /** Returns a slot that is not pinned. */
  int slot() {
    return slot((int) dice.next());
  }

  /** Returns a slot that is not pinned, by 32 bits of chance. */
  int slot(int chance) {
    return free[(int) ((chance & 0xFFFF_FFFFL) * free.length >>> 32)];
  }

  /**
   * Bounds how far off in the ranking other logs are looked for.
   *
   * @param power power of the number of logs that is as far as they may be, at most one
   */
  void reach(double power) {
    reach = (int) (power * TABLE);
  }

  /** Returns a log of like size to another, or -1. */
  int near(int log) {
    long chance = dice.next();
    int far = stride[((int) (chance >>> 1) & TABLE - 1) * reach / TABLE];
    int at = rank[log] + (chance < 0 ? far : -far);
    return at < 0 || at >= ranked.length ? -1 : ranked[at];
  }

  /** Returns one of the ways to cut a log for a slot. */
  int variant(int log, int slot) {
    int count = model.variants(log, slot);
    return model.firstVariant(log, slot) + (count == 1 ? 0 : dice.below(count));
  }
}
