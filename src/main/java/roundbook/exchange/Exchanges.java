package roundbook.exchange;

import java.util.List;
import java.util.Map;
import roundbook.job.Job;
import roundbook.rounds.Choice;
import roundbook.stack.Stack;

/**
 * What other logs would do in the places of a plan.
 *
 * @param substitutes the best spare for each log that is placed and not cut, where it has one, by
 *     round, then wall
 * @param spares the logs without a place that could take one, in tally order
 * @param reasons why each round that is not cut has its logs, from the lowest up
 * @param longLogs the logs that are longer than their places need to be, by their tags
 * @param score the whole score of the plan, in square inches
 */
public record Exchanges(
    List<Substitute> substitutes,
    List<Spare> spares,
    List<Reason> reasons,
    Map<String, LongLog> longLogs,
    double score) {
  /** Copies the lists. */
  public Exchanges {
    substitutes = List.copyOf(substitutes);
    spares = List.copyOf(spares);
    reasons = List.copyOf(reasons);
    longLogs = Map.copyOf(longLogs);
  }

  /** Returns the exchanges of a plan. */
  public static Exchanges of(Job job, Choice choice, Stack stack) {
    Trials trials = new Trials(job, choice, stack);
    List<Substitute> substitutes = new SubstituteFinder(trials).best();
    return new Exchanges(
        substitutes,
        new SpareFinder(trials).spares(substitutes),
        new ReasonFinder(trials).reasons(),
        LongLog.all(trials),
        trials.score().total());
  }
}
