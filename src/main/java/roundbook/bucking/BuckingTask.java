package roundbook.bucking;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;
import roundbook.balance.Aims;

/**
 * What is to be cut from which stems: a piece for every place of a ring of walls.
 *
 * <p>Places are numbered round by round from the lowest, side by side.
 *
 * @param aims what makes a choice good, in ticks
 * @param unit ticks in the unit that the score is squared in (an inch, say)
 * @param boles the stems
 * @param sides the sides of the ring
 * @param rounds how many rounds stand
 * @param kerf steps that a saw cut takes
 * @param wastePrice what a step of wood skipped costs, in unit²
 * @param settled places that are not to be chosen, and rounds of a size that is given
 * @param parting places that may have two pieces
 */
public record BuckingTask(
    Aims aims,
    int unit,
    List<Bole> boles,
    List<Side> sides,
    int rounds,
    int kerf,
    double wastePrice,
    Settled settled,
    Parting parting) {
  /** Copies the lists. */
  public BuckingTask {
    boles = List.copyOf(boles);
    sides = List.copyOf(sides);
  }

  /**
   * One side of the ring.
   *
   * @param raw steps from saw cut to saw cut of its pieces
   * @param inset steps from each saw cut to where the gaps of that end are taken: what is squared
   *     off, and where gaps are taken at the inside faces the neck too
   * @param first whether it is laid first
   */
  public record Side(int raw, int inset, boolean first) {}

  /**
   * What is settled before anything is chosen.
   *
   * @param pieces for each place the piece that lies there for good, or nothing; empty where no
   *     place is settled
   * @param sizes for each round its size in ticks, or 0 where it follows its pieces; empty where
   *     none is given
   * @param allowed whether a stem, by its number, may serve a place, by its number; the number of
   *     places and more ask for the pieces beside openings, the left one and the right one of each
   *     place that one cuts through
   */
  public record Settled(Cut[] pieces, long[] sizes, BiPredicate<Integer, Integer> allowed) {
    /** Nothing is settled, every stem may serve every place. */
    public static final Settled NOTHING =
        new Settled(new Cut[0], new long[0], (bole, place) -> true);

    /** Returns the piece of a place that is settled; null where there is none. */
    Cut piece(int place) {
      return place < pieces.length ? pieces[place] : null;
    }

    /** Returns the size that a round is given; 0 where it follows its pieces. */
    long size(int round) {
      return round < sizes.length ? sizes[round] : 0;
    }
  }

  /**
   * A piece of a stem.
   *
   * @param bole the number of its stem
   * @param from steps from the stem's butt to its own
   * @param raw its length in steps, from saw cut to saw cut
   */
  public record Cut(int bole, int from, int raw) {
    /** Returns where it ends. */
    public int to() {
      return from + raw;
    }
  }

  /** Returns the number of places. */
  public int places() {
    return rounds * sides.size();
  }

  /** Returns the side of a place. */
  Side side(int place) {
    return sides.get(place % sides.size());
  }

  /** Returns the same task for another number of rounds. */
  public BuckingTask withRounds(int other) {
    return new BuckingTask(aims, unit, boles, sides, other, kerf, wastePrice, settled, parting);
  }

  /** Returns the lengths of pieces that are asked for, each once, the longest first. */
  int[] lengths() {
    int[] rising = sides.stream().mapToInt(Side::raw).distinct().sorted().toArray();
    int[] falling = new int[rising.length];
    Arrays.setAll(falling, i -> rising[rising.length - 1 - i]);
    return falling;
  }
}
