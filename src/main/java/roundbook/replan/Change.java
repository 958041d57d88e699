package roundbook.replan;

import roundbook.job.AsBuilt.Place;

/**
 * One place whose log or cut is another than in the revision before, and why.
 *
 * @param place the place
 * @param was the log that was planned there, or empty
 * @param now the log that is planned there now, or empty
 * @param why the reason
 * @param about what the reason is about: a log or a place; or empty
 */
public record Change(Place place, String was, String now, Why why, String about) {
  /** Why a place got another log. */
  public enum Why {
    /** The crew used another log here. */
    USED_HERE,
    /** Its log was used in another place. */
    USED_ELSEWHERE,
    /** Its log is lost. */
    LOST,
    /** Its log does not serve here any more. */
    UNFIT,
    /** The round is new. */
    NEW_ROUND,
    /** The round is given up. */
    DROPPED,
    /** The change makes the gaps evener by more than a moved log must pay. */
    PAYS,
    /** The log is kept for a sill, plate or header, and this is such a place. */
    KEPT,
    /** Stems without a cut are cut otherwise, to suit those that were cut. */
    DEALT_ANEW,
    /** Its log was needed in another place. */
    MAKES_ROOM
  }

  /** Returns whether the log stays and only its cut is another. */
  public boolean sameLog() {
    return was.equals(now);
  }
}
