package roundbook.bucking;

import java.util.Arrays;
import java.util.stream.IntStream;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.BuckingTask.Side;
import roundbook.bucking.Parting.PartedPlace;
import roundbook.bucking.Stations.Beside;

/**
 * One piece or two in every place, and what that costs, kept up to date while pieces change.
 *
 * <p>Pieces lie in slots: each place has one, for its whole log or the left one of two; after them
 * comes one for the right piece of each place that an opening cuts through.
 */
final class JointState {
  private static final double FAULT = 10;
  private static final int MOST_CHANGES = 2;

  final BuckingTask task;
  final Grains grains;
  final int sides;
  final int[] bole;
  final int[] from;
  final boolean[] turned;
  final int[][] at;
  final int[] count;
  private final Stations stations;
  private final PartedPlace[] parted;
  private final int[] rightOf;
  private final Bole[] boles;
  private final Side[] walls;
  private final boolean[][] may;
  private final long[][] prices;

  /** Of each place its diameters at the stations, and those that it had before a change. */
  private final int[][] diameters;

  private final int[][] spare;
  private final Ledger sum;
  private final Ledger size;

  /** What rounds cost by themselves, what larger ones over smaller ones, joints, skipped wood. */
  private final Ledger costs;

  private final int inversions;
  private final int joints;
  private final int waste;
  private final long fault;
  private final int[] changed = new int[MOST_CHANGES];
  private final int[] oldBole = new int[MOST_CHANGES];
  private final int[] oldFrom = new int[MOST_CHANGES];
  private final boolean[] oldTurned = new boolean[MOST_CHANGES];
  private final boolean[] resized = new boolean[MOST_CHANGES];
  private int changes;

  JointState(BuckingTask task) {
    this.task = task;
    this.grains = new Grains(task);
    this.stations = new Stations(task);
    this.sides = task.sides().size();
    int places = task.places();
    int rounds = task.rounds();
    int slots = places + task.parting().places().size();
    this.boles = task.boles().toArray(Bole[]::new);
    this.walls = task.sides().toArray(Side[]::new);
    this.may = new boolean[boles.length][2 * slots - places];
    this.prices = new long[boles.length][2 * slots - places];
    this.bole = new int[slots];
    Arrays.fill(bole, -1);
    this.from = new int[slots];
    this.turned = new boolean[slots];
    this.parted = new PartedPlace[slots];
    this.rightOf = new int[places];
    this.at = new int[boles.length][Math.min(slots, 12)];
    this.count = new int[boles.length];
    this.diameters = new int[places][];
    Arrays.setAll(diameters, place -> new int[stations.count(place)]);
    this.spare = new int[places][];
    Arrays.setAll(spare, place -> new int[stations.count(place)]);
    this.sum = new Ledger(rounds);
    this.size = new Ledger(rounds);
    this.inversions = rounds;
    this.joints = inversions + rounds;
    this.waste = joints + places;
    this.costs = new Ledger(waste + boles.length);
    this.fault = Math.round(grains.grains(FAULT));
    for (int slot = places; slot < slots; slot++) {
      parted[slot] = task.parting().places().get(slot - places);
      parted[parted[slot].place()] = parted[slot];
      rightOf[parted[slot].place()] = slot;
    }
    for (int stem = 0; stem < boles.length; stem++) {
      for (int demand = 0; demand < may[stem].length; demand++) {
        may[stem][demand] = task.settled().allowed().test(stem, demand);
        prices[stem][demand] = price(stem, demand);
      }
    }
  }

  private long price(int stem, int demand) {
    double[][] priced = task.parting().prices();
    return stem < priced.length ? Math.round(grains.grains(priced[stem][demand])) : 0;
  }

  /** Returns the place that a slot is of. */
  int placeOf(int slot) {
    return slot < diameters.length ? slot : parted[slot].place();
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
    return slot >= diameters.length
        ? parted[slot].right()
        : isParted(slot) ? parted[slot].left() : walls[slot % sides].raw();
  }

  /** Returns whether a stem may serve a slot. */
  boolean may(int stem, int slot) {
    return may[stem][demand(slot, isParted(placeOf(slot)))];
  }

  /** Returns the number by which the task says which stems may serve a slot. */
  int demand(int slot, boolean beside) {
    int places = diameters.length;
    if (!beside) {
      return slot;
    }
    return slot < places ? 2 * rightOf[slot] - places : 2 * slot - places + 1;
  }

  /** Puts a piece into a slot, or none for a stem below 0; costs stay till {@link #settle}. */
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

  /** Returns by how many grains the costs differ by the change that was begun. */
  long changed() {
    long before = total();
    for (int i = 0; i < changes; i++) {
      if (isFirst(i)) {
        swap(placeOf(changed[i]));
        measure(placeOf(changed[i]), spare[placeOf(changed[i])]);
      }
    }
    for (int i = 0; i < changes; i++) {
      resized[i] = round(placeOf(changed[i]) / sides);
    }
    for (int i = 0; i < changes; i++) {
      int place = placeOf(changed[i]);
      if (resized[i]) {
        layer(place / sides);
        layer(place / sides - 1);
      } else {
        joint(place);
        joint(place - sides);
      }
      waste(bole[changed[i]]);
      waste(oldBole[i]);
    }
    return total() - before;
  }

  /** Returns whether no change before was made in the same place. */
  private boolean isFirst(int change) {
    return change == 0 || placeOf(changed[0]) != placeOf(changed[change]);
  }

  private void swap(int place) {
    int[] here = diameters[place];
    diameters[place] = spare[place];
    spare[place] = here;
  }

  /** Undoes the change that was begun, whose cost was asked for. */
  void undo() {
    for (int i = changes - 1; i >= 0; i--) {
      put(changed[i], oldBole[i], oldFrom[i], oldTurned[i]);
      if (isFirst(i)) {
        swap(placeOf(changed[i]));
      }
    }
    sum.undo();
    size.undo();
    costs.undo();
    changes = 0;
  }

  /** Keeps the change that was begun. */
  void keep() {
    sum.keep();
    size.keep();
    costs.keep();
    changes = 0;
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

  /** Measures a place anew, which was measured so before. */
  private void measure(int place, int[] before) {
    int[] here = diameters[place];
    Beside left = beside(place, isParted(place) ? !turned[place] : stations.buttsLeft(place));
    if (isParted(place)) {
      int right = rightOf[place];
      stations.measure(left, beside(right, !turned[right]), parted[place], here);
    } else {
      stations.measure(left, place, here);
    }
    int round = place / sides;
    sum.set(round, sum.get(round) + Stations.middle(here) - Stations.middle(before));
  }

  private Beside beside(int slot, boolean buttOut) {
    return new Beside(boles[bole[slot]], from[slot], raw(slot), buttOut);
  }

  /** Reckons every cost anew. */
  void settle() {
    for (int place = 0; place < diameters.length; place++) {
      measure(place, diameters[place].clone());
    }
    for (int round = 0; round < task.rounds(); round++) {
      round(round);
    }
    for (int round = 0; round < task.rounds(); round++) {
      layer(round);
    }
    for (int stem = 0; stem < boles.length; stem++) {
      waste(stem);
    }
    keep();
  }

  /** Reckons a round anew; returns whether its size is another now. */
  private boolean round(int round) {
    long given = task.settled().size(round);
    boolean other = size.set(round, given > 0 ? given : grains.size(sum.get(round), sides));
    int least = Integer.MAX_VALUE;
    int most = Integer.MIN_VALUE;
    long cost = 0;
    for (int place = round * sides; place < (round + 1) * sides; place++) {
      int mid = mid(place);
      least = Math.min(least, mid);
      most = Math.max(most, mid);
      boolean two = isParted(place);
      cost += prices[bole[place]][demand(place, two)];
      cost += two ? prices[bole[rightOf[place]]][demand(rightOf[place], true)] + thin(place) : 0;
    }
    costs.set(round, cost + grains.spread(most - least));
    return other;
  }

  /** Returns what corners of two pieces cost that are too thin for their round. */
  private long thin(int place) {
    long least = size(place / sides) - task.parting().thinner();
    return diameters[place][0] < least || diameters[place][2] < least ? fault : 0;
  }

  /** Reckons anew what lies between a round and the one above. */
  private void layer(int round) {
    if (round >= 0 && round + 1 < task.rounds()) {
      costs.set(inversions + round, grains.inversion(size(round), size(round + 1)));
      for (int side = 0; side < sides; side++) {
        joint(round * sides + side);
      }
    }
  }

  /** Reckons anew the joint over a place. */
  private void joint(int place) {
    if (place >= 0 && place + sides < diameters.length) {
      costs.set(joints + place, joint(place, spacing(place)));
    }
  }

  /** Returns four times the spacing of the centre lines of a joint without the gap wanted. */
  private long spacing(int low) {
    long below = size(low / sides);
    long above = size(low / sides + 1);
    return walls[low % sides].first() ? 3 * below + above : below + 3 * above;
  }

  private long joint(int place, long spacing) {
    int[] low = diameters[place];
    int[] high = diameters[place + sides];
    boolean beside = isParted(place) || isParted(place + sides);
    long cost = 0;
    boolean outside = false;
    for (int k = 0; k < (beside ? low.length : Stations.USUAL); k++) {
      long thick = (long) low[k] + high[k];
      cost += grains.gap(spacing, thick);
      outside |= beside && grains.isOutside(spacing, thick, task.parting());
    }
    return outside ? cost + fault : cost;
  }

  private void waste(int stem) {
    if (stem < 0) {
      return;
    }
    int last = 0;
    int used = 0;
    for (int i = 0; i < count[stem]; i++) {
      int slot = at[stem][i];
      last = Math.max(last, from[slot] + raw(slot));
      used += raw(slot);
    }
    costs.set(waste + stem, count[stem] == 0 ? 0 : grains.waste * (boles[stem].end(last) - used));
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

  /** Returns the sum of all costs, in grains. */
  long total() {
    return costs.total();
  }

  /** Returns the cost of the wood skipped, in grains. */
  long wasted() {
    return IntStream.range(0, boles.length).mapToLong(stem -> costs.get(waste + stem)).sum();
  }

  /** Returns the size of a round, in ticks. */
  long size(int round) {
    return size.get(round);
  }

  /** Returns the middle of a place's piece, in ticks. */
  int mid(int place) {
    return Stations.middle(diameters[place]);
  }

  /** Returns every gap at both inside faces and the middle of the joints, in ticks. */
  double[] gaps() {
    double[] gaps = new double[Math.max(0, task.rounds() - 1) * sides * Stations.USUAL];
    int next = 0;
    for (int low = 0; low + sides < diameters.length; low++) {
      int high = low + sides;
      for (int k = 0; k < Stations.USUAL; k++) {
        gaps[next++] = grains.gapTicks(spacing(low), (long) diameters[low][k] + diameters[high][k]);
      }
    }
    return gaps;
  }

  /** Everything that lies in the slots, to come back to. */
  record Laid(int[] bole, int[] from, boolean[] turned) {}

  /** Returns what lies in the slots now. */
  Laid laid() {
    return new Laid(bole.clone(), from.clone(), turned.clone());
  }

  /** Lays what lay in the slots, and reckons every cost anew. */
  void lay(Laid laid) {
    for (int slot = 0; slot < bole.length; slot++) {
      put(slot, laid.bole()[slot], laid.from()[slot], laid.turned()[slot]);
    }
    settle();
  }

  /** Returns the piece in a slot. */
  Cut cut(int slot) {
    return new Cut(bole[slot], from[slot], raw(slot));
  }
}
