package roundbook.rounds;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.rounds.Pairing.CutPlace;
import roundbook.rounds.Pairing.CutPlaceSide;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/** Looks for the short logs that leave the evenest gaps, all other logs staying where they are. */
final class PairSearch {
  private static final int SWEEPS = 4;
  private static final int NEAR = 6;
  private static final double WORTH = 1e-9;

  private final Job job;
  private final PairGaps gaps;
  private final List<Log> free;
  private final BiFunction<Log, CutPlaceSide, List<PlacedLog>> serving;
  private final Map<CutPlaceSide, Map<Log, List<PlacedLog>>> ways = new HashMap<>();
  private final Map<CutPlaceSide, PlacedLog> chosen = new LinkedHashMap<>();
  private double cost;

  /**
   * Begins with nothing chosen.
   *
   * @param job the job
   * @param gaps the gaps of what lies there, kept up to date
   * @param free the logs that may lie beside openings
   * @param serving the ways in which a log may lie at a side, the simplest first
   */
  PairSearch(
      Job job,
      PairGaps gaps,
      List<Log> free,
      BiFunction<Log, CutPlaceSide, List<PlacedLog>> serving) {
    this.job = job;
    this.gaps = gaps;
    this.free = free;
    this.serving = serving;
  }

  /** Returns the pairs of as many spots as can be filled, those that lie there already first. */
  List<FilledPlace> best(List<CutPlace> spots, Map<CutPlace, FilledPlace> start) {
    Map<Log, CutPlaceSide> taken = new HashMap<>();
    start.forEach(
        (spot, pair) -> spot.sides().forEach(side -> taken.put(side.of(pair).piece().log(), side)));
    for (CutPlace spot : spots) {
      Map<Log, CutPlaceSide> before = new HashMap<>(taken);
      if (!start.containsKey(spot)
          && !spot.sides().stream().allMatch(side -> takes(side, taken, new HashSet<>()))) {
        taken.clear();
        taken.putAll(before);
      }
    }
    List<CutPlace> filled =
        spots.stream().filter(spot -> taken.containsValue(spot.sides().get(0))).toList();
    filled.forEach(spot -> spot.sides().forEach(side -> chosen.put(side, null)));
    taken.forEach((log, side) -> chosen.put(side, first(log, side, start.get(side.spot()))));
    filled.forEach(spot -> gaps.put(pair(spot)));
    cost = gaps.cost();
    double before = Double.MAX_VALUE;
    for (int sweep = 0; sweep < SWEEPS && cost < before - WORTH; sweep++) {
      before = cost;
      chosen.keySet().forEach(side -> free.forEach(log -> lay(log, side)));
      filled.forEach(this::layBoth);
    }
    return filled.stream().map(this::pair).toList();
  }

  private PlacedLog first(Log log, CutPlaceSide side, FilledPlace start) {
    boolean stays = start != null && side.of(start).piece().log().equals(log);
    return stays ? side.of(start) : ways(log, side).get(0);
  }

  /** Finds a log of its own for a side, the nearest to its round's size; others may make room. */
  private boolean takes(CutPlaceSide side, Map<Log, CutPlaceSide> taken, Set<Log> seen) {
    for (PlacedLog half : nearest(side)) {
      Log log = half.piece().log();
      if (seen.add(log) && (!taken.containsKey(log) || takes(taken.get(log), taken, seen))) {
        taken.put(log, side);
        return true;
      }
    }
    return false;
  }

  private List<PlacedLog> ways(Log log, CutPlaceSide side) {
    return ways.computeIfAbsent(side, each -> new HashMap<>())
        .computeIfAbsent(log, each -> serving.apply(each, side));
  }

  /** Returns a way of each log that may lie at a side, those nearest to its round's size first. */
  private List<PlacedLog> nearest(CutPlaceSide side) {
    Length size = gaps.course(side.spot().round()).notch().size();
    return free.stream()
        .flatMap(log -> ways(log, side).stream().limit(1))
        .sorted(
            Comparator.comparing((PlacedLog half) -> half.piece().mid().minus(size).absolute())
                .thenComparing(half -> half.piece().log().length())
                .thenComparing(half -> half.piece().log().tag()))
        .toList();
  }

  /** Lays a log at a side where that is better, changing places with the one that lies there. */
  private void lay(Log log, CutPlaceSide side) {
    CutPlaceSide other = sideOf(log);
    Log own = chosen.get(side).piece().log();
    for (PlacedLog half : ways(log, side)) {
      if (other == null || other.equals(side)) {
        layIfBetter(Map.of(side, half));
      } else {
        simple(ways(own, other)).forEach(back -> layIfBetter(Map.of(side, half, other, back)));
      }
    }
  }

  /** Lays two logs at a spot at once where that is better, of those that lie there or nowhere. */
  private void layBoth(CutPlace spot) {
    for (PlacedLog left : near(spot.sides().get(0))) {
      for (PlacedLog right : near(spot.sides().get(1))) {
        if (!left.piece().log().equals(right.piece().log())) {
          layIfBetter(Map.of(spot.sides().get(0), left, spot.sides().get(1), right));
        }
      }
    }
  }

  /** Returns simple ways of the logs nearest to a round in size that lie at its spot or nowhere. */
  private List<PlacedLog> near(CutPlaceSide side) {
    return nearest(side).stream()
        .map(half -> half.piece().log())
        .filter(log -> sideOf(log) == null || sideOf(log).spot().equals(side.spot()))
        .limit(NEAR)
        .flatMap(log -> simple(ways(log, side)).stream())
        .toList();
  }

  /** Returns the ways with the excess off one end, butt out and butt in. */
  private static List<PlacedLog> simple(List<PlacedLog> ways) {
    return ways.stream().limit(2).toList();
  }

  private CutPlaceSide sideOf(Log log) {
    return chosen.entrySet().stream()
        .filter(each -> each.getValue().piece().log().equals(log))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(null);
  }

  private void layIfBetter(Map<CutPlaceSide, PlacedLog> halves) {
    Map<CutPlaceSide, PlacedLog> old = new HashMap<>();
    halves.keySet().forEach(side -> old.put(side, chosen.get(side)));
    put(halves);
    double now = gaps.cost();
    if (now < cost - WORTH) {
      cost = now;
    } else {
      put(old);
    }
  }

  private void put(Map<CutPlaceSide, PlacedLog> halves) {
    chosen.putAll(halves);
    halves.keySet().stream().map(CutPlaceSide::spot).distinct().map(this::pair).forEach(gaps::put);
  }

  private FilledPlace pair(CutPlace spot) {
    return FilledPlace.of(job, chosen.get(spot.sides().get(0)), chosen.get(spot.sides().get(1)));
  }
}
