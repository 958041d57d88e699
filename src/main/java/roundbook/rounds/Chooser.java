package roundbook.rounds;

import roundbook.balance.Effort;
import roundbook.job.Job;

/** Chooses which log goes where, under the rules of a job. */
public interface Chooser {
  /**
   * Chooses logs for as many rounds as the job wants and the logs allow.
   *
   * @param job the job, and the short logs that are settled; none: they are chosen as well
   * @param effort how hard to look
   * @return a choice that keeps every hard rule: one log a wall, each log once and long enough,
   *     pins kept, butts running round the building and reversed in the next round
   */
  Choice choose(PairedJob job, Effort effort);

  /** Chooses logs for a job of which nothing is chosen yet. */
  default Choice choose(Job job, Effort effort) {
    return choose(PairedJob.of(job), effort);
  }
}
