package roundbook.rounds;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import roundbook.balance.BalanceResult;
import roundbook.balance.Balancer;
import roundbook.balance.Effort;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Pin;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.rounds.StepPlans.Step;
import roundbook.stack.Course;

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
  public Choice choose(PairedJob given, Effort effort) {
    Job job = given.job();
    Set<Step> weighing = new HashSet<>();
    StepPlans<Choice> plans =
        new StepPlans<>(
            choice -> choice, (step, look) -> choose(step, look, effort, weighing), effort);
    ShortPairs pairs = new ShortPairs(given, effort);
    return plans.settled(job, plan -> byHeight(given, pairs, plan)).choice();
  }

  private static Choice byHeight(PairedJob given, ShortPairs pairs, Function<Step, Choice> plan) {
    Job job = given.job();
    int guess = new Wanted(given).rounds();
    boolean told = job.rules().rounds().isPresent();
    return Wanted.height(job)
        .map(height -> new ByHeight(job, height, n -> paired(pairs, with -> n, plan)).from(guess))
        .orElseGet(() -> paired(pairs, with -> told ? guess : new Wanted(with).rounds(), plan));
  }

  /** Chooses short logs beside openings and header logs over them where that is asked for. */
  private static Choice paired(
      ShortPairs pairs, ToIntFunction<PairedJob> wanted, Function<Step, Choice> plan) {
    return pairs.choose(
        with ->
            new KeptLogs(with.job())
                .choose(headers -> plan.apply(new Step(with, wanted.applyAsInt(with), headers))));
  }

  /**
   * Chooses logs for a number of rounds, or for as many of them as the logs allow; a round is given
   * up only after the whole effort.
   *
   * @param weighing the steps in which ends graded stop are weighed at once, for what was chosen
   *     with few moves had fewer then; one for which that is found here is added
   */
  private Choice choose(Step step, Effort look, Effort effort, Set<Step> weighing) {
    Job job = step.job().job();
    Places places = fillable(new Places(step.job(), step.rounds()));
    KeptLogs kept = new KeptLogs(job);
    while (places.rounds() > 0) {
      Places reserved = kept.reserved(places, step.headers());
      BalanceJob balance = new BalanceJob(reserved, weighing.contains(step));
      BalanceResult result = balancer.solve(balance.task(), look);
      if (look.moves() != effort.moves() && !stands(balance, result)) {
        result = balancer.solve(balance.task(), effort);
      }
      if (stands(balance, result)) {
        Optional<BalanceResult> other =
            weighing.contains(step) ? Optional.empty() : fewerStops(reserved, result, look);
        if (other.isPresent()) {
          weighing.add(step);
        }
        return choice(places, balance, other.orElse(result), step.rounds());
      }
      places = fillable(places.withRounds(places.rounds() - 1));
    }
    Choice.Score none = new Choice.Score(0, 0, 0, 0, 0, 0);
    Optional<Shortage> shortage = new Wanted(step.job()).shortage(step.rounds(), 0);
    return new Choice(List.of(), job.logs(), none, shortage, problems(job, 0));
  }

  /**
   * Returns another result in which ends that are graded stop were weighed, where the one that was
   * found has some and the other is better by that measure.
   */
  private Optional<BalanceResult> fewerStops(Places places, BalanceResult found, Effort effort) {
    BalanceJob weighs = new BalanceJob(places, true);
    if (weighs.stops(weighs.courses(found)) == 0) {
      return Optional.empty();
    }
    return Optional.of(balancer.solve(weighs.task(), effort))
        .filter(other -> other.isComplete() && weighed(weighs, other) < weighed(weighs, found));
  }

  private static double weighed(BalanceJob weighing, BalanceResult result) {
    return weighing.weighed(result.score().total(), weighing.courses(result));
  }

  private static boolean stands(BalanceJob balance, BalanceResult result) {
    return result.isComplete() && balance.keepsTips(result);
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
    List<Course> courses = balance.courses(result);
    List<Log> unused = new ArrayList<>(job.logs());
    courses.forEach(course -> course.logs().forEach(placed -> unused.remove(placed.piece().log())));
    return new Choice(
        courses,
        unused,
        BalanceJob.score(result.score()),
        new Wanted(places.paired()).shortage(wanted, places.rounds()),
        problems(job, places.rounds()));
  }

  private static List<Problem> problems(Job job, int rounds) {
    return job.pins().stream()
        .flatMap(
            pin -> Places.reasonAgainst(pin, job, rounds).map(why -> problem(pin, why)).stream())
        .toList();
  }

  private static Problem problem(Pin pin, Phrase why) {
    Problem problem = Problem.of(ProblemCode.BAD_PIN, pin.origin(), why).found(pin.log());
    boolean high = why.key().equals(Places.NOT_BUILT);
    return high ? problem.remedyOf("bad-pin-not-built") : problem;
  }
}
