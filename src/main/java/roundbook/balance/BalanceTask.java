package roundbook.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is to be filled with logs: buildings, sides, restrictions and logs.
 *
 * <p>Places are numbered building by building, round by round from the lowest, side by side; logs
 * are numbered in the order they were added. Immutable.
 */
public final class BalanceTask {
  /** The task's units: its fine unit, the tick of the search and the unit of the score. */
  final Scale scale;

  private final Aims aims;
  private final long[] classLengths;
  private final List<Ring> rings;
  private final List<List<List<Cut>>> cuts;
  private final Map<RingPlace, Integer> pins;
  private final Map<RingPlace, BitSet> only;
  private final Map<Integer, List<RingPlace>> kept;
  private final Map<RingPlace, Long> sizes;

  private BalanceTask(Builder from) {
    scale = from.scale;
    aims = from.aims;
    classLengths = from.lengths.stream().mapToLong(Long::longValue).toArray();
    rings = from.rings.stream().map(Ring::copy).toList();
    cuts = List.copyOf(from.cuts);
    pins = new LinkedHashMap<>(from.pins);
    only = new LinkedHashMap<>(from.only);
    kept = new LinkedHashMap<>(from.kept);
    sizes = new LinkedHashMap<>(from.sizes);
  }

  /**
   * Starts a task.
   *
   * @param unit how many fine units make the unit that the score is squared in (an inch in
   *     nanometres, say)
   * @param tick how many fine units make one tick, which the search computes gaps to
   * @param aims what makes a choice good, in fine units
   */
  public static Builder builder(long unit, long tick, Aims aims) {
    return new Builder(new Scale(unit, tick), aims);
  }

  /**
   * A place for one log.
   *
   * @param building the building's number, from 0
   * @param round the round's number, from 0 for the lowest
   * @param side the side's number, from 0 in the order they were added
   */
  public record RingPlace(int building, int round, int side) {}

  /** Fine units in a unit of the score and in a tick. */
  record Scale(long unit, long tick) {}

  /** One side of a ring: its length class and whether it is laid first. */
  record RingSide(int lengthClass, boolean first) {}

  /** The sides and the number of rounds of one building. */
  record Ring(int rounds, List<RingSide> sides) {
    Ring copy() {
      return new Ring(rounds, List.copyOf(sides));
    }
  }

  /** Returns what makes a choice good. */
  public Aims aims() {
    return aims;
  }

  /** Returns the number of buildings. */
  public int buildings() {
    return rings.size();
  }

  /** Returns the number of rounds of a building. */
  public int rounds(int building) {
    return rings.get(building).rounds();
  }

  /** Returns the number of sides of a building. */
  public int sides(int building) {
    return rings.get(building).sides().size();
  }

  /** Returns the length class of a side. */
  public int lengthClass(int building, int side) {
    return rings.get(building).sides().get(side).lengthClass();
  }

  /** Returns whether a side is laid first. */
  public boolean laidFirst(int building, int side) {
    return rings.get(building).sides().get(side).first();
  }

  /** Returns the number of length classes. */
  public int lengthClasses() {
    return classLengths.length;
  }

  /** Returns the trimmed length of a length class. */
  public long classLength(int lengthClass) {
    return classLengths[lengthClass];
  }

  /** Returns the number of logs. */
  public int logs() {
    return cuts.size();
  }

  /** Returns the cuts of a log for a length class, none when it is too short. */
  public List<Cut> cuts(int log, int lengthClass) {
    return cuts.get(log).get(lengthClass);
  }

  /** Returns for how many length classes a log was described. */
  int classesOf(int log) {
    return cuts.get(log).size();
  }

  /** Returns the number of places in all buildings. */
  public int places() {
    return rings.stream().mapToInt(ring -> ring.rounds() * ring.sides().size()).sum();
  }

  /** Returns the log that a place is pinned to, if any. */
  public OptionalInt pinned(RingPlace place) {
    Integer log = pins.get(place);
    return log == null ? OptionalInt.empty() : OptionalInt.of(log);
  }

  /** Returns the size that the round of a building is bound to, if any. */
  public Optional<Long> fixedSize(int building, int round) {
    return Optional.ofNullable(sizes.get(new RingPlace(building, round, 0)));
  }

  /** Returns the pins, by place. */
  Map<RingPlace, Integer> pins() {
    return pins;
  }

  /** Returns the logs that each restricted place takes. */
  Map<RingPlace, BitSet> only() {
    return only;
  }

  /** Returns the places that each restricted log may take. */
  Map<Integer, List<RingPlace>> kept() {
    return kept;
  }

  /** Returns this task as a builder, to change it. */
  public Builder toBuilder() {
    Builder copy = new Builder(scale, aims);
    Arrays.stream(classLengths).forEach(copy::lengthClass);
    copy.rings.addAll(rings);
    copy.cuts.addAll(cuts);
    copy.pins.putAll(pins);
    copy.only.putAll(only);
    copy.kept.putAll(kept);
    copy.sizes.putAll(sizes);
    return copy;
  }

  /** Returns this task with other aims. */
  BalanceTask withAims(Aims other) {
    Builder copy = toBuilder();
    copy.aims = other;
    return copy.build();
  }

  /** Returns this task with other numbers of rounds; restrictions above the new tops fall away. */
  public BalanceTask withRounds(int... rounds) {
    Builder copy = toBuilder();
    for (int b = 0; b < rounds.length; b++) {
      copy.rings.set(b, new Ring(rounds[b], rings.get(b).sides()));
    }
    copy.pins.keySet().removeIf(place -> place.round() >= rounds[place.building()]);
    copy.only.keySet().removeIf(place -> place.round() >= rounds[place.building()]);
    copy.sizes.keySet().removeIf(place -> place.round() >= rounds[place.building()]);
    return copy.build();
  }

  /** Collects a task piece by piece. */
  public static final class Builder {
    private final Scale scale;
    private Aims aims;
    private final List<Long> lengths = new ArrayList<>();
    private final List<Ring> rings = new ArrayList<>();
    private final List<List<List<Cut>>> cuts = new ArrayList<>();
    private final Map<RingPlace, Integer> pins = new LinkedHashMap<>();
    private final Map<RingPlace, BitSet> only = new LinkedHashMap<>();
    private final Map<Integer, List<RingPlace>> kept = new LinkedHashMap<>();
    private final Map<RingPlace, Long> sizes = new LinkedHashMap<>();

    private Builder(Scale scale, Aims aims) {
      this.scale = scale;
      this.aims = aims;
    }

    /** Adds a length class by its trimmed length; returns its number. */
    public int lengthClass(long trimmed) {
      lengths.add(trimmed);
      return lengths.size() - 1;
    }

    /** Adds a building of a number of rounds, without sides yet; returns its number. */
    public int building(int rounds) {
      rings.add(new Ring(rounds, new ArrayList<>()));
      return rings.size() - 1;
    }

    /**
     * Adds a side to the building added last.
     *
     * @param lengthClass the length class of its logs
     * @param first whether it is laid first
     */
    public Builder side(int lengthClass, boolean first) {
      rings.get(rings.size() - 1).sides().add(new RingSide(lengthClass, first));
      return this;
    }

    /**
     * Adds a log; returns its number.
     *
     * @param perClass for each length class in order, the ways to cut the log for it; an empty list
     *     where it is too short
     */
    public int log(List<List<Cut>> perClass) {
      cuts.add(perClass.stream().map(List::copyOf).toList());
      return cuts.size() - 1;
    }

    /** Binds a place to a log. */
    public Builder pin(RingPlace place, int log) {
      pins.put(place, log);
      return this;
    }

    /** Lets a place take only some logs. */
    public Builder only(RingPlace place, Collection<Integer> logs) {
      BitSet set = new BitSet();
      logs.forEach(set::set);
      only.put(place, set);
      return this;
    }

    /** Keeps a log for some places: it may be used there or not at all. */
    public Builder keep(int log, Collection<RingPlace> places) {
      kept.put(log, List.copyOf(places));
      return this;
    }

    /** Binds the size of a round, such as one that is cut already. */
    public Builder size(int building, int round, long size) {
      sizes.put(new RingPlace(building, round, 0), size);
      return this;
    }

    /**
     * Returns the task.
     *
     * @throws IllegalArgumentException if a number points nowhere or a log is pinned twice
     */
    public BalanceTask build() {
      BalanceTask task = new BalanceTask(this);
      TaskCheck.check(task);
      return task;
    }
  }
}
