package roundbook.job;

import java.util.List;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/**
 * A felled stem, or a log long enough for several pieces, that the plan cuts up.
 *
 * @param tag the tag on its butt end, unique in the job
 * @param length its length, end to end
 * @param profile natural diameters along it, of peeled wood
 * @param bad stretches that no piece may have a part of, by rising distance
 * @param traits what it is and what it is good for
 * @param isLog whether it is a log of the tally, so that all of it that no piece has is waste
 * @param origin the row it was read from
 */
public record Stem(
    String tag,
    Length length,
    DiameterProfile profile,
    List<Stretch> bad,
    Log.Traits traits,
    boolean isLog,
    CellRef origin) {
  /** Copies the list. */
  public Stem {
    bad = List.copyOf(bad);
  }

  /**
   * A stretch of a stem that is crooked, rotten or forked.
   *
   * @param from its distance from the butt
   * @param to where it ends
   */
  public record Stretch(Length from, Length to) {}

  /** Returns a log of the tally as a stem. */
  public static Stem of(Log log) {
    return new Stem(
        log.tag(), log.length(), log.profile(), List.of(), log.traits(), true, log.origin());
  }

  /** Returns the same stem with every diameter so much smaller. */
  public Stem thinnedBy(Length difference) {
    return new Stem(tag, length, profile.thinnedBy(difference), bad, traits, isLog, origin);
  }

  /**
   * Returns a piece of it as a log.
   *
   * <p>Its sweep is taken in proportion to its length: a stem that is bent evenly bows with the
   * square of it, so that is on the safe side.
   */
  public Log log(String piece, Length from, Length raw) {
    Length sweep = traits.sweep().timesRatio(raw.nanometres(), length.nanometres());
    Log.Traits own =
        new Log.Traits(
            traits.species(), traits.bark(), sweep, traits.keep(), traits.skip(), traits.remarks());
    return new Log(
        piece,
        raw,
        profile.cut(from, raw),
        Log.Sources.MEASURED,
        own,
        Log.Wish.ANYWHERE,
        origin,
        java.util.Map.of());
  }
}
