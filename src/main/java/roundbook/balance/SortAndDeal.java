package roundbook.balance;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Deals logs off a list sorted by middle diameter, the larger low in the walls.
 *
 * <p>Each slot takes the largest log that fits and leaves a log for every other slot. The first cut
 * of each log is taken.
 */
final class SortAndDeal implements Balancer {
  @Override
  public BalanceResult solve(BalanceTask task, Effort effort) {
    Model model = new Model(Shortage.fillable(task));
    State state = new State(model);
    state.set(deal(model));
    return new BalanceResult(state, task);
  }

  /** Returns the variants that a sorted list deals out; the model must be fillable. */
  static int[] deal(Model model) {
    Supply supply = new Supply(model);
    supply.rounds();
    List<Deque<Integer>> piles = piles(supply);
    int[] variants = new int[model.slots.count];
    for (int slot : roundByRound(model)) {
      int log = model.slotPin[slot] >= 0 ? model.slotPin[slot] : pick(supply, piles, slot);
      variants[slot] = model.firstVariant(log, slot);
    }
    return variants;
  }

  private static List<Integer> roundByRound(Model model) {
    Slots slots = model.slots;
    return IntStream.range(0, slots.count)
        .boxed()
        .sorted(Comparator.comparingInt(slot -> slots.round(slots.courseOf[slot])))
        .toList();
  }

  private static List<Deque<Integer>> piles(Supply supply) {
    List<Deque<Integer>> piles = new ArrayList<>();
    supply.fits.forEach(fits -> piles.add(new ArrayDeque<>()));
    Model model = supply.model;
    IntStream.range(0, model.logs)
        .filter(log -> supply.logSort[log] >= 0)
        .boxed()
        .sorted(Comparator.comparingLong(log -> -mid(model, log)))
        .forEach(log -> piles.get(supply.logSort[log]).add(log));
    return piles;
  }

  private static int pick(Supply supply, List<Deque<Integer>> piles, int slot) {
    Model model = supply.model;
    int sort = supply.slotSort[slot];
    List<Integer> choices =
        IntStream.range(0, piles.size())
            .filter(pile -> supply.fits.get(pile).get(sort) && !piles.get(pile).isEmpty())
            .boxed()
            .sorted(Comparator.comparingLong(pile -> -mid(model, piles.get(pile).peek())))
            .toList();
    for (int pile : choices) {
      if (supply.use(pile, sort)) {
        return piles.get(pile).remove();
      }
    }
    throw new IllegalStateException("no log for slot " + slot);
  }

  /** Returns the middle diameter of a log's first cut for the first class it is long enough for. */
  static long mid(Model model, int log) {
    return IntStream.range(0, model.classes)
        .map(c -> c * model.logs + log)
        .filter(i -> model.first[i] < model.first[i + 1])
        .mapToLong(i -> model.fineMids[model.first[i]])
        .findFirst()
        .orElse(0);
  }
}
