package roundbook.rounds;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import roundbook.balance.Effort;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Opening;

/**
 * The plans that are made on the way to one: for other numbers of rounds, with short logs beside
 * openings, with places kept for headers.
 *
 * <p>Each step is planned with few moves first, which is enough to see where openings lie and how
 * high the wall gets. The one that is settled on is then searched for in full, and the way gone
 * again with it, until it ends at a step that was. A step that was planned is not planned again.
 *
 * @param <P> what is made of a step
 */
final class StepPlans<P> {
  /** Moves a place of a plan on the way. */
  private static final long FEW_MOVES = 50_000;

  /** Steps searched for in full before all that follow are, so that the way ends. */
  private static final int MOST_SEARCHED = 4;

  private final Function<P, Choice> choice;
  private final Maker<P> maker;
  private final Effort effort;
  private final Map<Step, P> made = new LinkedHashMap<>();
  private final Set<Step> searched = new HashSet<>();

  /**
   * Begins with nothing planned.
   *
   * @param choice the choice of logs in what is made
   * @param maker makes the plan of a step
   * @param effort how hard to look for the one that is settled on
   */
  StepPlans(Function<P, Choice> choice, Maker<P> maker, Effort effort) {
    this.choice = choice;
    this.maker = maker;
    this.effort = effort;
  }

  /**
   * What is planned.
   *
   * @param job the job, and the places of it that short logs fill
   * @param rounds rounds wanted
   * @param headers places over openings; empty where they are not known
   */
  record Step(PairedJob job, int rounds, Optional<Set<Integer>> headers) {
    /** Tells the few steps of a way apart without going through the whole job. */
    @Override
    public int hashCode() {
      return rounds;
    }
  }

  /** Makes the plan of a step. */
  interface Maker<P> {
    /**
     * Makes the plan of a step.
     *
     * @param effort how hard to look
     */
    P make(Step step, Effort effort);
  }

  /**
   * The end of the way.
   *
   * @param choice the choice that is settled on
   * @param made what was made for it
   */
  record Settled<P>(Choice choice, P made) {}

  /**
   * Returns what a way over steps ends at, searched for in full.
   *
   * @param way plans steps and returns the choice that it settles on, which one of them brought
   */
  Settled<P> settled(Job job, Function<Function<Step, Choice>, Choice> way) {
    boolean several = hasSteps(job);
    while (true) {
      Choice end = way.apply(step -> choice.apply(planned(step, several)));
      Step last = step(end);
      if (searched.contains(last) || effort.stop().getAsBoolean()) {
        return new Settled<>(end, made.get(last));
      }
      search(last);
    }
  }

  /** Returns whether a job may be planned in more than one step. */
  private static boolean hasSteps(Job job) {
    boolean headers = job.logs().stream().anyMatch(log -> log.traits().keep() == Log.Keep.HEADER);
    return Wanted.height(job).isPresent()
        || headers && !job.openings().isEmpty()
        || job.openings().stream().anyMatch(Opening::shortLogs);
  }

  private P planned(Step step, boolean several) {
    if (!made.containsKey(step)) {
      Effort look = several && searched.size() < MOST_SEARCHED ? few(step) : effort;
      made.put(step, maker.make(step, look));
      if (look.moves() == effort.moves()) {
        searched.add(step);
      }
    }
    return made.get(step);
  }

  /** Returns the effort of a plan on the way, which tells nobody how far it is. */
  private Effort few(Step step) {
    int walls = step.job().job().building().walls().size();
    long few = FEW_MOVES * walls * Math.max(1, step.rounds());
    long moves = effort.moves() == 0 ? few : Math.min(few, effort.moves());
    return effort.withMoves(moves).telling(done -> {});
  }

  /** Searches for a step in full; what was found before stands where the search was stopped. */
  private void search(Step step) {
    P found = maker.make(step, effort);
    Choice.Score before = choice.apply(made.get(step)).score();
    boolean worse = choice.apply(found).score().total() > before.total();
    if (!(worse && effort.stop().getAsBoolean())) {
      made.put(step, found);
    }
    searched.add(step);
  }

  private Step step(Choice end) {
    return made.keySet().stream()
        .filter(step -> choice.apply(made.get(step)).courses().equals(end.courses()))
        .reduce((first, second) -> searched.contains(first) ? first : second)
        .orElseThrow();
  }
}
