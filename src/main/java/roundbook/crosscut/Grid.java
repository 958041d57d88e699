package roundbook.crosscut;

import roundbook.job.BuildRules;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * Whole steps along a stem and whole ticks of its thickness, as the engine reckons.
 *
 * @param step nanometres in a step: a quarter inch or 5 mm
 */
record Grid(long step) {
  /** Nanometres in a tick: a ten thousandth of an inch. */
  static final long TICK = 2_540;

  /** Ticks in an inch. */
  static final int INCH = (int) (LengthUnit.INCH.nanometres() / TICK);

  static Grid of(BuildRules rules) {
    return new Grid(
        (rules.metric() ? Length.ofMillimetres(5) : Length.ofInchFraction(1, 4)).nanometres());
  }

  /** Returns the steps of a slide of a piece: an inch or 25 mm. */
  int slide() {
    return Math.toIntExact(Math.round((double) LengthUnit.INCH.nanometres() / step));
  }

  /** Returns the whole steps within a length. */
  int down(Length length) {
    return Math.toIntExact(Math.floorDiv(length.nanometres(), step));
  }

  /** Returns the whole steps that hold a length. */
  int up(Length length) {
    return Math.toIntExact(-Math.floorDiv(-length.nanometres(), step));
  }

  Length length(int steps) {
    return Length.ofNanometres(steps * step);
  }

  int ticks(Length diameter) {
    return Math.toIntExact(Math.round((double) diameter.nanometres() / TICK));
  }

  Length diameter(long ticks) {
    return Length.ofNanometres(ticks * TICK);
  }
}
