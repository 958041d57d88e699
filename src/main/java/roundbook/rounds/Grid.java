package roundbook.rounds;

import roundbook.job.BuildRules;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Whole steps along a stem and whole ticks of its thickness, as the engine reckons.
 *
 * @param step nanometres in a step: a quarter inch or 5 mm
 */
public record Grid(long step) {
  /** Nanometres in a tick: a ten thousandth of an inch. */
  private static final long TICK = 2_540;

  /** Ticks in an inch. */
  public static final int INCH = (int) (LengthUnit.INCH.nanometres() / TICK);

  /** Returns the grid of a job's unit. */
  public static Grid of(BuildRules rules) {
    return new Grid(
        (rules.metric() ? Length.ofMillimetres(5) : Length.ofInchFraction(1, 4)).nanometres());
  }

  /** Returns the steps of a slide of a piece: an inch or 25 mm. */
  public int slide() {
    return Math.toIntExact(Math.round((double) LengthUnit.INCH.nanometres() / step));
  }

  /** Returns the whole steps within a length. */
  public int down(Length length) {
    return Math.toIntExact(Math.floorDiv(length.nanometres(), step));
  }

  /** Returns the whole steps that hold a length. */
  public int up(Length length) {
    return Math.toIntExact(-Math.floorDiv(-length.nanometres(), step));
  }

  /** Returns the length of so many steps. */
  public Length length(int steps) {
    return Length.ofNanometres(steps * step);
  }

  /** Returns a diameter in whole ticks. */
  public int ticks(Length diameter) {
    return Math.toIntExact(Math.round((double) diameter.nanometres() / TICK));
  }

  /** Returns the diameter of so many ticks. */
  public Length diameter(long ticks) {
    return Length.ofNanometres(ticks * TICK);
  }
}
