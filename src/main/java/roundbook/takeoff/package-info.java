/**
 * What follows from chosen logs besides the notches: openings, chinking, wood, settling, bed and
 * top.
 *
 * <p>Lengths that someone lays out are exact; areas and volumes are plain numbers of square and
 * cubic inches.
 *
 * <p><b>Settling room is the tangential one</b> of the species in the walls that loses most,
 * rounded up; the mean stands beside it. A pinched frame costs more than a covered slot.
 *
 * <p><b>A quantity carries a key</b>, not words: the bundle says it in each language, and the plain
 * tables in English.
 *
 * <p><b>An opening takes a joint</b> when the middle of the gap over it lies between sill and head.
 * One that does not lie inside its wall is said and left out of every sum.
 *
 * <p><b>A log that loses more than half of its height is no header</b> where another lies above it;
 * one that loses more than a third is, with a warning (common practice; an engineer decides).
 *
 * <p><b>A log sawn flat ends at its bed</b>, so a door to the bed cuts the first log in two.
 */
package roundbook.takeoff;
