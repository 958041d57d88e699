package roundbook.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.job.AsBuilt.Place;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.takeoff.LogCut;
import roundbook.takeoff.LogCut.CutExtent;
import roundbook.takeoff.OpeningCut;
import roundbook.units.Length;

/**
 * Makes pairs of short logs for the places that openings cut through.
 *
 * <p>As many places as can be are filled, from the lowest up, by a matching of logs and sides of
 * openings; then logs, their ends and their cuts are exchanged for as long as the gaps of the walls
 * get evener. Short stock is any log without a place that is too short for its own wall; where
 * rounds are missing, none that a greatest matching lays in a place of the rounds aimed at.
 */
final class Pairing {
  private final Job job;
  private final Choice base;
  private final Set<Place> refused;
  private final Wish wish;
  private final Fit fit;
  private final Set<String> needed;
  private final Map<Place, FilledPlace> given = new LinkedHashMap<>();
  private final List<Log> free;
  private final Map<Place, CutPlace> spots;
  private final List<Course> courses;

  /**
   * Which places may get pairs.
   *
   * @param had the places that had one in an earlier plan
   * @param keeping whether pairs stay as they are, and only those places get new ones while no
   *     round is missing
   */
  record Wish(Set<Place> had, boolean keeping) {
    /** Any place, anew. */
    static final Wish ANY = new Wish(Set.of(), false);
  }

  /**
   * A place that an opening cuts through.
   *
   * @param wall its wall
   * @param round its round
   * @param left length of the piece at the left, seen from outside
   * @param right length of the piece at the right
   */
  record CutPlace(Wall wall, int round, Length left, Length right) {
    Place place() {
      return new Place(round, wall.name());
    }

    /** Returns its left side and its right one. */
    List<CutPlaceSide> sides() {
      return List.of(new CutPlaceSide(this, true), new CutPlaceSide(this, false));
    }

    /** Returns whether a pair has the lengths that are wanted here. */
    boolean takes(FilledPlace pair) {
      return pair.logs().stream()
          .map(log -> log.piece().trimmed())
          .toList()
          .equals(List.of(left, right));
    }
  }

  /** One side of a spot. */
  record CutPlaceSide(CutPlace spot, boolean left) {
    Length length() {
      return left ? spot.left : spot.right;
    }

    /** Returns what lies at this side of a pair. */
    PlacedLog of(FilledPlace pair) {
      return pair.logs().get(left ? 0 : 1);
    }
  }

  /**
   * Begins with a choice.
   *
   * @param refused places that get no pair
   * @param goal the rounds aimed at, as many as stand or more
   */
  Pairing(Job job, Choice base, Set<Place> refused, Wish wish, int goal) {
    this.job = job;
    this.base = base;
    this.refused = refused;
    this.wish = wish;
    this.fit = new Fit(job);
    this.courses = new ArrayList<>(base.courses());
    foresee(goal);
    this.spots = spots(job, Stack.of(job.rules(), job.building(), courses, job.built()));
    spots.keySet().removeIf(place -> !isOpen(place));
    for (FilledPlace pair : base.pairs()) {
      Place place = pair.place();
      boolean stays = spots.containsKey(place) && spots.get(place).takes(pair);
      if (stays || isHeld(place)) {
        given.put(place, pair);
      }
    }
    this.free = free();
    this.needed = goal > base.courses().size() ? needed(goal) : Set.of();
  }

  /** Returns the logs that the rounds aimed at need for whole places. */
  private Set<String> needed(int goal) {
    PairedJob paired = PairedJob.of(job, List.copyOf(given.values()));
    return Arrays.stream(new Places(paired, goal).match())
        .filter(log -> log >= 0 && log < paired.job().logs().size())
        .mapToObj(log -> paired.job().logs().get(log).tag())
        .collect(Collectors.toSet());
  }

  /** Returns the places that openings with short logs cut through, by round, then wall. */
  static Map<Place, CutPlace> spots(Job job, Stack stack) {
    List<CutPlace> found = new ArrayList<>();
    for (OpeningCut opening : OpeningCut.of(job, stack)) {
      if (opening.opening().shortLogs()) {
        opening.of(CutExtent.THROUGH).forEach(cut -> spot(cut).ifPresent(found::add));
      }
    }
    List<Wall> walls = job.building().walls();
    found.sort(Comparator.comparingInt(CutPlace::round).thenComparing(s -> walls.indexOf(s.wall)));
    Map<Place, CutPlace> spots = new LinkedHashMap<>();
    found.forEach(spot -> spots.put(spot.place(), spot));
    return spots;
  }

  private static Optional<CutPlace> spot(LogCut cut) {
    return cut.sides()
        .filter(sides -> !sides.tooShort() && sides.atCorners())
        .map(
            sides ->
                new CutPlace(
                    cut.log().wall(),
                    cut.log().round(),
                    sides.left().length(),
                    sides.right().length()));
  }

  /** Lays cylinders of one diameter where rounds are missing, to see what openings cut there. */
  private void foresee(int wanted) {
    Length size = usualSize();
    for (int round = courses.size() + 1; round <= wanted; round++) {
      List<FilledPlace> places = new ArrayList<>();
      for (Wall wall : job.building().walls()) {
        Length length = fit.least(wall);
        Log log =
            new OrderedLogs(job)
                .log(round, length, size)
                .measured(DiameterProfile.of(length, size, size, size));
        Piece piece =
            new Piece(log, length.minus(fit.trimmed(wall)).dividedBy(2), fit.trimmed(wall));
        places.add(FilledPlace.of(piece, wall, round, job.isButtAtStart(wall, round)));
      }
      courses.add(Course.of(round, places, job.rules()));
    }
  }

  /** Returns the size of the last round, or the mean middle of all logs where none stands. */
  private Length usualSize() {
    if (!courses.isEmpty()) {
      return courses.get(courses.size() - 1).notch().size();
    }
    Length sum = job.logs().stream().map(Log::mid).reduce(Length.ZERO, Length::plus);
    return job.logs().isEmpty()
        ? job.rules().thickness().times(2)
        : sum.dividedBy(job.logs().size());
  }

  private boolean isHeld(Place place) {
    return job.built().isCut(place) || job.built().held(place.round(), place.wall()).isPresent();
  }

  private boolean isOpen(Place place) {
    boolean pinned =
        job.pins().stream()
            .anyMatch(
                pin ->
                    pin.wall().equalsIgnoreCase(place.wall())
                        && pin.round().orElse(0) == place.round()
                        && !pin.log().isEmpty());
    boolean asked = !wish.keeping || base.shortage().isPresent() || wish.had.contains(place);
    return asked && !pinned && !isHeld(place) && !refused.contains(place);
  }

  /** Returns the logs that may lie beside an opening: without a place, kept for nothing. */
  private List<Log> free() {
    Set<String> bound =
        given.entrySet().stream()
            .filter(each -> wish.keeping || isHeld(each.getKey()))
            .flatMap(each -> logs(each.getValue()))
            .map(Log::tag)
            .collect(Collectors.toSet());
    Stream<Log> paired = base.pairs().stream().flatMap(Pairing::logs);
    return Stream.concat(base.unused().stream(), paired)
        .filter(log -> !bound.contains(log.tag()) && log.traits().keep() == Log.Keep.ANY)
        .filter(log -> job.pins().stream().noneMatch(pin -> pin.log().equals(log.tag())))
        .filter(log -> job.built().placeOf(log.tag()).isEmpty())
        .distinct()
        .toList();
  }

  private static Stream<Log> logs(FilledPlace pair) {
    return pair.logs().stream().map(log -> log.piece().log());
  }

  /** Returns the pairs, those settled first, then by round and wall. */
  List<FilledPlace> pairs() {
    List<FilledPlace> fixed = new ArrayList<>();
    given.forEach(
        (place, pair) -> {
          if (wish.keeping || isHeld(place)) {
            fixed.add(pair);
          }
        });
    List<CutPlace> open = new ArrayList<>(spots.values());
    open.removeIf(spot -> fixed.stream().anyMatch(pair -> pair.place().equals(spot.place())));
    Map<CutPlace, FilledPlace> start = new HashMap<>();
    open.stream()
        .filter(spot -> given.containsKey(spot.place()))
        .forEach(spot -> start.put(spot, given.get(spot.place())));
    PairGaps gaps = new PairGaps(job, courses, jambs());
    PairSearch search = new PairSearch(job, gaps, free, this::ways);
    return Stream.concat(fixed.stream(), search.best(open, start).stream()).toList();
  }

  /** Returns where sides of openings lie on each wall, from its left trimmed end. */
  private List<List<Length>> jambs() {
    return job.building().walls().stream()
        .map(
            wall ->
                spots.values().stream()
                    .filter(spot -> spot.wall.equals(wall))
                    .flatMap(spot -> Stream.of(spot.left, fit.trimmed(wall).minus(spot.right)))
                    .distinct()
                    .toList())
        .toList();
  }

  /** Returns the ways in which a log may lie at a side of an opening. */
  private List<PlacedLog> ways(Log log, CutPlaceSide side) {
    Wall wall = side.spot.wall;
    boolean tooLong = !log.length().isLessThan(fit.least(wall)) || needed.contains(log.tag());
    boolean elsewhere =
        !log.place().wall().isEmpty() && !log.place().wall().equalsIgnoreCase(wall.name())
            || log.place().round().orElse(side.spot.round) != side.spot.round;
    return tooLong || elsewhere
        ? List.of()
        : fit.beside(log, wall, side.spot.round, side.left, side.length());
  }
}
