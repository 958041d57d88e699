package roundbook.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;
import roundbook.job.Opening;
import roundbook.rounds.Pairing.CutPlace;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

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

  private final PairedJob given;
  private final Job job;

  ShortPairs(PairedJob given) {
    this.given = given;
    this.job = given.job();
  }

  /** Returns the choice with short logs beside openings, made by planning with pairs of them. */
  Choice choose(Function<PairedJob, Choice> plan) {
    boolean asked = job.openings().stream().anyMatch(Opening::shortLogs);
    return asked && given.pairs().isEmpty()
        ? improved(plan, plan.apply(given), Pairing.Wish.ANY)
        : plan.apply(given);
  }

  /**
   * Returns the choice that keeps what pairs of an earlier plan there still are, and makes new ones
   * in the places of those that there no longer are.
   *
   * @param kept the pairs that can stay
   * @param had the places that had a pair
   */
  Choice keep(List<FilledPlace> kept, Set<Place> had, Function<PairedJob, Choice> plan) {
    if (had.isEmpty() || !given.pairs().isEmpty()) {
      return plan.apply(given);
    }
    Choice first = planned(plan, kept);
    return improved(plan, first, new Pairing.Wish(had, true));
  }

  private Choice improved(Function<PairedJob, Choice> plan, Choice first, Pairing.Wish wish) {
    Choice best = first;
    Choice base = first;
    Set<Place> refused = new HashSet<>();
    for (int tries = 0; tries < TRIES; tries++) {
      List<FilledPlace> pairs = pairs(base, refused, wish);
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
    return wish.keeping() ? best : withLeftOver(plan, best);
  }

  /** Adds pairs of the logs left over, each of which keeps every gap where it would lie. */
  private Choice withLeftOver(Function<PairedJob, Choice> plan, Choice choice) {
    Choice best = choice;
    for (PairMiss near : PairMiss.nearest(job, choice, stack(choice))) {
      boolean free = near.pair().logs().stream().allMatch(isLeft(best));
      if (near.keepsAll() && free) {
        List<FilledPlace> pairs = new ArrayList<>(best.pairs());
        pairs.add(near.pair());
        Choice other = planned(plan, pairs);
        boolean sound = unwanted(other).isEmpty() && worst(other).isEmpty();
        best = sound && isBetter(other, best) ? other : best;
      }
    }
    return best;
  }

  private static Predicate<PlacedLog> isLeft(Choice choice) {
    return half -> choice.unused().contains(half.piece().log());
  }

  /** Returns pairs for the most rounds that they make whole, or for one more than there are. */
  private List<FilledPlace> pairs(Choice base, Set<Place> refused, Pairing.Wish wish) {
    int built = base.courses().size();
    int goal = base.shortage().map(Shortage::wanted).orElse(built);
    while (true) {
      List<FilledPlace> pairs = new Pairing(job, base, refused, wish, goal).pairs();
      if (goal <= built + 1 || new Places(PairedJob.of(job, pairs), goal).fillable()) {
        return pairs;
      }
      goal--;
    }
  }

  private Choice planned(Function<PairedJob, Choice> plan, List<FilledPlace> pairs) {
    return plan.apply(PairedJob.of(job, pairs)).ofPairs(job, pairs);
  }

  private static boolean isBetter(Choice choice, Choice than) {
    int rounds = Integer.compare(choice.courses().size(), than.courses().size());
    int pairs = Integer.compare(choice.placedPairs().size(), than.placedPairs().size());
    if (rounds != 0 || pairs != 0) {
      return rounds > 0 || rounds == 0 && pairs > 0;
    }
    return choice.score().total() < than.score().total();
  }

  /** Takes out pairs that spoil something, the worst first, while no round is lost by it. */
  private Choice withoutSpoiled(
      Function<PairedJob, Choice> plan, Choice choice, Set<Place> refused) {
    Choice sound = choice;
    for (Optional<PairMiss> bad = worst(sound); bad.isPresent(); bad = worst(sound)) {
      Place out = bad.get().pair().place();
      List<FilledPlace> rest =
          sound.pairs().stream().filter(pair -> !pair.place().equals(out)).toList();
      Choice other = planned(plan, rest);
      if (other.courses().size() < choice.courses().size()) {
        break;
      }
      refused.add(out);
      sound = other;
    }
    return sound;
  }

  private List<FilledPlace> open(Choice choice) {
    return choice.placedPairs().stream()
        .filter(pair -> !job.built().held().containsKey(pair.place()))
        .toList();
  }

  /** Returns the places of pairs that no opening cuts through just so by the choice's heights. */
  private Set<Place> unwanted(Choice choice) {
    Map<Place, CutPlace> spots = Pairing.spots(job, stack(choice));
    return open(choice).stream()
        .filter(pair -> !spots.containsKey(pair.place()) || !spots.get(pair.place()).takes(pair))
        .map(FilledPlace::place)
        .collect(Collectors.toSet());
  }

  /** Returns the pair that spoils most: a gap outside its limits, or else an end. */
  private Optional<PairMiss> worst(Choice choice) {
    Stack stack = stack(choice);
    return open(choice).stream()
        .map(pair -> PairMiss.of(job, stack, pair))
        .filter(miss -> !miss.keepsAll())
        .max(Comparator.naturalOrder());
  }

  private Stack stack(Choice choice) {
    return Stack.of(job.rules(), job.building(), choice.courses(), job.built());
  }
}
