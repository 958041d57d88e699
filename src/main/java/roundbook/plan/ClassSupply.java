package roundbook.plan;

import roundbook.units.Length;

/**
 * Logs on hand against logs needed, for one length class.
 *
 * <p>A class is the logs long enough for one set of walls and not for the next longer set.
 *
 * @param least least length of a log of the class, squaring at both ends included
 * @param walls the walls that it serves, such as {@code N S}; empty for logs too short for any
 * @param needed logs that the wanted rounds need
 * @param placed logs of the plan on those walls
 * @param onHand usable logs of the class
 * @param spare logs of the class without a place
 * @param sparesWanted spares that the rules ask for
 */
public record ClassSupply(
    Length least, String walls, int needed, int placed, int onHand, int spare, int sparesWanted) {
  /** Returns how many logs are missing for the rounds wanted. */
  public int missing() {
    return Math.max(0, needed - placed);
  }

  /** Returns whether the spares wanted are there. */
  public boolean sparesShort() {
    return spare < sparesWanted;
  }
}
