package roundbook.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import roundbook.problem.CellRef;
import roundbook.units.Length;

/**
 * One tallied log with everything the tally says of it.
 *
 * @param tag the tag on its butt end, unique in the job
 * @param length length as tallied, end to end
 * @param profile natural diameters along it, of peeled wood
 * @param sources where the diameters came from
 * @param traits what it is and what it is good for
 * @param place the wall and round asked for, if any
 * @param origin the row it was read from
 * @param extra other columns of the tally by heading, carried through to the log list
 */
public record Log(
    String tag,
    Length length,
    DiameterProfile profile,
    Sources sources,
    Traits traits,
    Wish place,
    CellRef origin,
    Map<String, String> extra) {

  /** Keeps the extra columns in their order. */
  public Log {
    extra = extra.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(extra));
  }

  /** Compares as any record does, without what a record must first link to do so. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Log log
            && tag.equals(log.tag)
            && length.equals(log.length)
            && profile.equals(log.profile)
            && sources.equals(log.sources)
            && traits.equals(log.traits)
            && place.equals(log.place)
            && origin.equals(log.origin)
            && extra.equals(log.extra);
  }

  /** Tags are unique in a job, so they tell logs apart. */
  @Override
  public int hashCode() {
    return tag.hashCode();
  }

  /**
   * Which diameters were measured and which estimated.
   *
   * @param butt of the butt diameter
   * @param mid of the middle diameter
   * @param tip of the tip diameter
   */
  public record Sources(Source butt, Source mid, Source tip) {
    /** All three measured. */
    public static final Sources MEASURED =
        new Sources(Source.MEASURED, Source.MEASURED, Source.MEASURED);
  }

  /** How a diameter is known. */
  public enum Source {
    /** Read off the log. */
    MEASURED,
    /** Reckoned from the other diameters. */
    ESTIMATED;

    /** Returns the word used in sheets and tables. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** What a log is to be kept for. */
  public enum Keep {
    /** Any place. */
    ANY,
    /** The first round. */
    SILL,
    /** The last round. */
    PLATE,
    /** Over an opening. */
    HEADER,
    /** No place: a spare only. */
    SPARE
  }

  /**
   * What a log is and what it is good for.
   *
   * @param species as the tally writes it, or empty
   * @param bark how its diameters were measured
   * @param sweep greatest bow from straight, zero when not told
   * @param keep what it is kept for
   * @param skip whether the tally says to leave it out
   * @param remarks free text, or empty
   */
  public record Traits(
      String species, Bark bark, Length sweep, Keep keep, boolean skip, String remarks) {
    /** Nothing told. */
    public static final Traits NONE =
        new Traits("", Bark.UNSTATED, Length.ZERO, Keep.ANY, false, "");
  }

  /** Whether diameters were taken over the bark. */
  public enum Bark {
    /** Over bark. */
    OVER,
    /** Under bark, or peeled. */
    OFF,
    /** Not told. */
    UNSTATED
  }

  /**
   * Where the tally wants a log.
   *
   * @param wall the wall's name, or empty for any
   * @param round the round counted from 1, or empty for any
   */
  public record Wish(String wall, OptionalInt round) {
    /** Anywhere. */
    public static final Wish ANYWHERE = new Wish("", OptionalInt.empty());
  }

  /** Returns the same log with another wish for its place. */
  public Log placed(Wish other) {
    return new Log(tag, length, profile, sources, traits, other, origin, extra);
  }

  /** Returns the same log with every diameter so much smaller. */
  public Log thinnedBy(Length difference) {
    DiameterProfile other = difference.isZero() ? profile : profile.thinnedBy(difference);
    return new Log(tag, length, other, sources, traits, place, origin, extra);
  }

  /** Returns the same log, left out of the plan. */
  public Log skipped() {
    Traits left =
        new Traits(traits.species, traits.bark, traits.sweep, traits.keep, true, traits.remarks);
    return new Log(tag, length, profile, sources, left, place, origin, extra);
  }

  /** Returns the same log with a profile that was measured. */
  public Log measured(DiameterProfile other) {
    return new Log(tag, length, other, Sources.MEASURED, traits, place, origin, extra);
  }

  /** Returns the same log of another length, its profile as it is. */
  public Log cutTo(Length other) {
    return new Log(tag, other, profile, sources, traits, place, origin, extra);
  }

  /** Returns the same log under another tag. */
  public Log tagged(String other) {
    return new Log(other, length, profile, sources, traits, place, origin, extra);
  }

  /** Returns the natural diameter at the butt end as tallied. */
  public Length butt() {
    return profile.at(Length.ZERO);
  }

  /** Returns the natural diameter at half the tallied length. */
  public Length mid() {
    return profile.at(length.dividedBy(2));
  }

  /** Returns the natural diameter at the tip end as tallied. */
  public Length tip() {
    return profile.at(length);
  }
}
