package roundbook.rounds;

import roundbook.job.Job;
import roundbook.job.Opening;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.rounds.Verifier.Subject;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/**
 * Checks pairs of short logs from first principles, in binary inches.
 *
 * <p>Each is long enough, cut to what its side of the opening asks, long enough past its notch, and
 * reaches to its corner; and an opening for which short logs were asked cuts through their place.
 */
final class PairCheck {
  private static final double TOLERANCE = 1e-6;

  private final Job job;
  private final Stack stack;
  private final Checks checks;

  PairCheck(Job job, Stack stack, Checks checks) {
    this.job = job;
    this.stack = stack;
    this.checks = checks;
  }

  void pairs() {
    stack.courses().stream()
        .flatMap(course -> course.places().stream())
        .filter(FilledPlace::isShared)
        .forEach(this::pair);
  }

  private void pair(FilledPlace place) {
    PlacedLog left = place.logs().get(0);
    PlacedLog right = place.logs().get(1);
    double trimmed = place.wall().outside().inches() + 2 * inches(Setting.OVERHANG);
    double from = left.piece().trimmed().inches();
    double to = trimmed - right.piece().trimmed().inches();
    check(left.fromLeft().isZero(), left, "does not reach to its corner");
    boolean reaches = Math.abs(right.fromLeft().inches() - to) < TOLERANCE;
    check(reaches, right, "does not reach to its corner");
    if (!job.built().held().containsKey(place.place())) {
      place.logs().forEach(log -> check(longEnough(log.piece()), log, "is too short"));
      check(holdsNotch(left, 1), left, "is too short past its notch");
      check(holdsNotch(right, -1), right, "is too short past its notch");
      boolean cut = job.openings().stream().anyMatch(each -> cuts(each, place, from, to, trimmed));
      check(cut, left, "lies where no opening cuts through");
    }
  }

  private boolean longEnough(Piece piece) {
    double least = inches(Setting.SQUARING_ALLOWANCE) - TOLERANCE;
    double left =
        piece.log().length().inches() - piece.cutOffButt().inches() - piece.trimmed().inches();
    return piece.cutOffButt().inches() > least && left > least;
  }

  /** Returns whether a log holds the notch at its corner: with the next or the last wall. */
  private boolean holdsNotch(PlacedLog log, int way) {
    Wall other = way > 0 ? job.building().after(log.wall()) : job.building().before(log.wall());
    double least =
        other.thickness().inches() + inches(Setting.OVERHANG) + inches(Setting.PIECE_LEAST);
    return log.piece().trimmed().inches() > least - TOLERANCE;
  }

  private boolean cuts(
      Opening opening, FilledPlace placed, double from, double to, double trimmed) {
    double left = opening.left().inches() + inches(Setting.OVERHANG);
    boolean here =
        opening.shortLogs()
            && opening.wall().equalsIgnoreCase(placed.wall().name())
            && Math.abs(left - from) < TOLERANCE
            && Math.abs(left + opening.width().inches() - to) < TOLERANCE;
    double centre = stack.centre(placed).inches();
    double one = StackCheck.diameter(placed, from, trimmed);
    double half = Math.max(one, StackCheck.diameter(placed, to, trimmed)) / 2;
    double bottom = isFlat(placed) ? lowerMark() : half;
    return here
        && opening.head().inches() > centre + half - TOLERANCE
        && opening.sill().inches() < centre - Math.min(half, bottom) + TOLERANCE;
  }

  private boolean isFlat(FilledPlace placed) {
    String bed = job.rules().text(Setting.FIRST_BED);
    return placed.round() == 1
        && (placed.wall().laidFirst() ? !bed.equals("starter") : bed.equals("flat"));
  }

  private double lowerMark() {
    return stack.courses().get(0).notch().lower().inches();
  }

  private double inches(Setting setting) {
    return job.rules().length(setting).inches();
  }

  private void check(boolean holds, PlacedLog log, String what) {
    checks.that(
        Subject.LENGTHS,
        holds,
        "short log "
            + log.piece().log().tag()
            + " of round "
            + log.round()
            + " on wall "
            + log.wall().name()
            + " "
            + what);
  }
}
