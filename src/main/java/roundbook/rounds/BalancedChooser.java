package roundbook.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import roundbook.balance.BalanceResult;
import roundbook.balance.BalanceTask.RingPlace;
import roundbook.balance.Balancer;
import roundbook.balance.Effort;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;

/**
 * Chooses logs by the balance engine, for as many rounds as can be filled.
 *
 * <p>How many rounds stand is settled first, by matching logs to places under the hard rules; then
 * the engine makes the score small.
 */
public final class BalancedChooser implements Chooser {
  private final Balancer balancer;

  /** Chooses with the engine's search. */
  public BalancedChooser() {
    this(Balancer.search());
  }

  BalancedChooser(Balancer balancer) {
    this.balancer = balancer;
  }

  @Override
  public Choice choose(PairedJob paired, Effort effort) {
    Job job = paired.job();
    int guess = new Wanted(paired).rounds();
    if (job.rules().rounds().isEmpty() && Wanted.height(job).isEmpty()) {
      return new ShortPairs(paired).choose(with -> choose(with, new Wanted(with).rounds(), effort));
    }
    return Wanted.height(job)
        .map(height -> new ByHeight(job, height, rounds -> paired(paired, rounds, effort)))
        .map(search -> search.from(guess))
        .orElseGet(() -> paired(paired, guess, effort));
  }

  /** Chooses logs for a number of rounds, short ones beside openings where that is asked for. */
  private Choice paired(PairedJob job, int wanted, Effort effort) {
    return new ShortPairs(job).choose(with -> choose(with, wanted, effort));
  }

  /** Chooses logs for a number of rounds, or for as many of them as the logs allow. */
  private Choice choose(PairedJob job, int wanted, Effort effort) {
    return new KeptLogs(job.job()).choose(headers -> choose(job, wanted, headers, effort));
  }

  private Choice choose(
      PairedJob paired, int wanted, Optional<Set<Integer>> headers, Effort effort) {
    Job job = paired.job();
    Places places = fillable(new Places(paired, wanted));
    KeptLogs kept = new KeptLogs(job);
    while (places.rounds() > 0) {
      BalanceJob balance = new BalanceJob(kept.reserved(places, headers));
      BalanceResult result = balancer.solve(balance.task(), effort);
      if (result.isComplete() && balance.keepsTips(result)) {
        return choice(places, balance, result, wanted);
      }
      places = fillable(places.withRounds(places.rounds() - 1));
    }
    Choice.Score none = new Choice.Score(0, 0, 0, 0, 0, 0);
    Optional<Shortage> shortage = new Wanted(paired).shortage(wanted, 0);
    return new Choice(List.of(), job.logs(), none, shortage, problems(job, 0));
  }

  private static Places fillable(Places most) {
    Places places = most;
    while (places.rounds() > 0 && !places.fillable()) {
      places = places.withRounds(places.rounds() - 1);
    }
    return places;
  }

  static Choice choice(Places places, BalanceJob balance, BalanceResult result, int wanted) {
    Job job = places.job();
    List<Course> courses = new ArrayList<>();
    List<Log> unused = new ArrayList<>(job.logs());
    for (int round = 1; round <= places.rounds(); round++) {
      List<FilledPlace> filled = new ArrayList<>();
      for (int side = 0; side < places.walls().size(); side++) {
        filled.add(balance.filled(result, new RingPlace(0, round - 1, side)));
      }
      filled.forEach(place -> place.logs().forEach(log -> unused.remove(log.piece().log())));
      courses.add(course(job, round, filled));
    }
    return new Choice(
        courses,
        unused,
        BalanceJob.score(result.score()),
        new Wanted(places.paired()).shortage(wanted, places.rounds()),
        problems(job, places.rounds()));
  }

  static Course course(Job job, int round, List<FilledPlace> places) {
    return job.built()
        .cutSize(round)
        .map(cut -> Course.cut(round, places, cut, job.rules()))
        .orElseGet(() -> Course.of(round, places, job.rules()));
  }

  private static List<Problem> problems(Job job, int rounds) {
    return job.pins().stream()
        .flatMap(
            pin ->
                Places.reasonAgainst(pin, job, rounds)
                    .map(why -> Problem.of(ProblemCode.BAD_PIN, pin.origin(), why).found(pin.log()))
                    .stream())
        .toList();
  }
}
