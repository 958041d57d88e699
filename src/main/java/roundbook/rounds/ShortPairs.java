package roundbook.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.balance.Effort;
import roundbook.job.AsBuilt.Place;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Sees to it that short logs lie beside openings where that is asked for, two in a place, so that
 * long ones are free.
 *
 * <p>Which places openings cut through follows from the heights, so the plan is made once without
 * short logs and again with pairs of them in such places, until the pairs stay. A pair that its
 * place turns out not to want is taken out for good; so is one that leaves a gap outside its limits
 * or a flagged end, unless a round would be lost for want of a long log; and the other places are
 * tried with the logs that it had.
 */
final class ShortPairs {
  private static final int TRIES = 8;

  /** Moves a slot of a search for pairs. */
  private static final long MOVES = 15_000;

  private final PairedJob given;
  private final Job job;
  private final Effort effort;
  private final Map<Asked, Optional<List<FilledPlace>>> searched = new HashMap<>();

  ShortPairs(PairedJob given, Effort effort) {
    this.given = given;
    this.job = given.job();
    this.effort = effort.telling(done -> {});
  }

  /**
   * What pairs are searched for, which other plans ask for again.
   *
   * @param rounds how many rounds are to stand
   * @param open the places that may have pairs
   * @param settled the places that stay as they are
   */
  private record Asked(int rounds, List<OpeningPlace> open, List<FilledPlace> settled) {}

  /** Returns the choice with short logs beside openings, made by planning with pairs of them. */
  Choice choose(Function<PairedJob, Choice> plan) {
    boolean asked = job.openings().stream().anyMatch(Opening::shortLogs);
    Choice first = plan.apply(given);
    return asked && given.pairs().isEmpty() && !job.logs().isEmpty()
        ? improved(plan, first, Optional.empty())
        : first;
  }

  /**
   * Returns the choice that keeps what pairs of an earlier plan there still are, and makes new ones
   * in the places of those that there no longer are, or in any while rounds are missing.
   *
   * @param kept the pairs that can stay
   * @param had the places that had a pair
   */
  Choice keep(List<FilledPlace> kept, Set<Place> had, Function<PairedJob, Choice> plan) {
    return had.isEmpty() || !given.pairs().isEmpty()
        ? plan.apply(given)
        : improved(plan, planned(plan, kept), Optional.of(had));
  }

  /** Makes pairs; where places had some, all other logs stay. */
  private Choice improved(
      Function<PairedJob, Choice> plan, Choice first, Optional<Set<Place>> had) {
    Choice best = first;
    Choice base = first;
    Set<Place> refused = new HashSet<>();
    for (int tries = 0; tries < TRIES; tries++) {
      List<FilledPlace> pairs = pairs(base, refused, had);
      if (pairs.equals(base.pairs())) {
        break;
      }
      base = planned(plan, pairs);
      Set<Place> bad = unwanted(base);
      if (bad.isEmpty()) {
        best = isBetter(base, best) ? base : best;
        bad = spoiling(base).map(miss -> Set.of(miss.pair().place())).orElse(Set.of());
      }
      refused.addAll(bad);
    }
    return best;
  }

  /** Returns whether openings cut through all pairs of a choice, and none spoils anything. */
  boolean suits(Choice choice) {
    return unwanted(choice).isEmpty() && spoiling(choice).isEmpty();
  }

  /** Returns pairs for the most rounds that stand with them, those that stay first. */
  private List<FilledPlace> pairs(Choice base, Set<Place> refused, Optional<Set<Place>> had) {
    int built = base.courses().size();
    int goal = base.shortage().map(Shortage::wanted).orElse(built);
    Map<Place, OpeningPlace> open = OpeningPlace.of(job, stack(foreseen(base.courses(), goal)));
    List<FilledPlace> fixed =
        base.pairs().stream()
            .filter(pair -> isHeld(pair) || had.isPresent() && takes(open, pair))
            .toList();
    fixed.forEach(pair -> open.remove(pair.place()));
    boolean any = had.isEmpty() || base.shortage().isPresent();
    open.values().removeIf(place -> place.isSettled(job) || refused.contains(place.place()));
    open.keySet().removeIf(place -> !any && !had.orElseThrow().contains(place));
    Stream<FilledPlace> stay =
        base.courses().stream()
            .flatMap(course -> course.places().stream())
            .filter(place -> had.isPresent() || isHeld(place));
    List<FilledPlace> settled = stay.filter(place -> !open.containsKey(place.place())).toList();
    for (int rounds = goal; rounds >= Math.max(1, built); rounds--) {
      int most = rounds;
      List<OpeningPlace> here = open.values().stream().filter(p -> p.round() <= most).toList();
      if (here.isEmpty()) {
        break;
      }
      Optional<List<FilledPlace>> found =
          searched.computeIfAbsent(new Asked(rounds, here, settled), this::search);
      if (found.isPresent()) {
        return Stream.concat(fixed.stream(), found.get().stream()).toList();
      }
    }
    return fixed;
  }

  private Optional<List<FilledPlace>> search(Asked asked) {
    return new OpeningPieces(job, asked.rounds(), asked.open(), asked.settled(), job.logs())
        .chosen(OpeningPieces.ASKED, looking(asked.rounds()));
  }

  private Effort looking(int rounds) {
    long moves = MOVES * rounds * job.building().walls().size();
    return effort.withMoves(effort.moves() == 0 ? moves : Math.min(moves, effort.moves()));
  }

  /** Returns the rounds that stand, with cylinders of the last size where others are missing. */
  List<Course> foreseen(List<Course> courses, int wanted) {
    List<Course> all = new ArrayList<>(courses);
    List<Length> mids = job.logs().stream().map(Log::mid).sorted().toList();
    Length size =
        courses.isEmpty()
            ? mids.get(mids.size() / 2)
            : courses.get(courses.size() - 1).notch().size();
    for (int round = courses.size() + 1; round <= wanted; round++) {
      int number = round;
      List<FilledPlace> places =
          job.building().walls().stream().map(wall -> cylinder(wall, number, size)).toList();
      all.add(Course.of(round, places, job.rules()));
    }
    return all;
  }

  private FilledPlace cylinder(Wall wall, int round, Length size) {
    Length trimmed = job.building().trimmed(wall, job.rules().overhang());
    DiameterProfile even = DiameterProfile.of(trimmed, size, size, size);
    Log log = new OrderedLogs(job).log(round, trimmed, size).measured(even);
    Piece piece = new Piece(log, Length.ZERO, trimmed);
    return FilledPlace.of(piece, wall, round, job.isButtAtStart(wall, round));
  }

  private boolean isHeld(FilledPlace place) {
    return job.built().held().containsKey(place.place());
  }

  private static boolean takes(Map<Place, OpeningPlace> open, FilledPlace pair) {
    return open.containsKey(pair.place()) && open.get(pair.place()).takes(pair);
  }

  private Choice planned(Function<PairedJob, Choice> plan, List<FilledPlace> pairs) {
    return plan.apply(PairedJob.of(job, pairs)).ofPairs(job, pairs);
  }

  /** Orders by rounds, then by whether pairs spoil anything, by pairs and by score. */
  private boolean isBetter(Choice choice, Choice than) {
    Comparator<Choice> worth =
        Comparator.comparingInt((Choice each) -> each.courses().size())
            .thenComparing(each -> spoiling(each).isEmpty())
            .thenComparingInt(each -> each.placedPairs().size())
            .thenComparingDouble(each -> -each.score().total());
    return worth.compare(choice, than) > 0;
  }

  private List<FilledPlace> open(Choice choice) {
    return choice.placedPairs().stream().filter(pair -> !isHeld(pair)).toList();
  }

  /** Returns the places of pairs that no opening cuts through just so by the choice's heights. */
  private Set<Place> unwanted(Choice choice) {
    Map<Place, OpeningPlace> spots = OpeningPlace.of(job, stack(choice.courses()));
    return open(choice).stream()
        .filter(pair -> !takes(spots, pair))
        .map(FilledPlace::place)
        .collect(Collectors.toSet());
  }

  /** Returns the pair that spoils most: a gap outside its limits, or else an end. */
  private Optional<PairMiss> spoiling(Choice choice) {
    Stack stack = stack(choice.courses());
    return open(choice).stream()
        .map(pair -> PairMiss.of(job, stack, pair))
        .filter(miss -> !miss.keepsAll())
        .max(Comparator.naturalOrder());
  }

  private Stack stack(List<Course> courses) {
    return Stack.of(job.rules(), job.building(), courses, job.built());
  }
}
