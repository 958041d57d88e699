package roundbook.plan;

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
 * @param needed whether rounds are missing without them; otherwise they are spares
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
    boolean needed,
    LogLengths butt,
    LogLengths second,
    LeastTips tips) {}
