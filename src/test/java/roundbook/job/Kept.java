package roundbook.job;

import roundbook.units.Length;

/** Logs of which the tally says what they are good for. */
public final class Kept {
  private Kept() {}

  /** Returns a straight log kept for something. */
  public static Log log(Log log, Log.Keep keep) {
    return log(log, keep, Length.ZERO);
  }

  /** Returns a log of some sweep kept for something. */
  public static Log log(Log log, Log.Keep keep, Length sweep) {
    return log(log, new Log.Traits("", Log.Bark.UNSTATED, sweep, keep, false, ""));
  }

  /** Returns a log with other traits. */
  public static Log log(Log log, Log.Traits traits) {
    return new Log(
        log.tag(),
        log.length(),
        log.profile(),
        log.sources(),
        traits,
        log.place(),
        log.origin(),
        log.extra());
  }
}
