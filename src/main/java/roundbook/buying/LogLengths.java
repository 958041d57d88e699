package roundbook.buying;

import roundbook.job.BuildRules;
import roundbook.job.Setting;
import roundbook.units.Length;

/**
 * How long a log is ordered, and where on it the middle of the trimmed log will be.
 *
 * @param trimmed Λ, the trimmed length in the wall
 * @param offButt the least that comes off the butt end: the flare of a butt log, and the squaring
 * @param least the least length of the log
 * @param ask the length to ask for, without the excess that yards leave on
 * @param over the excess
 */
public record LogLengths(Length trimmed, Length offButt, Length least, Length ask, Length over) {
  /**
   * Returns the lengths of a wall's logs.
   *
   * <p>The least is the trimmed length and the squaring at both ends, and on a butt log the flare
   * more. To ask for is the least multiple of {@code Length_step} that holds it together with
   * {@code Length_over}; where there is no step, the least itself.
   *
   * @param rules the job's rules
   * @param trimmed Λ
   * @param butt whether the logs are butt logs, whose flare is sawn off
   */
  public static LogLengths of(BuildRules rules, Length trimmed, boolean butt) {
    Length squaring = rules.length(Setting.SQUARING_ALLOWANCE);
    Length flare = butt ? rules.length(Setting.BUTT_SPARE) : Length.ZERO;
    Length least = trimmed.plus(squaring.times(2)).plus(flare);
    Length step = rules.length(Setting.LENGTH_STEP);
    Length over = step.isZero() ? Length.ZERO : rules.length(Setting.LENGTH_OVER);
    Length ask = step.isZero() ? least : multiple(least.minus(over), step);
    return new LogLengths(trimmed, squaring.plus(flare), least, ask, over);
  }

  private static Length multiple(Length least, Length step) {
    long count = Math.max(1, -Math.floorDiv(-least.nanometres(), step.nanometres()));
    return step.times(count);
  }

  /** Returns how long the log is as it is delivered. */
  public Length delivered() {
    return ask.plus(over);
  }

  /** Returns how far from the butt end the middle of the trimmed log will be. */
  public Length midAt() {
    return offButt.plus(trimmed.dividedBy(2));
  }
}
