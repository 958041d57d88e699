package roundbook.rounds;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Wall;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.takeoff.OpeningCut;

/**
 * Sees to it that logs kept for sills, plates and headers lie there, and not unused.
 *
 * <p>A place of the first or last round, or over an opening, is reserved for logs kept for it for
 * as long as every place can still be filled: sills and headers on the first-laid walls first,
 * plates on those laid last, whose crowns stand half a course higher; of each the longest first.
 * Which places lie over openings follows from the heights, so the plan is made once without and
 * again with them, until they stay or every header log that has a place lies over one; where that
 * costs a round, or never comes about, header logs may lie anywhere and the plan says which do.
 */
final class KeptLogs {
  private static final int TRIES = 3;

  private final Job job;

  KeptLogs(Job job) {
    this.job = job;
  }

  /** Returns the choice with header logs over openings, made by planning with such places. */
  Choice choose(Function<Optional<Set<Integer>>, Choice> plan) {
    Choice free = plan.apply(Optional.empty());
    if (!isKept(Log.Keep.HEADER) || job.openings().isEmpty() || free.courses().isEmpty()) {
      return free;
    }
    Set<Integer> places = headers(free);
    for (int tries = 1; tries <= TRIES; tries++) {
      Choice kept = plan.apply(Optional.of(places));
      if (kept.courses().size() < free.courses().size()) {
        return free;
      }
      Set<Integer> found = headers(kept);
      Set<Integer> laid = headerLogs(kept);
      if (found.equals(places) || !laid.isEmpty() && found.containsAll(laid)) {
        return kept;
      }
      places = found;
    }
    return free;
  }

  /** Returns how many logs kept for headers lie over openings. */
  long overOpenings(Choice choice) {
    Set<Integer> over = isKept(Log.Keep.HEADER) ? headers(choice) : Set.of();
    return headerLogs(choice).stream().filter(over::contains).count();
  }

  private boolean isKept(Log.Keep keep) {
    return job.logs().stream().anyMatch(log -> log.traits().keep() == keep);
  }

  /** Returns the places where logs kept for headers lie. */
  private Set<Integer> headerLogs(Choice choice) {
    return choice.courses().stream()
        .flatMap(course -> course.places().stream())
        .filter(place -> place.first().piece().log().traits().keep() == Log.Keep.HEADER)
        .map(this::number)
        .collect(Collectors.toSet());
  }

  private int number(FilledPlace place) {
    List<Wall> walls = job.building().walls();
    return (place.round() - 1) * walls.size() + walls.indexOf(place.wall());
  }

  /** Returns the places over openings. */
  private Set<Integer> headers(Choice choice) {
    Stack stack = Stack.of(job.rules(), job.building(), choice.courses(), job.built());
    return OpeningCut.headers(job, stack).stream().map(this::number).collect(Collectors.toSet());
  }

  /** Returns the places with those reserved that kept logs can fill. */
  Places reserved(Places places, Optional<Set<Integer>> headers) {
    Places kept = places.withHeaders(headers);
    if (!kept.fillable()) {
      return reserved(places, Optional.empty());
    }
    int last = places.count() - places.walls().size();
    kept = reserved(kept, Log.Keep.SILL, IntStream.range(0, places.walls().size()));
    kept = reserved(kept, Log.Keep.PLATE, IntStream.range(last, places.count()));
    Set<Integer> over = headers.orElse(Set.of());
    return reserved(kept, Log.Keep.HEADER, over.stream().mapToInt(Integer::intValue));
  }

  private Places reserved(Places places, Log.Keep keep, IntStream zone) {
    if (!isKept(keep)) {
      return places;
    }
    boolean laidFirst = keep != Log.Keep.PLATE;
    List<Integer> order =
        zone.filter(place -> place < places.count())
            .boxed()
            .sorted(
                Comparator.<Integer, Boolean>comparing(
                        place -> places.wall(place).laidFirst() != laidFirst)
                    .thenComparing(place -> places.wall(place).outside(), Comparator.reverseOrder())
                    .thenComparing(place -> place))
            .toList();
    Places kept = places;
    for (int place : order) {
      Map<Integer, Log.Keep> more = new HashMap<>(kept.reserved());
      more.putIfAbsent(place, keep);
      Places tried = kept.withReserved(more);
      kept = tried.fillable() ? tried : kept;
    }
    return kept;
  }
}
