package roundbook.notch;

import roundbook.job.BuildRules;
import roundbook.job.Wall;
import roundbook.units.Length;

/**
 * A corner from an offcut, tried before the first log is cut: four blocks laid on each other like
 * the ends of two logs of each laying order, all with the marks of one round.
 *
 * <p>The lowest block is sawn flat at its lower mark and lies on a bench. Each further one stands a
 * neck higher, so that every height follows from two marks (our own reckoning, from the notch
 * numbers; no published source).
 *
 * @param notch the marks, the same on all blocks
 * @param thickness T of the wall whose blocks are the first and the third
 * @param crossing T_x of the wall whose blocks are the second and the fourth
 * @param overhang o, past the corner
 * @param body how long a block goes on past its shoulder
 */
public record TrialCorner(
    Notch notch, Length thickness, Length crossing, Length overhang, Length body) {
  /** How many blocks it has. */
  public static final int BLOCKS = 4;

  /**
   * Returns the corner of two walls; a block's body is 13 in (330 mm), enough to clamp and hold.
   */
  public static TrialCorner of(Notch notch, Wall wall, Wall crossing, BuildRules rules) {
    Length body = rules.metric() ? Length.ofMillimetres(330) : Length.ofInches(13);
    return new TrialCorner(notch, wall.thickness(), crossing.thickness(), rules.overhang(), body);
  }

  /**
   * Returns the length of a block of one wall or the crossing one: {@code T_x + o} and its body.
   */
  public Length block(boolean ofCrossing) {
    return neck(ofCrossing).plus(body);
  }

  /** Returns the length of all blocks together, saw cuts aside. */
  public Length offcut() {
    return block(false).plus(block(true)).times(BLOCKS / 2);
  }

  /** Returns the length of a block's neck, from its shoulder to its end: {@code T_x + o}. */
  public Length neck(boolean ofCrossing) {
    return (ofCrossing ? thickness : crossing).plus(overhang);
  }

  /** Returns the height of a block's centre line over the bench: {@code L' + i n}, from i = 0. */
  public Length centre(int block) {
    return notch.lower().plus(notch.neckHeight().times(block));
  }

  /** Returns the height of a block's neck at the inside corner: {@code (i + 1) n}, from i = 0. */
  public Length neckTop(int block) {
    return notch.neckHeight().times(block + 1);
  }

  /**
   * Returns the gap between two blocks of one wall, {@code 2 n − d}, by the offcut's diameter d.
   */
  public Length gap(Length diameter) {
    return notch.neckHeight().times(2).minus(diameter);
  }

  /** Returns how much a neck's top falls from its inside face to its outside face. */
  public Length topFall(boolean ofCrossing) {
    return notch.slope().dropOver(ofCrossing ? crossing : thickness);
  }

  /** Returns how much a neck's underside falls from its shoulder to its end. */
  public Length lowerFall(boolean ofCrossing) {
    return notch.slope().dropOver(neck(ofCrossing));
  }

  /**
   * Returns how far a height is likely out (a standard deviation) where marks are: each contact
   * stands on two marks, so k contacts give {@code e √(2 k)}.
   *
   * @param mark how far a mark is out, in any unit
   * @param contacts how many contacts lie below, each of one log on another
   */
  public static double heightOut(double mark, int contacts) {
    return mark * StrictMath.sqrt(2.0 * contacts);
  }
}
