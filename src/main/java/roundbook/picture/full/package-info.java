/**
 * Drawings printed at 100 percent and laid on the log: the wedge of the neck's slope, with a bar to
 * check the printing, and the pole with the heights of all rounds.
 */
package roundbook.picture.full;
