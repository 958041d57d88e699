package roundbook.bucking;

import java.util.Arrays;
import java.util.stream.IntStream;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.BuckingTask.Side;
import roundbook.bucking.Parting.PartedPlace;

/**
 * One piece or two in every place, and from which stems.
 *
 * <p>Pieces lie in slots: each place has one, for its whole log or the left one of two; after them
 * comes one for the right piece of each place that an opening cuts through.
 */
abstract class LaidPieces {
  /** The most pieces that one change lays elsewhere. */
  static final int MOST_CHANGES = 2;

  final BuckingTask task;
  final int sides;
  final int[] bole;
  final int[] from;
  final boolean[] turned;
  final int[][] at;
  final int[] count;
  final Bole[] boles;
  final PartedPlace[] parted;
  final int[] changed = new int[MOST_CHANGES];
  final int[] oldBole = new int[MOST_CHANGES];
  int changes;
  private final int[] oldFrom = new int[MOST_CHANGES];
  private final boolean[] oldTurned = new boolean[MOST_CHANGES];
  private final int places;
  private final int[] rightOf;
  final Side[] walls;
  private final boolean[][] may;

  /** By the numbers of what is to be served, the stems that may serve it. */
  final int[][] serving;

  LaidPieces(BuckingTask task) {
    this.task = task;
    this.sides = task.sides().size();
    this.places = task.places();
    int slots = places + task.parting().places().size();
    this.boles = task.boles().toArray(Bole[]::new);
    this.walls = task.sides().toArray(Side[]::new);
    this.bole = new int[slots];
    Arrays.fill(bole, -1);
    this.from = new int[slots];
    this.turned = new boolean[slots];
    this.parted = new PartedPlace[slots];
    this.rightOf = new int[places];
    this.at = new int[boles.length][Math.min(slots, 12)];
    this.count = new int[boles.length];
    for (int slot = places; slot < slots; slot++) {
      parted[slot] = task.parting().places().get(slot - places);
      parted[parted[slot].place()] = parted[slot];
      rightOf[parted[slot].place()] = slot;
    }
    this.may = new boolean[boles.length][2 * slots - places];
    for (int stem = 0; stem < boles.length; stem++) {
      for (int demand = 0; demand < may[stem].length; demand++) {
        may[stem][demand] = task.settled().allowed().test(stem, demand);
      }
    }
    this.serving = new int[2 * slots - places][];
    Arrays.setAll(serving, this::serving);
  }

  private int[] serving(int demand) {
    return IntStream.range(0, boles.length).filter(stem -> may[stem][demand]).toArray();
  }

  /** Returns the place that a slot is of. */
  int placeOf(int slot) {
    return slot < places ? slot : parted[slot].place();
  }

  /** Returns the slot of the right piece of a place that an opening cuts through; 0 of others. */
  int rightOf(int place) {
    return rightOf[place];
  }

  /** Returns whether two pieces lie in a place. */
  boolean isParted(int place) {
    return rightOf[place] > 0 && bole[rightOf[place]] >= 0;
  }

  /** Returns the steps of the piece in a slot; of an empty one those that it would have. */
  int raw(int slot) {
    return slot >= places
        ? parted[slot].right()
        : isParted(slot) ? parted[slot].left() : walls[slot % sides].raw();
  }

  /** Returns whether a stem may serve a slot. */
  boolean may(int stem, int slot) {
    return may[stem][demand(slot)];
  }

  /** Returns the number by which the task says which stems may serve a slot as it is now. */
  int demand(int slot) {
    return demand(slot, isParted(placeOf(slot)));
  }

  /** Returns the number by which the task says which stems may serve a slot. */
  int demand(int slot, boolean beside) {
    if (!beside) {
      return slot;
    }
    return slot < places ? 2 * rightOf[slot] - places : 2 * slot - places + 1;
  }

  /** Puts a piece into a slot, or none for a stem below 0; no cost is reckoned. */
  void put(int slot, int stem, int start, boolean end) {
    take(slot);
    turned[slot] = end;
    bole[slot] = stem;
    from[slot] = start;
    if (stem < 0) {
      return;
    }
    if (count[stem] == at[stem].length) {
      at[stem] = Arrays.copyOf(at[stem], 2 * count[stem]);
    }
    at[stem][count[stem]++] = slot;
  }

  /** Puts a piece into a slot, as a part of a change that is kept or undone. */
  void change(int slot, int stem, int start, boolean end) {
    changed[changes] = slot;
    oldBole[changes] = bole[slot];
    oldFrom[changes] = from[slot];
    oldTurned[changes++] = turned[slot];
    put(slot, stem, start, end);
  }

  /** Puts back what the change that was begun took away, the last first. */
  void putBack() {
    while (changes > 0) {
      changes--;
      put(changed[changes], oldBole[changes], oldFrom[changes], oldTurned[changes]);
    }
  }

  /** Leaves the change that was begun as it is. */
  void leave() {
    changes = 0;
  }

  /** Returns whether no change before was made in the same place. */
  boolean isFirst(int change) {
    return change == 0 || placeOf(changed[0]) != placeOf(changed[change]);
  }

  private void take(int slot) {
    int stem = bole[slot];
    if (stem < 0) {
      return;
    }
    int i = 0;
    while (at[stem][i] != slot) {
      i++;
    }
    at[stem][i] = at[stem][--count[stem]];
    bole[slot] = -1;
  }

  /** Returns whether a piece can be cut there, but for the pieces of two slots. */
  boolean isFree(int stem, int start, int raw, int but, int orBut) {
    if (!boles[stem].holds(start, raw)) {
      return false;
    }
    int others = 0;
    for (int i = 0; i < count[stem]; i++) {
      int slot = at[stem][i];
      if (slot != but && slot != orBut) {
        others++;
        int there = from[slot];
        boolean apart =
            there + raw(slot) + task.kerf() <= start || start + raw + task.kerf() <= there;
        if (!apart) {
          return false;
        }
      }
    }
    return others < boles[stem].most();
  }

  /** Everything that lies in the slots, to come back to. */
  record Laid(int[] bole, int[] from, boolean[] turned) {}

  /** Returns what lies in the slots now. */
  Laid laid() {
    return new Laid(bole.clone(), from.clone(), turned.clone());
  }

  /** Returns the piece in a slot. */
  Cut cut(int slot) {
    return new Cut(bole[slot], from[slot], raw(slot));
  }
}
