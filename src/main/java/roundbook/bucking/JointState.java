package roundbook.bucking;

import java.util.Arrays;
import roundbook.bucking.BuckingTask.Cut;
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
  private final int[][] diameters;
  private final long[] sum;
  private final long[] size;
  private final long[] layer;
  private final long[] own;
  private final long[] waste;
  private final long fault;
  private final int[] changed = new int[3];
  private final Old[] old = new Old[3];
  private int changes;
  private long total;

  /** What lay in a slot. */
  private record Old(int bole, int from, boolean turned) {}

  JointState(BuckingTask task) {
    this.task = task;
    this.grains = new Grains(task);
    this.stations = new Stations(task);
    this.sides = task.sides().size();
    int places = task.places();
    int boles = task.boles().size();
    int slots = places + task.parting().places().size();
    this.bole = new int[slots];
    Arrays.fill(bole, -1);
    this.from = new int[slots];
    this.turned = new boolean[slots];
    this.parted = new PartedPlace[slots];
    this.rightOf = new int[places];
    this.at = new int[boles][Math.min(slots, 12)];
    this.count = new int[boles];
    this.diameters = new int[places][];
    Arrays.setAll(diameters, place -> new int[stations.count(place)]);
    this.sum = new long[task.rounds()];
    this.size = new long[task.rounds()];
    this.layer = new long[task.rounds()];
    this.own = new long[task.rounds()];
    this.waste = new long[boles];
    this.fault = Math.round(grains.grains(FAULT));
    for (int slot = places; slot < slots; slot++) {
      parted[slot] = task.parting().places().get(slot - places);
      parted[parted[slot].place()] = parted[slot];
      rightOf[parted[slot].place()] = slot;
    }
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
        : isParted(slot) ? parted[slot].left() : task.side(slot).raw();
  }

  /** Returns whether a stem may serve a slot. */
  boolean may(int stem, int slot) {
    return task.settled().allowed().test(stem, demand(slot, isParted(placeOf(slot))));
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
    old[changes++] = new Old(bole[slot], from[slot], turned[slot]);
    put(slot, stem, start, end);
  }

  /** Returns by how many grains the costs differ by the change that was begun. */
  long changed() {
    long before = total;
    for (int i = 0; i < changes; i++) {
      measure(placeOf(changed[i]));
    }
    for (int i = 0; i < changes; i++) {
      round(placeOf(changed[i]) / sides);
    }
    for (int i = 0; i < changes; i++) {
      int round = placeOf(changed[i]) / sides;
      layer(round);
      layer(Math.max(0, round - 1));
      waste(bole[changed[i]]);
      waste(old[i].bole());
    }
    return total - before;
  }

  /** Undoes the change that was begun. */
  void undo() {
    for (int i = changes - 1; i >= 0; i--) {
      Old was = old[i];
      old[i] = new Old(bole[changed[i]], 0, false);
      put(changed[i], was.bole(), was.from(), was.turned());
    }
    changed();
    keep();
  }

  /** Keeps the change that was begun. */
  void keep() {
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

  private void measure(int place) {
    int[] here = diameters[place];
    sum[place / sides] -= Stations.middle(here);
    Beside left = beside(place, isParted(place) ? !turned[place] : stations.buttsLeft(place));
    if (isParted(place)) {
      int right = rightOf[place];
      stations.measure(left, beside(right, !turned[right]), parted[place], here);
    } else {
      stations.measure(left, place, here);
    }
    sum[place / sides] += Stations.middle(here);
  }

  private Beside beside(int slot, boolean buttOut) {
    return new Beside(task.boles().get(bole[slot]), from[slot], raw(slot), buttOut);
  }

  /** Reckons every cost anew. */
  void settle() {
    for (int place = 0; place < diameters.length; place++) {
      measure(place);
    }
    for (int round = 0; round < size.length; round++) {
      round(round);
    }
    for (int round = 0; round < size.length; round++) {
      layer(round);
    }
    for (int stem = 0; stem < waste.length; stem++) {
      waste(stem);
    }
  }

  private void round(int round) {
    long given = task.settled().size(round);
    size[round] = given > 0 ? given : grains.size(sum[round], sides);
    int least = Integer.MAX_VALUE;
    int most = Integer.MIN_VALUE;
    long cost = 0;
    for (int place = round * sides; place < (round + 1) * sides; place++) {
      int mid = mid(place);
      least = Math.min(least, mid);
      most = Math.max(most, mid);
      cost += price(place, isParted(place));
      cost += isParted(place) ? price(rightOf[place], true) + thin(place) : 0;
    }
    cost += grains.spread(most - least);
    total += cost - own[round];
    own[round] = cost;
  }

  private long price(int slot, boolean beside) {
    double[][] prices = task.parting().prices();
    return bole[slot] < prices.length
        ? Math.round(grains.grains(prices[bole[slot]][demand(slot, beside)]))
        : 0;
  }

  /** Returns what corners of two pieces cost that are too thin for their round. */
  private long thin(int place) {
    long least = size[place / sides] - task.parting().thinner();
    return diameters[place][0] < least || diameters[place][2] < least ? fault : 0;
  }

  private void layer(int round) {
    if (round + 1 >= size.length) {
      return;
    }
    long below = size[round];
    long above = size[round + 1];
    long cost = grains.inversion(below, above);
    for (int side = 0; side < sides; side++) {
      boolean first = task.sides().get(side).first();
      long spacing = first ? 3 * below + above : below + 3 * above;
      cost += joint(round * sides + side, spacing);
    }
    total += cost - layer[round];
    layer[round] = cost;
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
    long cost = count[stem] == 0 ? 0 : grains.waste * (task.boles().get(stem).end(last) - used);
    total += cost - waste[stem];
    waste[stem] = cost;
  }

  /** Returns whether a piece can be cut there, but for the pieces of two slots. */
  boolean isFree(int stem, int start, int raw, int but, int orBut) {
    if (!task.boles().get(stem).holds(start, raw)) {
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
    return others < task.boles().get(stem).most();
  }

  /** Returns the sum of all costs, in grains. */
  long total() {
    return total;
  }

  /** Returns the cost of the wood skipped, in grains. */
  long wasted() {
    return Arrays.stream(waste).sum();
  }

  /** Returns the size of a round, in ticks. */
  long size(int round) {
    return size[round];
  }

  /** Returns the middle of a place's piece, in ticks. */
  int mid(int place) {
    return Stations.middle(diameters[place]);
  }

  /** Returns every gap at both inside faces and the middle of the joints, in ticks. */
  double[] gaps() {
    double[] gaps = new double[Math.max(0, size.length - 1) * sides * Stations.USUAL];
    int next = 0;
    for (int low = 0; low + sides < diameters.length; low++) {
      int high = low + sides;
      long below = size[low / sides];
      long above = size[high / sides];
      long spacing = task.side(low).first() ? 3 * below + above : below + 3 * above;
      for (int k = 0; k < Stations.USUAL; k++) {
        gaps[next++] = grains.gapTicks(spacing, (long) diameters[low][k] + diameters[high][k]);
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
