package roundbook.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Choices that are bettered together, as in a memetic search.
 *
 * <p>Two good choices differ in the sizes of some rounds. Crossed, the lower rounds of one go under
 * the upper rounds of the other, so that what is good in both can meet. A new choice takes the
 * place of the worst, or of the one that it was made from where it is better; none stands twice.
 */
final class Population {
  /** Of so many choices crossed the best is taken; of twelve, sets grow alike too soon. */
  private static final int CROSSED = 4;

  private final Model model;
  private final Dice dice;
  private final State state;
  private final List<Member> members = new ArrayList<>();
  private boolean spread;

  Population(Model model, Dice dice) {
    this.model = model;
    this.dice = dice;
    state = new State(model);
  }

  /** A choice and its score in squared grains. */
  record Member(int[] variants, long total) {}

  /** Adds a choice. */
  void add(Member member) {
    members.add(member);
  }

  /** Says whether no two choices may have the same sizes of rounds. */
  void spread(boolean kept) {
    spread = kept;
  }

  /** Keeps the best choices, so many. */
  void keep(int count) {
    members.sort(Comparator.comparingLong(Member::total));
    members.subList(Math.min(count, members.size()), members.size()).clear();
  }

  /** Returns the choice of the least score. */
  Member best() {
    return members.stream().min(Comparator.comparingLong(Member::total)).orElseThrow();
  }

  /** Returns one of the choices by chance. */
  Member any() {
    return members.get(dice.below(members.size()));
  }

  /** Takes in what the choices of another population have that is new. */
  void join(Population other) {
    other.members.stream().filter(member -> !has(member)).forEach(members::add);
  }

  /** Returns whether the best scores of two populations differ by no more than a share. */
  boolean isNear(Population other, double share) {
    long one = best().total();
    long two = other.best().total();
    return Math.abs(one - two) <= share * Math.min(one, two);
  }

  /** Takes in a new choice in place of a worse one, made from one of the choices or from two. */
  void offer(Member made, Optional<Member> from) {
    if (has(made)) {
      return;
    }
    int place = place(made, from);
    if (made.total() < members.get(place).total()) {
      members.set(place, made);
    }
  }

  private boolean has(Member made) {
    return members.stream().anyMatch(member -> member.total() == made.total());
  }

  /** Returns the number of the choice that a new one has to be better than. */
  private int place(Member made, Optional<Member> from) {
    int like = spread ? like(made) : -1;
    if (like >= 0) {
      return like;
    }
    for (int i = 0; i < members.size(); i++) {
      boolean source = from.isPresent() && from.get() == members.get(i);
      if (source && made.total() < members.get(i).total()) {
        return i;
      }
    }
    return worst();
  }

  private int worst() {
    return IntStream.range(0, members.size())
        .boxed()
        .max(Comparator.comparingLong(i -> members.get(i).total()))
        .orElseThrow();
  }

  /** Returns the number of the choice with the same sizes as another, or -1. */
  private int like(Member made) {
    long[] sizes = sizes(made);
    return IntStream.range(0, members.size())
        .filter(i -> Arrays.equals(sizes, sizes(members.get(i))))
        .findFirst()
        .orElse(-1);
  }

  /**
   * Returns the sizes of all rounds; exact means to the nearest half of what the middle diameters
   * of a round may differ by, for else no two were alike.
   */
  private long[] sizes(Member member) {
    long[] sums = new long[model.slots.courses()];
    for (int slot = 0; slot < member.variants().length; slot++) {
      sums[model.slots.courseOf[slot]] += model.fineMids[member.variants()[slot]];
    }
    Aims aims = model.task.aims();
    long step = Math.max(1, aims.sizeStep() == 0 ? aims.mostSpread() / 2 : aims.sizeStep());
    Aims stepped = aims.withSizeStep(step);
    for (int c = 0; c < sums.length; c++) {
      sums[c] = stepped.size(sums[c], model.slots.courseSlot[c + 1] - model.slots.courseSlot[c]);
    }
    return sums;
  }

  /**
   * Returns a choice of the lower rounds of one member and the upper rounds of another: of a few
   * such, the one of the least score that none of the members has.
   */
  int[] cross() {
    int[] best = crossed();
    long least = Long.MAX_VALUE;
    for (int i = 0; i < CROSSED; i++) {
      int[] made = i == 0 ? best : crossed();
      state.set(made);
      if (state.total < least && !has(new Member(made, state.total))) {
        least = state.total;
        best = made;
      }
    }
    return best;
  }

  private int[] crossed() {
    int[] low = any().variants();
    int[] high = any().variants();
    int from = model.slots.courseSlot[1 + dice.below(Math.max(1, model.slots.courses() - 1))];
    int[] made = low.clone();
    BitSet used = new BitSet();
    for (int slot = 0; slot < from; slot++) {
      used.set(model.variantLog[low[slot]]);
    }
    BitSet open = new BitSet();
    for (int slot = from; slot < made.length; slot++) {
      open.set(slot, used.get(model.variantLog[high[slot]]));
      used.set(model.variantLog[high[slot]]);
      made[slot] = high[slot];
    }
    return fill(made, open, used) ? made : low;
  }

  /** Fills slots whose logs lie elsewhere already; false when nothing fits. */
  private boolean fill(int[] made, BitSet open, BitSet used) {
    for (int slot = open.nextSetBit(0); slot >= 0; slot = open.nextSetBit(slot + 1)) {
      made[slot] = nearest(made[slot], slot, used);
      if (made[slot] < 0) {
        return false;
      }
      used.set(model.variantLog[made[slot]]);
    }
    return true;
  }

  /** Returns the first cut of the unused log nearest in size that fits, or -1. */
  private int nearest(int wanted, int slot, BitSet used) {
    int found = -1;
    long least = Long.MAX_VALUE;
    for (int log = 0; log < model.logs; log++) {
      if (!used.get(log) && model.fits(log, slot)) {
        int variant = model.firstVariant(log, slot);
        long off = Math.abs(model.mids[variant] - model.mids[wanted]);
        if (off < least) {
          least = off;
          found = variant;
        }
      }
    }
    return found;
  }
}
