/**
 * Lengths, slopes and units: exact arithmetic, reading and printing of every form a tape uses.
 *
 * <p><b>Exact lengths.</b> {@code Length} is a whole number of nanometres: 1/64 in, 0.01 ft and 0.1
 * mm are all whole. A mean is rounded from its sum, never from a rounded mean. Before the half is
 * added the quotient is rounded to six decimals, as the formula in the sheet does, so a value that
 * was interpolated to the nanometre falls on a tie in both.
 */
package roundbook.units;
