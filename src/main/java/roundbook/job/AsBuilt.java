package roundbook.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import roundbook.units.Length;

/**
 * What a crew has built and measured so far.
 *
 * <p>Rounds are cut from the lowest up, log by log. The first log that is cut fixes the marks of
 * its round, for all others must fit to it. What was cut stays: its log, its size and its marks.
 * Logs that were measured as hewn keep their places whether they are cut or not.
 *
 * @param cut the size that each round was cut to, from round 1 up; the last may be of a round some
 *     of whose logs are not cut yet
 * @param held the places that are settled, cut or measured
 * @param measures what was typed of the logs, by place
 * @param readings corner heights read after rounds, on top of the second-laid logs, from the
 *     heights' datum
 * @param firstReadings corner heights read on top of a round's first-laid logs before its
 *     second-laid ones were cut
 * @param expected each log as it was expected before it was measured in its place, by tag; only
 *     those measured there
 * @param ahead the logs that were measured in the yard, on the log list, by tag
 * @param lost tags of logs that are lost or turned out useless
 * @param gaps gaps that were measured
 */
public record AsBuilt(
    List<CutSize> cut,
    Map<Place, Held> held,
    Map<Place, Measures> measures,
    Map<Corner, Length> readings,
    Map<Corner, Length> firstReadings,
    Map<String, Log> expected,
    Map<String, Ahead> ahead,
    Set<String> lost,
    Map<GapSpot, Length> gaps) {
  /** Nothing built yet. */
  public static final AsBuilt NOTHING =
      new AsBuilt(
          List.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Set.of(),
          Map.of());

  /** Copies the list and the maps. */
  public AsBuilt {
    cut = List.copyOf(cut);
    held = new TreeMap<>(held);
    measures = new TreeMap<>(measures);
    readings = new TreeMap<>(readings);
    firstReadings = new TreeMap<>(firstReadings);
    expected = new TreeMap<>(expected);
    ahead = new TreeMap<>(ahead);
    lost = Set.copyOf(lost);
    gaps = new TreeMap<>(gaps);
  }

  /** Returns this record with what the rounds were cut to. */
  public AsBuilt withCut(List<CutSize> other) {
    return new AsBuilt(other, held, measures, readings, firstReadings, expected, ahead, lost, gaps);
  }

  /** Returns this record with other settled places, and what was measured in them. */
  public AsBuilt withPlaces(Map<Place, Held> logs, Map<Place, Measures> typed) {
    return new AsBuilt(cut, logs, typed, readings, firstReadings, expected, ahead, lost, gaps);
  }

  /** Returns this record with the corners read after rounds, and on their first-laid logs. */
  public AsBuilt withReadings(Map<Corner, Length> after, Map<Corner, Length> within) {
    return new AsBuilt(cut, held, measures, after, within, expected, ahead, lost, gaps);
  }

  /** Returns this record with the logs measured in their places, as they were expected. */
  public AsBuilt withExpected(Map<String, Log> other) {
    return new AsBuilt(cut, held, measures, readings, firstReadings, other, ahead, lost, gaps);
  }

  /** Returns this record with the logs that were measured before they had a place. */
  public AsBuilt withAhead(Map<String, Ahead> other) {
    return new AsBuilt(cut, held, measures, readings, firstReadings, expected, other, lost, gaps);
  }

  /** Returns this record with the tags of the logs that are lost. */
  public AsBuilt withLost(Set<String> other) {
    return new AsBuilt(cut, held, measures, readings, firstReadings, expected, ahead, other, gaps);
  }

  /** Returns this record with the gaps that were measured. */
  public AsBuilt withGaps(Map<GapSpot, Length> other) {
    return new AsBuilt(cut, held, measures, readings, firstReadings, expected, ahead, lost, other);
  }

  /**
   * What the marks of a round were cut by; settings that change later leave them as they are.
   *
   * @param size D, the size of the round
   * @param gap g, the gap wanted when it was cut
   * @param correction what was put on the tally's diameters when it was planned
   * @param open the walls whose logs are not cut yet; none of a round that is cut
   */
  public record CutSize(Length size, Length gap, Length correction, Set<String> open) {
    /** Copies the set. */
    public CutSize {
      open = Set.copyOf(open);
    }

    /** A round that was planned by the tally as it is. */
    public CutSize(Length size, Length gap) {
      this(size, gap, Length.ZERO, Set.of());
    }

    /** Returns a size and a gap that have these marks: {@code D = U + 3 L, g = U − L}. */
    public static CutSize ofMarks(Length lower, Length upper) {
      return new CutSize(upper.plus(lower.times(3)), upper.minus(lower));
    }

    /** Returns the same with the correction it was planned with. */
    public CutSize corrected(Length other) {
      return new CutSize(size, gap, other, open);
    }

    /** Returns the same with the walls whose logs are not cut yet. */
    public CutSize open(Set<String> walls) {
      return new CutSize(size, gap, correction, walls);
    }
  }

  /** Which part of a place: where an opening cuts it through, a short log lies each side of it. */
  public enum PlacePart {
    /** The place of one log, or of both short ones. */
    WHOLE(""),
    /** Left of the opening, seen from outside. */
    LEFT(" left"),
    /** Right of it. */
    RIGHT(" right");

    private final String words;

    PlacePart(String words) {
      this.words = words;
    }
  }

  /**
   * One place of the walls.
   *
   * @param round the round, counted from 1
   * @param wall the wall's name
   * @param side which part of it
   */
  public record Place(int round, String wall, PlacePart side) implements Comparable<Place> {
    /** A whole place. */
    public Place(int round, String wall) {
      this(round, wall, PlacePart.WHOLE);
    }

    /** Returns one side of an opening in this place. */
    public Place side(boolean left) {
      return new Place(round, wall, left ? PlacePart.LEFT : PlacePart.RIGHT);
    }

    /** Returns the whole place of a side. */
    public Place whole() {
      return new Place(round, wall);
    }

    /** Returns the wall and the side, by which cells are named. */
    public String named() {
      return wall + side.words;
    }

    @Override
    public int compareTo(Place other) {
      int rounds = Integer.compare(round, other.round);
      int walls = rounds == 0 ? wall.compareTo(other.wall) : rounds;
      return walls == 0 ? side.compareTo(other.side) : walls;
    }
  }

  /**
   * One corner after one round.
   *
   * @param round the round, counted from 1
   * @param name the corner's name
   */
  public record Corner(int round, String name) implements Comparable<Corner> {
    @Override
    public int compareTo(Corner other) {
      int rounds = Integer.compare(round, other.round);
      return rounds == 0 ? name.compareTo(other.name) : rounds;
    }
  }

  /**
   * What lies in a settled place.
   *
   * @param logs its log, or both short ones, the left one first
   */
  public record Held(List<HeldLog> logs) {
    /** Copies the list. */
    public Held {
      logs = List.copyOf(logs);
    }

    /** One log, and what is cut off its butt end. */
    public Held(String tag, Length cutOffButt) {
      this(List.of(new HeldLog(tag, cutOffButt)));
    }

    /** Returns whether two short logs lie there. */
    public boolean isShared() {
      return logs.size() > 1;
    }

    /** Returns the tags of the logs that lie there, one or two. */
    public List<String> tags() {
      return logs.stream().map(HeldLog::tag).toList();
    }

    /** Returns whether a log lies there, alone or beside another. */
    public boolean holds(String tag) {
      return logs.stream().anyMatch(log -> log.tag().equals(tag));
    }

    /** Returns whether a log lies there alone. */
    public boolean isOnly(String tag) {
      return !isShared() && holds(tag);
    }

    /** Returns the tags as they are printed. */
    public String words() {
      return String.join(" + ", tags());
    }
  }

  /**
   * A log of a settled place and how it is cut.
   *
   * @param tag the log's tag
   * @param cutOffButt what is cut off its butt end
   * @param beside how it lies beside an opening; empty: from corner to corner
   */
  public record HeldLog(String tag, Length cutOffButt, Optional<Beside> beside) {
    /** A log from corner to corner. */
    public HeldLog(String tag, Length cutOffButt) {
      this(tag, cutOffButt, Optional.empty());
    }

    /** Returns a short log beside an opening. */
    public static HeldLog beside(String tag, Length cutOffButt, Length trimmed, boolean buttOut) {
      return new HeldLog(tag, cutOffButt, Optional.of(new Beside(trimmed, buttOut)));
    }

    /**
     * How a short log lies beside an opening.
     *
     * @param trimmed the length it is cut to
     * @param buttOut whether its butt lies at the corner, not at the opening
     */
    public record Beside(Length trimmed, boolean buttOut) {}
  }

  /**
   * What was measured on a log in the yard, whatever place it gets.
   *
   * @param measures its diameters as hewn, at the ends and the middle of the whole log
   * @param tallied the log as it was expected before
   */
  public record Ahead(Measures measures, Log tallied) {}

  /** Returns how many rounds are cut, every log of them. */
  public int rounds() {
    return (int) cut.stream().filter(size -> size.open().isEmpty()).count();
  }

  /** Returns whether a round is cut, every log of it. */
  public boolean isCut(int round) {
    return round <= rounds();
  }

  /** Returns whether the log of a place is cut. */
  public boolean isCut(Place place) {
    return cutSize(place.round()).filter(size -> !size.open().contains(place.wall())).isPresent();
  }

  /** Returns the size that a round is cut to; empty while no log of it is cut. */
  public Optional<CutSize> cutSize(int round) {
    return round <= cut.size() ? Optional.of(cut.get(round - 1)) : Optional.empty();
  }

  /** Returns the settled log of a place, if it has one. */
  public Optional<Held> held(int round, String wall) {
    return Optional.ofNullable(held.get(new Place(round, wall)));
  }

  /** Returns the place in which a log is settled, if it is. */
  public Optional<Place> placeOf(String tag) {
    return held.entrySet().stream()
        .filter(each -> each.getValue().holds(tag))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * Returns whether the log of a settled place may still change with that of another wall of its
   * round: it is measured, but nothing of it is marked or cut and no log of the round lies.
   */
  public boolean isMovable(Place place) {
    Measures typed = measures.getOrDefault(place, Measures.NONE);
    boolean marked = typed.lowerCut().isPresent() || typed.upperCut().isPresent();
    boolean alone = held.containsKey(place) && !held.get(place).isShared();
    return !isBegun(place.round()) && typed.hewn() && !marked && alone;
  }

  /** Returns this record with the logs that are measured only in the places they have now. */
  public AsBuilt moved(Map<Place, Held> now) {
    Map<Place, Held> places = new TreeMap<>(held);
    Map<Place, Measures> typed = new TreeMap<>(measures);
    now.forEach(
        (place, log) -> {
          Optional<Place> from = placeOf(log.tags().get(0)).filter(at -> !at.equals(place));
          if (from.isPresent()) {
            places.put(place, log);
            typed.put(place, measures.get(from.get()));
          }
        });
    return withPlaces(places, typed);
  }

  /** Returns this record with the places alone that are cut; logs that are measured stand open. */
  public AsBuilt onlyCut() {
    Map<Place, Held> places = new TreeMap<>(held);
    places.keySet().removeIf(place -> !isCut(place));
    return withPlaces(places, measures);
  }

  /** Returns what was measured on the log of a place or of a side of it. */
  public Measures measures(Place place) {
    return measures.getOrDefault(place, Measures.NONE);
  }

  /** Returns what was measured in a place. */
  public Measures measures(int round, String wall) {
    return measures.getOrDefault(new Place(round, wall), Measures.NONE);
  }

  /** Returns the height read at a corner after a round, if it was. */
  public Optional<Length> reading(int round, String corner) {
    return Optional.ofNullable(readings.get(new Corner(round, corner)));
  }

  /** Returns whether every corner was read after a round. */
  public boolean isRead(int round, Building building) {
    return building.corners().stream().allMatch(corner -> reading(round, corner).isPresent());
  }

  /** Returns the height read at a corner on top of a round's first-laid log, if it was. */
  public Optional<Length> firstReading(int round, String corner) {
    return Optional.ofNullable(firstReadings.get(new Corner(round, corner)));
  }

  /**
   * Returns whether a round is begun: a log of it is cut, or a corner was read on its first-laid
   * logs.
   */
  public boolean isBegun(int round) {
    return cutSize(round).isPresent()
        || firstReadings.keySet().stream().anyMatch(corner -> corner.round() == round);
  }

  /** Returns what was put on the tally's diameter of a log, where it is cut. */
  public Optional<Length> correctionOf(String tag) {
    return held.entrySet().stream()
        .filter(entry -> isCut(entry.getKey()))
        .filter(entry -> entry.getValue().holds(tag))
        .findFirst()
        .map(entry -> cut.get(entry.getKey().round() - 1).correction());
  }

  /**
   * Returns whether the middle of a log in a settled place was measured there, or in the yard.
   *
   * @param place the place, or a side of it
   * @param tag the log that lies there
   */
  public boolean knowsMiddle(Place place, String tag) {
    boolean yard = ahead.containsKey(tag) && ahead.get(tag).measures().mid().isPresent();
    return yard || measures(place).mid().isPresent();
  }

  /**
   * Returns a log as it was expected before it was measured in its place: as measured in the yard,
   * or as tallied with the job's correction.
   */
  public Log beforeHewing(Log log) {
    return expected.getOrDefault(log.tag(), log);
  }
}
