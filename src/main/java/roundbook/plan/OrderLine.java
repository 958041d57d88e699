package roundbook.plan;

import roundbook.units.Length;

/**
 * One line of the order to the yard.
 *
 * @param count how many logs
 * @param least least length, squaring at both ends included
 * @param midFrom least middle diameter
 * @param midTo largest middle diameter
 * @param purpose what they are for: rounds that are missing, or spares
 * @param needed whether the job is not whole without them
 */
public record OrderLine(
    int count, Length least, Length midFrom, Length midTo, String purpose, boolean needed) {}
