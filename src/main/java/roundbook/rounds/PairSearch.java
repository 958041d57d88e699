package roundbook.rounds;

import java.util.ArrayList;
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
  private final BiFunction<Log, CutPlaceSide, List<PlacedLog>> serving;
  private final Map<CutPlaceSide, Map<String, List<PlacedLog>>> ways = new HashMap<>();
  private final Map<CutPlaceSide, PlacedLog> chosen = new LinkedHashMap<>();

  PairSearch(Job job, PairGaps gaps, BiFunction<Log, CutPlaceSide, List<PlacedLog>> serving) {
    this.job = job;
    this.gaps = gaps;
    this.serving = serving;
  }

  /** Returns the pairs of as many spots as can be filled. */
  List<FilledPlace> best(List<CutPlace> spots, Map<CutPlace, FilledPlace> start, List<Log> free) {
    List<CutPlace> filled = new ArrayList<>();
    for (CutPlace spot : spots) {
      filled.add(spot);
      if (!fills(sides(filled), free)) {
        filled.remove(spot);
      }
    }
    deal(filled, start, free);
    for (int sweep = 0; sweep < SWEEPS && sweep(free); sweep++) {}
    return filled.stream().map(this::pair).toList();
  }

  private static List<CutPlaceSide> sides(List<CutPlace> spots) {
    return spots.stream()
        .flatMap(
            spot ->
                java.util.stream.Stream.of(
                    new CutPlaceSide(spot, true), new CutPlaceSide(spot, false)))
        .toList();
  }

  private List<PlacedLog> ways(Log log, CutPlaceSide side) {
    return ways.computeIfAbsent(side, each -> new HashMap<>())
        .computeIfAbsent(log.tag(), tag -> serving.apply(log, side));
  }

  /** Returns whether there is a log of its own for every side. */
  private boolean fills(List<CutPlaceSide> sides, List<Log> free) {
    Map<Log, CutPlaceSide> taken = new HashMap<>();
    return sides.stream().allMatch(side -> takes(side, free, taken, new HashSet<>()));
  }

  private boolean takes(
      CutPlaceSide side, List<Log> free, Map<Log, CutPlaceSide> taken, Set<Log> seen) {
    for (Log log : free) {
      if (!ways(log, side).isEmpty() && seen.add(log)) {
        CutPlaceSide other = taken.get(log);
        if (other == null || takes(other, free, taken, seen)) {
          taken.put(log, side);
          return true;
        }
      }
    }
    return false;
  }

  /** Gives each side the log nearest to its round in size, the longest sides first. */
  private void deal(List<CutPlace> spots, Map<CutPlace, FilledPlace> start, List<Log> free) {
    List<Log> left = new ArrayList<>(free);
    List<CutPlaceSide> open = new ArrayList<>();
    for (CutPlaceSide side : sides(spots)) {
      if (start.containsKey(side.spot())) {
        give(side, start.get(side.spot()).logs().get(side.left() ? 0 : 1), left);
      } else {
        open.add(side);
      }
    }
    if (!fills(open, left)) {
      chosen.clear();
      left = new ArrayList<>(free);
      open = new ArrayList<>(sides(spots));
    }
    open.sort(Comparator.comparing(CutPlaceSide::length).reversed());
    while (!open.isEmpty()) {
      CutPlaceSide side = open.remove(0);
      for (PlacedLog half : nearest(side, left)) {
        List<Log> rest = new ArrayList<>(left);
        rest.remove(half.piece().log());
        if (fills(open, rest)) {
          give(side, half, left);
          break;
        }
      }
    }
    spots.forEach(this::lay);
  }

  private void give(CutPlaceSide side, PlacedLog half, List<Log> left) {
    chosen.put(side, half);
    left.remove(half.piece().log());
  }

  private List<PlacedLog> nearest(CutPlaceSide side, List<Log> logs) {
    Length size = gaps.course(side.spot().round()).notch().size();
    return logs.stream()
        .flatMap(log -> ways(log, side).stream().limit(1))
        .sorted(
            Comparator.comparing((PlacedLog half) -> half.piece().mid().minus(size).absolute())
                .thenComparing(half -> half.piece().log().length())
                .thenComparing(half -> half.piece().log().tag()))
        .toList();
  }

  /** Goes over all sides once; returns whether anything got better. */
  private boolean sweep(List<Log> free) {
    double before = gaps.cost();
    double now = before;
    for (CutPlaceSide side : List.copyOf(chosen.keySet())) {
      for (Log log : free) {
        now = tried(side, log, now);
      }
    }
    for (CutPlace spot : chosen.keySet().stream().map(CutPlaceSide::spot).distinct().toList()) {
      now = triedBoth(spot, free, now);
    }
    return now < before - WORTH;
  }

  /** Puts a log at a side where that is better, changing places with the one that stands there. */
  private double tried(CutPlaceSide side, Log log, double now) {
    CutPlaceSide other = sideOf(log);
    PlacedLog own = chosen.get(side);
    boolean apart = other != null && !other.equals(side);
    List<PlacedLog> back = apart ? ways(own.piece().log(), other) : List.of();
    List<Both> both = new ArrayList<>();
    for (PlacedLog half : ways(log, side)) {
      for (PlacedLog returned : apart ? simple(back) : List.of(half)) {
        both.add(new Both(half, returned));
      }
    }
    return tried(side, apart ? other : side, both, now);
  }

  /** Puts two logs at a spot at once where that is better, of those that lie there or nowhere. */
  private double triedBoth(CutPlace spot, List<Log> free, double now) {
    CutPlaceSide left = new CutPlaceSide(spot, true);
    CutPlaceSide right = new CutPlaceSide(spot, false);
    List<Log> own =
        free.stream()
            .filter(log -> sideOf(log) == null || sideOf(log).spot().equals(spot))
            .toList();
    List<Both> both = new ArrayList<>();
    for (PlacedLog one : near(left, own)) {
      for (PlacedLog other : near(right, own)) {
        if (!one.piece().log().equals(other.piece().log())) {
          both.add(new Both(one, other));
        }
      }
    }
    return tried(left, right, both, now);
  }

  /**
   * What lies at two sides at once.
   *
   * @param one what lies at the first
   * @param other what lies at the second, the same where that is the same side
   */
  private record Both(PlacedLog one, PlacedLog other) {}

  /** Leaves at two sides what is best of what lies there and of other ways. */
  private double tried(CutPlaceSide one, CutPlaceSide other, List<Both> ways, double now) {
    double best = now;
    Both kept = new Both(chosen.get(one), chosen.get(other));
    for (Both way : ways) {
      put(one, other, way);
      double cost = gaps.cost();
      if (cost < best - WORTH) {
        best = cost;
        kept = way;
      }
    }
    put(one, other, kept);
    return best;
  }

  private void put(CutPlaceSide one, CutPlaceSide other, Both both) {
    put(one, both.one);
    put(other, both.other);
  }

  /** Returns simple ways of the logs nearest to a round in size. */
  private List<PlacedLog> near(CutPlaceSide side, List<Log> logs) {
    return nearest(side, logs).stream()
        .limit(NEAR)
        .flatMap(half -> simple(ways(half.piece().log(), side)).stream())
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

  private void put(CutPlaceSide side, PlacedLog half) {
    if (chosen.put(side, half) != half) {
      lay(side.spot());
    }
  }

  private FilledPlace pair(CutPlace spot) {
    return FilledPlace.of(
        job, chosen.get(new CutPlaceSide(spot, true)), chosen.get(new CutPlaceSide(spot, false)));
  }

  private void lay(CutPlace spot) {
    gaps.put(pair(spot));
  }
}
