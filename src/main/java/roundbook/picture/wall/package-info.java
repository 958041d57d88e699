/**
 * A wall to scale, seen from outside: its logs, openings, corners, the chart of its rounds and the
 * foot with what the signs mean.
 *
 * <p>A wall's drawing is made lower where its chart then stays on the page, down to 15 points a
 * round; a lower round could not be written in.
 */
package roundbook.picture.wall;
