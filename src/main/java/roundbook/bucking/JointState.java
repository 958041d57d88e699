package roundbook.bucking;

import java.util.Arrays;
import java.util.stream.IntStream;
import roundbook.bucking.Stations.Beside;

/** What the pieces that lie in their places cost, kept up to date while they change. */
final class JointState extends LaidPieces {
  private static final double FAULT = 10;

  final Grains grains;
  private final Stations stations;
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
  private final boolean[] resized = new boolean[MOST_CHANGES];

  JointState(BuckingTask task) {
    super(task);
    this.grains = new Grains(task);
    this.stations = new Stations(task);
    int places = task.places();
    int rounds = task.rounds();
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
    this.prices = new long[boles.length][2 * bole.length - places];
    for (int stem = 0; stem < boles.length; stem++) {
      int number = stem;
      Arrays.setAll(prices[stem], demand -> price(number, demand));
    }
  }

  private long price(int stem, int demand) {
    double[][] priced = task.parting().prices();
    return stem < priced.length ? Math.round(grains.grains(priced[stem][demand])) : 0;
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

  private void swap(int place) {
    int[] here = diameters[place];
    diameters[place] = spare[place];
    spare[place] = here;
  }

  /** Undoes the change that was begun, whose cost was asked for. */
  void undo() {
    for (int i = 0; i < changes; i++) {
      if (isFirst(i)) {
        swap(placeOf(changed[i]));
      }
    }
    sum.undo();
    size.undo();
    costs.undo();
    putBack();
  }

  /** Keeps the change that was begun. */
  void keep() {
    sum.keep();
    size.keep();
    costs.keep();
    leave();
  }

  /** Measures a place anew, which was measured so before. */
  private void measure(int place, int[] before) {
    int[] here = diameters[place];
    Beside left = beside(place, isParted(place) ? !turned[place] : stations.buttsLeft(place));
    if (isParted(place)) {
      int right = rightOf(place);
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
      cost += two ? prices[bole[rightOf(place)]][demand(rightOf(place), true)] + thin(place) : 0;
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

  /** Lays what lay in the slots, and reckons every cost anew. */
  void lay(Laid laid) {
    for (int slot = 0; slot < bole.length; slot++) {
      put(slot, laid.bole()[slot], laid.from()[slot], laid.turned()[slot]);
    }
    settle();
  }
}
