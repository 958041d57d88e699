package roundbook.rounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import roundbook.job.AsBuilt;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Pin;
import roundbook.job.Wall;
import roundbook.problem.Phrase;
import roundbook.stack.FilledPlace;

/** The places of so many rounds, and which logs the rules, wishes and pins let into each. */
public final class Places {
  /** The key of what is said of a pin in a round that is not built. */
  static final String NOT_BUILT = "bad-pin.not-built";

  private static final int NONE = -1;

  private final PairedJob paired;
  private final Job job;
  private final int rounds;
  private final List<List<List<Piece>>> pieces;
  private final Kept kept;
  private final Map<AsBuilt.Place, Integer> numbers = new HashMap<>();

  /**
   * What places are kept for.
   *
   * @param headers the places over openings; empty where they are not known
   * @param reserved the places that only logs kept for them may take
   */
  private record Kept(Optional<Set<Integer>> headers, Map<Integer, Log.Keep> reserved) {
    static final Kept NOTHING = new Kept(Optional.empty(), Map.of());
  }

  /** The places of so many rounds of a job. */
  public Places(Job job, int rounds) {
    this(PairedJob.of(job), rounds);
  }

  /** The places of so many rounds of a job, some of which short logs fill. */
  Places(PairedJob paired, int rounds) {
    this(paired, rounds, serving(paired.job()));
  }

  /** The places of a job whose logs can be cut so, by log and wall. */
  Places(PairedJob paired, int rounds, List<List<List<Piece>>> pieces) {
    this(paired, rounds, pieces, Kept.NOTHING);
  }

  private Places(PairedJob paired, int rounds, List<List<List<Piece>>> pieces, Kept kept) {
    this.paired = paired;
    this.job = paired.job();
    this.rounds = rounds;
    this.pieces = pieces;
    this.kept = kept;
    for (int pair = 0; pair < paired.pairs().size(); pair++) {
      numbers.put(paired.pairs().get(pair).place(), job.logs().size() + pair);
    }
  }

  /** Returns the ways to cut each log of a job for each wall. */
  static List<List<List<Piece>>> serving(Job job) {
    Fit fit = new Fit(job);
    List<Wall> walls = job.building().walls();
    return job.logs().stream()
        .map(log -> walls.stream().map(wall -> serving(job, fit, log, wall)).toList())
        .toList();
  }

  /** Returns whether there is a log for every place. */
  boolean fillable() {
    return Arrays.stream(match()).noneMatch(log -> log == NONE);
  }

  /** A log that is settled, cut or measured, serves walls like its own, and only as it is cut. */
  private static List<Piece> serving(Job job, Fit fit, Log log, Wall wall) {
    Optional<AsBuilt.Place> settled = job.built().placeOf(log.tag());
    if (settled.isEmpty()) {
      return fit.pieces(log, wall);
    }
    AsBuilt.Held held = job.built().held().get(settled.get());
    Wall own = job.building().wall(settled.get().wall()).orElseThrow();
    return own.isLike(wall) && held.isOnly(log.tag())
        ? List.of(new Piece(log, held.logs().get(0).cutOffButt(), fit.trimmed(wall)))
        : List.of();
  }

  /** Returns the places with those over openings known: only there may header logs stand. */
  Places withHeaders(Optional<Set<Integer>> headers) {
    return new Places(paired, rounds, pieces, new Kept(headers, kept.reserved()));
  }

  /** Returns the places that only logs kept for them may take. */
  Map<Integer, Log.Keep> reserved() {
    return kept.reserved();
  }

  /** Returns the places with some reserved for the logs kept for them. */
  Places withReserved(Map<Integer, Log.Keep> reserved) {
    return new Places(paired, rounds, pieces, new Kept(kept.headers(), Map.copyOf(reserved)));
  }

  /** Returns the places of another number of rounds, for the same logs, none reserved. */
  Places withRounds(int other) {
    return new Places(paired, other, pieces);
  }

  /** Returns the job, and the places of it that short logs fill. */
  PairedJob paired() {
    return paired;
  }

  Job job() {
    return job;
  }

  int count() {
    return rounds * walls().size();
  }

  int rounds() {
    return rounds;
  }

  List<Wall> walls() {
    return job.building().walls();
  }

  int round(int place) {
    return place / walls().size() + 1;
  }

  Wall wall(int place) {
    return walls().get(place % walls().size());
  }

  /** Returns the ways to cut a log for a round and wall; empty when it may not stand there. */
  public List<Piece> pieces(int log, Wall wall, int round) {
    return pieces(log, (round - 1) * walls().size() + walls().indexOf(wall));
  }

  /** Returns the ways to cut a log for a place; empty when it may not stand there. */
  List<Piece> pieces(int log, int place) {
    return allowed(log, place) ? serving(log, wall(place)) : List.of();
  }

  /** Returns the short logs that fill a place, if it is settled that two do. */
  Optional<FilledPlace> pair(int place) {
    return number(place).map(number -> paired.pairs().get(number - job.logs().size()));
  }

  /** Returns the number of the two logs that fill a place together; it comes after all logs. */
  Optional<Integer> number(int place) {
    return Optional.ofNullable(numbers.get(new AsBuilt.Place(round(place), wall(place).name())));
  }

  /** Returns the ways to cut a log for a wall, whatever wishes and pins say of it. */
  List<Piece> serving(int log, Wall wall) {
    return pieces.get(log).get(walls().indexOf(wall));
  }

  private boolean allowed(int index, int place) {
    Log log = job.logs().get(index);
    if (number(place).isPresent()) {
      return false;
    }
    Optional<AsBuilt.Held> held = job.built().held(round(place), wall(place).name());
    Optional<AsBuilt.Place> settled = job.built().placeOf(log.tag());
    if (held.isPresent() || settled.isPresent()) {
      return held.filter(each -> each.isOnly(log.tag())).isPresent()
          || settled.filter(from -> mayChange(from, place)).isPresent();
    }
    return keepAllows(log.traits().keep(), place)
        && wishAllows(log, place)
        && job.pins().stream().allMatch(pin -> pinAllows(pin, log, place));
  }

  /** Logs of one round that are measured and not cut may change walls. */
  private boolean mayChange(AsBuilt.Place from, int place) {
    AsBuilt.Place here = new AsBuilt.Place(round(place), wall(place).name());
    return from.round() == here.round()
        && job.built().isMovable(from)
        && job.built().isMovable(here);
  }

  private boolean keepAllows(Log.Keep keep, int place) {
    Log.Keep reserved = kept.reserved().get(place);
    boolean here =
        switch (keep) {
          case SPARE -> false;
          case SILL -> round(place) == 1;
          case PLATE -> round(place) == rounds;
          case HEADER -> kept.headers().map(over -> over.contains(place)).orElse(true);
          case ANY -> true;
        };
    return here && (reserved == null || reserved == keep);
  }

  private boolean wishAllows(Log log, int place) {
    Log.Wish wish = log.place();
    boolean wall = wish.wall().isEmpty() || wish.wall().equalsIgnoreCase(wall(place).name());
    return wall && (wish.round().isEmpty() || wish.round().getAsInt() == round(place));
  }

  private boolean pinAllows(Pin pin, Log log, int place) {
    boolean wall = pin.wall().isEmpty() || pin.wall().equalsIgnoreCase(wall(place).name());
    boolean round = pin.round().isEmpty() || pin.round().getAsInt() == round(place);
    if (pin.log().isEmpty()) {
      return true;
    }
    boolean exact = !pin.wall().isEmpty() && pin.round().isPresent();
    boolean here = wall && round;
    return pin.log().equals(log.tag()) ? here : !(here && exact);
  }

  /**
   * Matches logs to places, the hardest places first, as many places as can be filled.
   *
   * @return for each place the index of its log, or −1 where none is left
   */
  int[] match() {
    int[] none = new int[count()];
    Arrays.fill(none, NONE);
    return match(none);
  }

  /**
   * Matches logs to the places that have none yet; others change only to make room where no log
   * without a place would do.
   *
   * @param given for each place the index of its log, or −1
   */
  int[] match(int[] given) {
    int[] logOf = given.clone();
    int[] placeOf = new int[job.logs().size()];
    Arrays.fill(placeOf, NONE);
    for (int place = 0; place < logOf.length; place++) {
      logOf[place] = number(place).orElse(logOf[place]);
      if (logOf[place] != NONE && number(place).isEmpty()) {
        placeOf[logOf[place]] = place;
      }
    }
    List<Integer> byNeed = new ArrayList<>();
    for (int place = 0; place < count(); place++) {
      byNeed.add(place);
    }
    byNeed.sort((one, other) -> wall(other).outside().compareTo(wall(one).outside()));
    List<Integer> logs = largestFirst();
    for (int place : byNeed) {
      if (logOf[place] == NONE && !takesFree(place, logOf, placeOf, logs)) {
        augment(place, logOf, placeOf, logs, new boolean[placeOf.length]);
      }
    }
    return logOf;
  }

  private boolean takesFree(int place, int[] logOf, int[] placeOf, List<Integer> logs) {
    for (int log : logs) {
      if (placeOf[log] == NONE && !pieces(log, place).isEmpty()) {
        placeOf[log] = place;
        logOf[place] = log;
        return true;
      }
    }
    return false;
  }

  private List<Integer> largestFirst() {
    List<Integer> order = new ArrayList<>();
    for (int log = 0; log < job.logs().size(); log++) {
      order.add(log);
    }
    order.sort((one, other) -> job.logs().get(other).mid().compareTo(job.logs().get(one).mid()));
    return order;
  }

  private boolean augment(
      int place, int[] logOf, int[] placeOf, List<Integer> logs, boolean[] seen) {
    for (int log : logs) {
      if (seen[log] || pieces(log, place).isEmpty()) {
        continue;
      }
      seen[log] = true;
      if (placeOf[log] == NONE || augment(placeOf[log], logOf, placeOf, logs, seen)) {
        placeOf[log] = place;
        logOf[place] = log;
        return true;
      }
    }
    return false;
  }

  /** Returns a pin that no log can keep in these rounds; empty when all can. */
  static Optional<Phrase> reasonAgainst(Pin pin, Job job, int rounds) {
    if (pin.round().isPresent() && pin.round().getAsInt() > rounds) {
      return Optional.of(
          Phrase.of(NOT_BUILT)
              .with("pin", pin.phrase())
              .with("rounds", Phrase.counted("rounds", rounds)));
    }
    return pin.againstButt(job.building(), job.rules());
  }
}
