/**
 * Felled stems: a table with a stem a row and a diameter at each distance from the butt.
 *
 * <p>A table is one of stems where at least three of its headings are distances, {@code 0 ft} or
 * {@code at 120 cm}, beside a tag and a length; on a sheet named Stems any table is. Distances say
 * their unit, for a bare 4 may be feet or decimetres; only 0 needs none.
 *
 * <p><b>Wanted stations</b> are 0, 1, 2 and 4 ft and every 4 ft after that (0, 30, 60, 120 cm and
 * every 1.2 m): flare falls by an inch a foot at the butt and by an eighth of that from 6 ft on.
 * Fewer are warned of. A breast-height diameter and a height are no profile: taper models miss a
 * stem by half an inch to an inch eight to ten metres up, and cutting by them was measured to be
 * worse than sawing off the flare and going from the butt. So a stem whose stations lie further
 * apart than 12 ft (3.6 m) is left out with an error.
 *
 * <p><b>What was not measured is not cut from</b>: the stem below its first and above its last
 * station counts as bad, for a line that is carried on misses both flare and top.
 */
package roundbook.intake.felled;
