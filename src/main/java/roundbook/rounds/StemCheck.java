package roundbook.rounds;

import java.util.List;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Setting;
import roundbook.job.Stem;
import roundbook.rounds.Verifier.Subject;

/** Checks the pieces of stems against their stems, in binary inches. */
final class StemCheck {
  private static final double TOLERANCE = 1e-6;
  private static final int SAMPLES = 32;

  private final Job job;
  private final Checks checks;

  StemCheck(Job job, Checks checks) {
    this.job = job;
    this.checks = checks;
  }

  /** Checks every piece, and every two that lie beside each other on a stem. */
  void pieces() {
    for (Stem stem : job.stems().all()) {
      List<Log> pieces = job.stems().pieces(stem, job.logs());
      pieces.forEach(piece -> isOf(stem, piece));
      for (int i = 1; i < pieces.size(); i++) {
        apart(pieces.get(i - 1), pieces.get(i));
      }
    }
  }

  private double from(Log piece) {
    return job.stems().from(piece).inches();
  }

  private void isOf(Stem stem, Log piece) {
    double from = from(piece);
    double to = from + piece.length().inches();
    check(
        from > -TOLERANCE && to < stem.length().inches() + TOLERANCE,
        "piece " + piece.tag() + " reaches past its stem");
    stem.bad()
        .forEach(
            bad ->
                check(
                    to < bad.from().inches() + TOLERANCE || from > bad.to().inches() - TOLERANCE,
                    "piece " + piece.tag() + " has a bad stretch"));
    if (!isKnownBetter(piece)) {
      thick(stem, piece, from, to);
    }
  }

  /** Returns whether a piece is cut or measured, so that it is no longer as its stem told. */
  private boolean isKnownBetter(Log piece) {
    return job.stems().cuts().get(piece.tag()).isCut()
        || job.built().placeOf(piece.tag()).isPresent();
  }

  /** A piece is as thick as its stem there, and thick enough. */
  private void thick(Stem stem, Log piece, double from, double to) {
    double least =
        job.rules()
            .optionalLength(Setting.TIP_LEAST)
            .filter(each -> !stem.isLog())
            .orElse(job.rules().thickness())
            .inches();
    for (int i = 0; i <= SAMPLES; i++) {
      double along = (to - from) * i / SAMPLES;
      double there = StackCheck.diameter(stem.profile().stations(), from + along);
      double here = StackCheck.diameter(piece.profile().stations(), along);
      check(
          Math.abs(there - here) < TOLERANCE, "piece " + piece.tag() + " is not as its stem there");
      check(there > least - 1e-4, "piece " + piece.tag() + " is too thin");
    }
  }

  private void apart(Log lower, Log upper) {
    double kerf = job.rules().length(Setting.KERF).inches();
    check(
        isKnownBetter(lower)
            || isKnownBetter(upper)
            || from(upper) - from(lower) - lower.length().inches() > kerf - TOLERANCE,
        "pieces " + lower.tag() + " and " + upper.tag() + " leave no room for the saw");
  }

  private void check(boolean holds, String fault) {
    checks.that(Subject.STEMS, holds, fault);
  }
}
