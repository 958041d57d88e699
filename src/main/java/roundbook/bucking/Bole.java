package roundbook.bucking;

import java.util.ArrayList;
import java.util.List;

/**
 * One stem as pieces are cut from it: its diameters by distance from the butt, and where it is
 * sound and thick enough.
 */
public final class Bole {
  private final int[] diameters;
  private final List<Stretch> free;
  private final Stretch[] stretches;
  private final int most;
  private final boolean wholeCounts;
  private final int ways;

  /**
   * A stretch of a stem, in steps from the butt.
   *
   * @param from where it begins
   * @param to where it ends
   */
  public record Stretch(int from, int to) {
    /** Returns its length in steps. */
    public int length() {
      return to - from;
    }
  }

  private Bole(int[] diameters, List<Stretch> free, int most, boolean wholeCounts, int ways) {
    this.diameters = diameters;
    this.free = List.copyOf(free);
    this.stretches = free.toArray(Stretch[]::new);
    this.most = most;
    this.wholeCounts = wholeCounts;
    this.ways = ways;
  }

  /**
   * Returns a felled stem.
   *
   * @param diameters its diameters in ticks at 0, 1, 2 … steps from the butt
   * @param bad stretches that no piece may have a part of, by rising distance
   * @param least the least diameter of a piece in ticks
   */
  public static Bole of(int[] diameters, List<Stretch> bad, int least) {
    List<Stretch> free = new ArrayList<>();
    int from = 0;
    for (Stretch each : bad) {
      thick(diameters, new Stretch(from, each.from()), least, free);
      from = Math.max(from, each.to());
    }
    thick(diameters, new Stretch(from, diameters.length - 1), least, free);
    return new Bole(diameters.clone(), free, Integer.MAX_VALUE, false, 0);
  }

  /** Adds what of a sound stretch is thick enough, each run of steps as a stretch. */
  private static void thick(int[] diameters, Stretch sound, int least, List<Stretch> free) {
    int from = -1;
    for (int at = sound.from(); at <= sound.to(); at++) {
      boolean thick = diameters[at] >= least;
      if (thick && from < 0) {
        from = at;
      }
      if (from >= 0 && (!thick || at == sound.to())) {
        int to = thick ? at : at - 1;
        if (to > from) {
          free.add(new Stretch(from, to));
        }
        from = -1;
      }
    }
  }

  /** Returns the same stem, that gives so many pieces at the most. */
  public Bole giving(int pieces) {
    return new Bole(diameters, free, pieces, wholeCounts, ways);
  }

  /** Returns the same as a log that was cut already: all of it that no piece has is waste. */
  public Bole alreadyCut() {
    return new Bole(diameters, free, most, true, ways);
  }

  /**
   * Returns the same, that loses what its piece does not need off its tip (1 way), or off either
   * end or half off each (3 ways), and not just anyhow.
   */
  public Bole losing(int inWays) {
    return new Bole(diameters, free, most, wholeCounts, inWays);
  }

  /** Returns in how many ways a piece may lie in a free stretch; 0 for any. */
  int ways() {
    return ways;
  }

  /** Returns where a piece begins in one of the ways. */
  int begin(Stretch stretch, int raw, int way) {
    return stretch.from() + (stretch.length() - raw) * way / 2;
  }

  /** Returns its length in steps. */
  public int length() {
    return diameters.length - 1;
  }

  /** Returns where pieces may be cut, from the butt up. */
  public List<Stretch> free() {
    return free;
  }

  /** Returns how many pieces it may give at the most. */
  public int most() {
    return most;
  }

  /** Returns how many steps of it can be used. */
  public int usable() {
    return free.stream().mapToInt(Stretch::length).sum();
  }

  /** Returns whether a piece lies within one free stretch. */
  boolean holds(int from, int raw) {
    Stretch here = holding(from, raw);
    return here != null && (ways == 0 || way(here, from, raw) < ways);
  }

  /** Returns the free stretch that a piece lies in; null where there is none. */
  Stretch holding(int from, int raw) {
    for (Stretch each : stretches) {
      if (from >= each.from() && from + raw <= each.to()) {
        return each;
      }
    }
    return null;
  }

  /** Returns where a piece of another length begins that lies the way that one did. */
  int again(int from, int was, int raw) {
    Stretch here = holding(from, was);
    return begin(here, raw, way(here, from, was));
  }

  private int way(Stretch stretch, int from, int raw) {
    int way = 0;
    while (way < ways && from != begin(stretch, raw, way)) {
      way++;
    }
    return way;
  }

  /** Returns the diameter in ticks at so many half steps from the butt. */
  int atHalf(int halfSteps) {
    return (diameters[halfSteps / 2] + diameters[(halfSteps + 1) / 2] + 1) / 2;
  }

  /** Returns what counts as the end of what was cut from it, its last piece ending at a step. */
  int end(int last) {
    return wholeCounts ? length() : last;
  }
}
