package roundbook.rounds;

import roundbook.balance.Bound;
import roundbook.balance.Effort;
import roundbook.job.Job;

/** How much better than a choice of logs another could be at most. */
public final class LeastScore {
  private LeastScore() {}

  /**
   * Returns a choice with a score that no choice of its logs for as many rounds is under.
   *
   * <p>Stems stay cut as they are, and pairs of short logs beside openings where they lie. Places
   * that the choice keeps for sills, plates and headers are open to all logs here, so the score
   * holds for more choices than the search may take.
   *
   * @param job the job, of which nothing is built
   * @param choice its choice
   * @param effort what may stop it, with what was found, and whether it may use more threads
   */
  public static Choice reckoned(Job job, Choice choice, Effort effort) {
    PairedJob paired = PairedJob.of(job, choice.placedPairs());
    BalanceJob balance = new BalanceJob(new Places(paired, choice.courses().size()));
    return choice.withLeast(Bound.of(balance.task(), choice.score().total(), effort));
  }
}
