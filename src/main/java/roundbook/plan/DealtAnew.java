package roundbook.plan;

import java.util.Optional;
import roundbook.balance.Effort;
import roundbook.crosscut.Crosscutter;
import roundbook.crosscut.CutJob;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.rounds.Choice;
import roundbook.rounds.Shortage;

/**
 * A job of which a part is built, with the stems cut anew that no cut was made in, and the rounds
 * that are not built dealt with them.
 *
 * @param job the job, with the pieces as logs
 * @param choice the choice of its logs
 */
public record DealtAnew(Job job, Choice choice) {
  /**
   * Deals a job anew where that brings a round, or pays as much as one log that is moved.
   *
   * @param job the job; of its stems pieces are logs
   * @param kept the choice that keeps every cut as planned
   * @param effort how hard to look
   * @return empty where all stays as it is
   */
  public static Optional<DealtAnew> of(Job job, Choice kept, Effort effort) {
    int rounds = kept.shortage().map(Shortage::wanted).orElse(kept.courses().size());
    CutJob cut =
        kept.placedPairs().isEmpty()
            ? Crosscutter.anew(job, rounds, effort)
            : new CutJob(job, java.util.Map.of());
    if (!cut.isCut()) {
      return Optional.empty();
    }
    Choice anew = Planner.mended(cut, effort);
    double pays = job.rules().number(Setting.CHANGE_PAYS).doubleValue();
    int more = anew.courses().size() - kept.courses().size();
    boolean better = more == 0 && anew.score().total() < kept.score().total() - pays;
    return more > 0 || better ? Optional.of(new DealtAnew(cut.job(), anew)) : Optional.empty();
  }
}
