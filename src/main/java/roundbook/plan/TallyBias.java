package roundbook.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.AsBuilt;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * How the middle diameters of logs as hewn differ from the tally's, at the same place of the log.
 *
 * <p>A tally that was taken over bark, in winter, or with a worn tape is out by much the same on
 * every log, so what the first rounds show is worth putting on the logs still in the yard.
 *
 * @param logs how many logs were measured
 * @param mean the mean of hewn less tallied
 * @param least the least of them
 * @param most the largest of them
 */
public record TallyBias(int logs, Length mean, Length least, Length most) {
  private static final int ROUNDS_LEAST = 2;

  /** Returns the bias of a plan's logs; empty until two rounds are cut and measured. */
  public static Optional<TallyBias> of(Plan plan) {
    Job job = plan.job();
    List<Length> differences =
        plan.pieces().stream().flatMap(piece -> differences(job, piece)).toList();
    int walls = job.building().walls().size();
    if (job.built().rounds() < ROUNDS_LEAST || differences.size() < ROUNDS_LEAST * walls) {
      return Optional.empty();
    }
    Length sum = differences.stream().reduce(Length.ZERO, Length::plus);
    return Optional.of(
        new TallyBias(
            differences.size(),
            sum.dividedBy(differences.size()),
            differences.stream().reduce(Length::least).orElseThrow(),
            differences.stream().reduce(Length::most).orElseThrow()));
  }

  private static Stream<Length> differences(Job job, PiecePlan piece) {
    return piece.logs().stream().flatMap(log -> difference(job, piece.placed().placeOf(log), log));
  }

  private static Stream<Length> difference(Job job, AsBuilt.Place place, PlacedLog log) {
    return job.built().knowsMiddle(place, log.piece().log().tag())
        ? Stream.of(log.piece().mid().minus(talliedMid(job, log)))
        : Stream.empty();
  }

  /** Returns the middle diameter of a trimmed log by the tally. */
  public static Length talliedMid(Job job, PlacedLog placed) {
    Piece piece = placed.piece();
    return new Piece(job.tallied(piece.log()), piece.cutOffButt(), piece.trimmed()).mid();
  }

  /** Returns the correction to plan with, to the printed step. */
  public Length correction(BuildRules rules) {
    return mean.roundedTo(rules.printStep());
  }

  /** Returns whether the mean differs from the correction in use by an eighth of an inch (3 mm). */
  public boolean worthCorrecting(BuildRules rules) {
    Length most = rules.metric() ? Length.ofMillimetres(3) : Length.ofInchFraction(1, 8);
    Length used = rules.optionalLength(Setting.TALLY_CORRECTION).orElse(Length.ZERO);
    return !correction(rules).minus(used).absolute().isLessThan(most);
  }
}
