package roundbook.plan;

import java.util.Locale;
import roundbook.buying.LeastTips;
import roundbook.buying.LogLengths;
import roundbook.units.Length;

/**
 * One line of the order to the yard.
 *
 * @param count how many logs
 * @param least least length, squaring at both ends included
 * @param midFrom least middle diameter
 * @param midTo largest middle diameter
 * @param walls the walls they are for, such as {@code N S}
 * @param purpose what they are for
 * @param butt how long a butt log is to be, whose flare is sawn off
 * @param second how long another log is to be
 * @param tips how thick the thin end is to be
 */
public record OrderLine(
    int count,
    Length least,
    Length midFrom,
    Length midTo,
    String walls,
    Purpose purpose,
    LogLengths butt,
    LogLengths second,
    LeastTips tips) {
  /** What a line of an order is for. */
  public enum Purpose {
    /** Rounds are missing without them. */
    NEEDED,
    /** Half logs under the second-laid walls are sawn from it. */
    STARTER,
    /** They stand in for logs cut wrong. */
    SPARE;

    /** Returns the word used in plain tables and keys. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
