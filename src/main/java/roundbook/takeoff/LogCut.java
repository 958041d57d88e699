package roundbook.takeoff;

import java.util.Optional;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * What an opening does to one log of its wall.
 *
 * <p>With e the height of the centre line and d the greatest diameter over the opening: the log is
 * untouched if the opening lies wholly above {@code e + d/2} or below {@code e − d/2}, cut through
 * if it reaches past both, else partly cut. A log whose bed is sawn flat ends there, not at {@code
 * e − d/2}.
 *
 * @param log the log
 * @param kind how far it is cut
 * @param height its own height there, from belly or sawn bed to crown
 * @param depth how much of its height goes: {@code min(z₂, top) − max(z₁, bottom)}
 * @param sides the two pieces that stay, when it is cut through
 */
public record LogCut(
    FilledPlace log, CutExtent kind, Length height, Length depth, Optional<RemainingPieces> sides) {
  /** How far a log is cut. */
  public enum CutExtent {
    /** Not at all. */
    UNTOUCHED,
    /** From its crown down, under a sill. */
    FROM_ABOVE,
    /** From its belly up, over a head. */
    FROM_BELOW,
    /** A slot inside its height; both its crown and its belly stay. */
    INSIDE,
    /** In two. */
    THROUGH
  }

  /**
   * The two pieces of a log cut through.
   *
   * @param left the piece at the left, seen from outside
   * @param right the piece at the right
   */
  public record RemainingPieces(RemainingPiece left, RemainingPiece right) {
    /** Returns whether a piece is too short. */
    public boolean tooShort() {
      return left.tooShort() || right.tooShort();
    }

    /** Returns whether both pieces reach to a corner. */
    public boolean atCorners() {
      return left.atCorner() && right.atCorner();
    }
  }

  /**
   * A piece that stays beside an opening.
   *
   * @param length to its trimmed end, {@code x₁ + o} or {@code W − x₂ + o}; or to the next opening
   *     that cuts the log in two
   * @param least least length: the neck and what the rules ask for past it
   * @param atCorner whether it reaches to a corner
   */
  public record RemainingPiece(Length length, Length least, boolean atCorner) {
    /** Returns whether it is too short to hold its neck. */
    public boolean tooShort() {
      return length.isLessThan(least);
    }
  }

  /** Returns whether the opening takes any wood of the log. */
  public boolean isCut() {
    return kind != CutExtent.UNTOUCHED;
  }

  /** Returns how much of its height stays. */
  public Length left() {
    return height.minus(depth);
  }

  /** Returns whether more than a part of its height goes from its belly; 2 for half. */
  public boolean losesMoreThan(int part) {
    return kind == CutExtent.FROM_BELOW && depth.isMoreThan(height.dividedBy(part));
  }

  /** Returns whether the log is cut in two. */
  public boolean through() {
    return kind == CutExtent.THROUGH;
  }
}
