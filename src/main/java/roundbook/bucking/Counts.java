package roundbook.bucking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;

/**
 * Whether stems hold a piece of the right length for every place, and one way to cut them so.
 *
 * <p>Exact for lengths: every number of pieces of each length that a stem can give is tried against
 * those of all others, by a table over how many of each length are cut already. Which stem serves
 * which place besides is left to the search.
 */
public final class Counts {
  private static final int NEVER = Integer.MAX_VALUE / 2;

  private final BuckingTask task;
  private final int[] lengths;
  private final int[] wanted;
  private final int[] radix;
  private final int states;

  private Counts(BuckingTask task) {
    this.task = task;
    this.lengths = task.lengths();
    this.wanted = wanted();
    this.radix = new int[lengths.length];
    int all = 1;
    for (int i = 0; i < lengths.length; i++) {
      radix[i] = all;
      all *= wanted[i] + 1;
    }
    this.states = all;
  }

  /** Returns the largest number of rounds up to the task's for which the stems hold the pieces. */
  public static int rounds(BuckingTask task) {
    int rounds = task.rounds();
    while (rounds > 0 && cuts(task.withRounds(rounds)).isEmpty()) {
      rounds--;
    }
    return rounds;
  }

  /**
   * Returns pieces for all places that are not settled, in no order, from as few stems as can be;
   * empty where the stems do not hold them.
   */
  public static Optional<List<Cut>> cuts(BuckingTask task) {
    return new Counts(task).cuts();
  }

  private int[] wanted() {
    int[] counts = new int[lengths.length];
    for (int place = 0; place < task.places(); place++) {
      if (task.settled().piece(place) == null) {
        counts[index(task.side(place).raw())]++;
      }
    }
    return counts;
  }

  private int index(int raw) {
    return IntStream.range(0, lengths.length).filter(i -> lengths[i] == raw).findFirst().orElse(-1);
  }

  private Optional<List<Cut>> cuts() {
    int boles = task.boles().size();
    int[] least = new int[states];
    Arrays.fill(least, NEVER);
    least[0] = 0;
    int[][] from = new int[boles][];
    List<List<int[]>> ways = new ArrayList<>();
    for (int bole = 0; bole < boles; bole++) {
      ways.add(ways(bole));
      from[bole] = pass(least, ways.get(bole));
    }
    return least[states - 1] < NEVER ? Optional.of(trace(from, ways)) : Optional.empty();
  }

  /** Adds a stem to the table; returns for each state which way of the stem led there, from 1. */
  private int[] pass(int[] least, List<int[]> ways) {
    int[] before = least.clone();
    int[] by = new int[states];
    for (int way = 0; way < ways.size(); way++) {
      int step = state(ways.get(way));
      for (int at = 0; at + step < states; at++) {
        if (before[at] + 1 < least[at + step] && goesOn(at, ways.get(way))) {
          least[at + step] = before[at] + 1;
          by[at + step] = way + 1;
        }
      }
    }
    return by;
  }

  private boolean goesOn(int state, int[] way) {
    for (int i = 0; i < way.length; i++) {
      if (state / radix[i] % (wanted[i] + 1) + way[i] > wanted[i]) {
        return false;
      }
    }
    return true;
  }

  private int state(int[] counts) {
    int state = 0;
    for (int i = 0; i < counts.length; i++) {
      state += counts[i] * radix[i];
    }
    return state;
  }

  private List<Cut> trace(int[][] from, List<List<int[]>> ways) {
    List<Cut> cuts = new ArrayList<>();
    int at = states - 1;
    for (int bole = from.length - 1; bole >= 0; bole--) {
      int way = from[bole][at];
      if (way > 0) {
        int[] counts = ways.get(bole).get(way - 1);
        cuts.addAll(laid(bole, counts));
        at -= state(counts);
      }
    }
    return cuts;
  }

  /** Returns every number of pieces of each length that a stem can give, none left out. */
  private List<int[]> ways(int bole) {
    Bole stem = task.boles().get(bole);
    Set<List<Integer>> sums = new LinkedHashSet<>();
    sums.add(new ArrayList<>(IntStream.range(0, lengths.length).mapToObj(i -> 0).toList()));
    for (Stretch room : rooms(bole)) {
      Set<List<Integer>> more = new LinkedHashSet<>();
      for (List<Integer> sum : sums) {
        grow(sum, room.length() + task.kerf(), 0, more);
      }
      sums.addAll(more);
    }
    return sums.stream()
        .map(counts -> counts.stream().mapToInt(Integer::intValue).toArray())
        .filter(counts -> Arrays.stream(counts).sum() > 0)
        .filter(counts -> Arrays.stream(counts).sum() + settled(bole).size() <= stem.most())
        .filter(counts -> serves(bole, counts))
        .toList();
  }

  private void grow(List<Integer> counts, int left, int first, Set<List<Integer>> found) {
    for (int i = first; i < lengths.length; i++) {
      int needed = lengths[i] + task.kerf();
      if (needed <= left && counts.get(i) < wanted[i]) {
        List<Integer> more = new ArrayList<>(counts);
        more.set(i, counts.get(i) + 1);
        found.add(more);
        grow(more, left - needed, i, found);
      }
    }
  }

  /** Returns whether a stem may serve so many places of each length at the least. */
  private boolean serves(int bole, int[] counts) {
    for (int i = 0; i < counts.length; i++) {
      int length = lengths[i];
      long allowed =
          IntStream.range(0, task.places())
              .filter(place -> task.settled().piece(place) == null)
              .filter(place -> task.side(place).raw() == length)
              .filter(place -> task.settled().allowed().test(bole, place))
              .count();
      if (allowed < counts[i]) {
        return false;
      }
    }
    return true;
  }

  private List<Cut> settled(int bole) {
    return IntStream.range(0, task.places())
        .mapToObj(task.settled()::piece)
        .filter(piece -> piece != null && piece.bole() == bole)
        .sorted(Comparator.comparingInt(Cut::from))
        .toList();
  }

  /** Returns the free stretches of a stem between the pieces that are settled. */
  private List<Stretch> rooms(int bole) {
    List<Stretch> rooms = new ArrayList<>();
    for (Stretch free : task.boles().get(bole).free()) {
      int from = free.from();
      for (Cut cut : settled(bole)) {
        if (cut.to() > from && cut.from() < free.to()) {
          rooms.add(new Stretch(from, Math.max(from, cut.from() - task.kerf())));
          from = cut.to() + task.kerf();
        }
      }
      if (from < free.to()) {
        rooms.add(new Stretch(from, free.to()));
      }
    }
    return rooms;
  }

  /** Lays so many pieces of each length on a stem, from the butt up: the first way that fits. */
  private List<Cut> laid(int bole, int[] counts) {
    List<Cut> cuts = new ArrayList<>();
    if (!lay(bole, rooms(bole), counts.clone(), cuts)) {
      throw new IllegalStateException("pieces that were counted do not fit");
    }
    return cuts;
  }

  private boolean lay(int bole, List<Stretch> rooms, int[] left, List<Cut> cuts) {
    if (Arrays.stream(left).sum() == 0) {
      return true;
    }
    if (rooms.isEmpty()) {
      return false;
    }
    Stretch room = rooms.get(0);
    List<Stretch> later = rooms.subList(1, rooms.size());
    for (int i = 0; i < left.length; i++) {
      if (left[i] > 0 && lengths[i] <= room.length()) {
        left[i]--;
        cuts.add(new Cut(bole, room.from(), lengths[i]));
        List<Stretch> rest = new ArrayList<>(later);
        rest.add(0, new Stretch(room.from() + lengths[i] + task.kerf(), room.to()));
        if (lay(bole, rest, left, cuts)) {
          return true;
        }
        cuts.remove(cuts.size() - 1);
        left[i]++;
      }
    }
    return lay(bole, later, left, cuts);
  }
}
