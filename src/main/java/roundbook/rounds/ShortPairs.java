package roundbook.rounds;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Opening;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/**
 * Sees to it that short logs lie beside openings where that is asked for, two in a place, so that
 * long ones are free.
 *
 * <p>Which places openings cut through follows from the heights, so the plan is made once without
 * short logs and again with pairs of them in such places, until the pairs stay. A pair that its
 * place turns out not to want is taken out for good; so is one that leaves a gap outside its limits
 * or a thin end, unless a round would be lost for want of a long log; and the other places are
 * tried with the logs that it had.
 */
final class ShortPairs {
  private static final int TRIES = 8;

  private final Job job;

  ShortPairs(Job job) {
    this.job = job;
  }

  /** Returns the choice with short logs beside openings, made by planning with pairs of them. */
  Choice choose(Function<Job, Choice> plan) {
    boolean asked = job.openings().stream().anyMatch(Opening::shortLogs);
    boolean paired = job.logs().stream().anyMatch(log -> log.pair().isPresent());
    return asked && !paired
        ? improved(plan, plan.apply(job), new Pairing.Wish(Set.of(), false))
        : plan.apply(job);
  }

  /**
   * Returns the choice that keeps what pairs of an earlier plan there still are, and makes new ones
   * in the places of those that there no longer are.
   *
   * @param kept the pairs that can stay
   * @param had the places that had a pair
   */
  Choice keep(List<Log> kept, Set<Place> had, Function<Job, Choice> plan) {
    boolean paired = job.logs().stream().anyMatch(log -> log.pair().isPresent());
    if (had.isEmpty() || paired) {
      return plan.apply(job);
    }
    Choice first = plan.apply(job.paired(kept)).ofPairs(job, kept);
    return improved(plan, first, new Pairing.Wish(had, true));
  }

  private Choice improved(Function<Job, Choice> plan, Choice first, Pairing.Wish wish) {
    Choice best = first;
    Choice base = first;
    Set<Place> refused = new HashSet<>();
    for (int tries = 0; tries < TRIES; tries++) {
      List<Log> pairs = new Pairing(job, base, refused, wish).pairs();
      if (pairs.equals(base.pairs())) {
        break;
      }
      int before = refused.size();
      base = planned(plan, pairs);
      if (unwanted(base).isEmpty()) {
        base = withoutSpoiled(plan, base, refused);
      }
      Set<Place> unwanted = unwanted(base);
      refused.addAll(unwanted);
      if (unwanted.isEmpty() && isBetter(base, best)) {
        best = base;
      } else if (refused.size() == before) {
        break;
      }
    }
    return best;
  }

  private Choice planned(Function<Job, Choice> plan, List<Log> pairs) {
    return plan.apply(job.paired(pairs)).ofPairs(job, pairs);
  }

  private static boolean isBetter(Choice choice, Choice than) {
    int rounds = Integer.compare(choice.courses().size(), than.courses().size());
    int pairs = Integer.compare(choice.placedPairs().size(), than.placedPairs().size());
    if (rounds != 0 || pairs != 0) {
      return rounds > 0 || rounds == 0 && pairs > 0;
    }
    return choice.score().total() < than.score().total();
  }

  /** Takes pairs that spoil something out, for as long as it has as many rounds without them. */
  private Choice withoutSpoiled(Function<Job, Choice> plan, Choice choice, Set<Place> refused) {
    Choice sound = choice;
    for (Set<Place> bad = spoiled(sound); !bad.isEmpty(); bad = spoiled(sound)) {
      Set<Place> out = bad;
      List<Log> rest = sound.pairs().stream().filter(pair -> !out.contains(place(pair))).toList();
      Choice other = planned(plan, rest);
      if (other.courses().size() < choice.courses().size()) {
        break;
      }
      refused.addAll(bad);
      sound = other;
    }
    return sound;
  }

  /** Returns the place of a pair. */
  static Place place(Log pair) {
    return new Place(pair.place().round().orElseThrow(), pair.place().wall());
  }

  private static Place place(PlacedLog log) {
    return new Place(log.round(), log.wall().name());
  }

  private Stream<PlacedLog> open(Choice choice) {
    return choice.courses().stream()
        .flatMap(course -> course.logs().stream())
        .filter(log -> log.piece().log().pair().isPresent())
        .filter(log -> job.built().held(log.round(), log.wall().name()).isEmpty());
  }

  /** Returns the places of pairs that no opening cuts through just so by the choice's heights. */
  private Set<Place> unwanted(Choice choice) {
    Map<Place, Pairing.Spot> spots = Pairing.spots(job, stack(choice));
    Set<Place> unwanted = new HashSet<>();
    open(choice)
        .filter(log -> !spots.containsKey(place(log)) || !spots.get(place(log)).takes(log))
        .forEach(log -> unwanted.add(place(log)));
    return unwanted;
  }

  /** Returns the places of pairs that leave a gap outside its limits, or have a thin end. */
  private Set<Place> spoiled(Choice choice) {
    Stack stack = stack(choice);
    Set<Place> spoiled = new HashSet<>();
    List<PlacedLog> pairs = new ArrayList<>(open(choice).toList());
    for (PlacedLog log : pairs) {
      boolean gaps =
          stack.joints(log.wall(), log.round()).stream()
              .anyMatch(joint -> joint.flag(job.rules()) != Joint.Flag.NONE);
      var course = stack.courses().get(log.round() - 1);
      if (gaps || PairGaps.hasThinEnd(job, course, log)) {
        spoiled.add(place(log));
      }
    }
    return spoiled;
  }

  private Stack stack(Choice choice) {
    return Stack.of(job.rules(), job.building(), choice.courses(), job.built());
  }
}
