package roundbook.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.problem.Phrase;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * What each log could serve as: which walls it is long, thick and straight enough for.
 *
 * <p>A log serves a wall when its length holds the trimmed length and the squaring allowance at
 * each end, and when every diameter of the trimmed piece shows two faces at the wall's thickness.
 *
 * @param job the job
 */
public record Fit(Job job) {
  /** Returns the trimmed length of a wall's logs, {@code Λ = W + 2 o}. */
  public Length trimmed(Wall wall) {
    return job.building().trimmed(wall, job.rules().overhang());
  }

  /** Returns the least length of a log for a wall: trimmed length and squaring at each end. */
  public Length least(Wall wall) {
    return trimmed(wall).plus(allowance().times(2));
  }

  /**
   * Returns the ways to cut a log for a wall; empty when it does not serve.
   *
   * <p>The excess of a long log comes off the tip, or, where the rules allow it, off the butt or
   * half off each end.
   */
  public List<Piece> pieces(Log log, Wall wall) {
    return pieces(log, wall, trimmed(wall));
  }

  /** Returns the ways to cut a log of a wall to a length; empty when it does not serve. */
  List<Piece> pieces(Log log, Wall wall, Length trimmed) {
    Length excess = log.length().minus(trimmed).minus(allowance().times(2));
    if (excess.isNegative() || log.traits().skip() || tooCrooked(log)) {
      return List.of();
    }
    List<Piece> pieces = new ArrayList<>();
    for (Length offButt : offButts(excess)) {
      Piece piece = new Piece(log, allowance().plus(offButt), trimmed);
      if (showsFaces(piece, wall)) {
        pieces.add(piece);
      }
    }
    return List.copyOf(pieces);
  }

  /**
   * Returns the ways in which a log may lie at one side of an opening, its butt at the corner
   * first, then at the opening; empty when it does not serve.
   *
   * @param wall the wall
   * @param round its round
   * @param left whether that is the left side
   * @param trimmed the length from the corner to the opening
   */
  List<PlacedLog> beside(Log log, Wall wall, int round, boolean left, Length trimmed) {
    Length from = left ? Length.ZERO : trimmed(wall).minus(trimmed);
    return pieces(log, wall, trimmed).stream()
        .flatMap(
            piece ->
                Stream.of(!left, left)
                    .map(atStart -> new PlacedLog(piece, wall, round, atStart, from)))
        .toList();
  }

  /** Returns the ways in which a log may lie in the stead of a short one beside an opening. */
  public List<PlacedLog> insteadOf(PlacedLog old, Log log) {
    return beside(log, old.wall(), old.round(), old.isLeft(), old.piece().trimmed());
  }

  /** Returns whether a log is long enough for a whole wall. */
  public boolean isWallLog(Log log) {
    return isLongerThan(log, Length.ZERO);
  }

  /** Returns whether a log is long enough for a wall that wants more than a length. */
  boolean isLongerThan(Log log, Length least) {
    return job.building().walls().stream()
        .map(this::least)
        .anyMatch(wall -> wall.isMoreThan(least) && !log.length().isLessThan(wall));
  }

  /** Returns whether a log serves a wall in any way. */
  public boolean serves(Log log, Wall wall) {
    return !pieces(log, wall).isEmpty();
  }

  /** Returns why a log serves no wall at all; empty when it serves one. */
  public Optional<Reason> refused(Log log) {
    List<Wall> walls = job.building().walls();
    if (walls.stream().anyMatch(wall -> serves(log, wall))) {
      return Optional.empty();
    }
    if (log.traits().skip()) {
      return Optional.of(Reason.SKIPPED);
    }
    if (tooCrooked(log)) {
      return Optional.of(Reason.CROOKED);
    }
    return Optional.of(isWallLog(log) ? Reason.THIN : Reason.SHORT);
  }

  /** Why a log serves no wall. */
  public enum Reason {
    /** The tally says to leave it out. */
    SKIPPED,
    /** Shorter than the shortest wall needs. */
    SHORT,
    /** Somewhere no thicker than the wall. */
    THIN,
    /** More sweep than the rules allow. */
    CROOKED;

    /** Returns the reason as a sheet or a problem names it. */
    public Phrase phrase() {
      return Phrase.of("reason." + name().toLowerCase(Locale.ROOT));
    }
  }

  private Length allowance() {
    return job.rules().length(Setting.SQUARING_ALLOWANCE);
  }

  private List<Length> offButts(Length excess) {
    boolean tipOnly = job.rules().text(Setting.CUT_EXCESS).equals("tip");
    if (tipOnly || excess.isZero()) {
      return List.of(Length.ZERO);
    }
    Length step = job.rules().printStep();
    return List.of(Length.ZERO, excess.dividedBy(2).roundedTo(step), excess);
  }

  private boolean tooCrooked(Log log) {
    BuildRules rules = job.rules();
    return rules
        .optionalLength(Setting.SWEEP_MOST)
        .filter(most -> log.traits().sweep().isMoreThan(most))
        .isPresent();
  }

  private static boolean showsFaces(Piece piece, Wall wall) {
    Length thinnest = piece.butt().least(piece.tip()).least(piece.mid());
    return thinnest.isMoreThan(wall.thickness());
  }
}
