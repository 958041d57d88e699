/**
 * The sheets that say what is built: walls, pins, openings, other logs, prices, the crane's place.
 *
 * <p>Their headings are the program's own, in English or German, and found by their first words; a
 * tally's headings are anybody's and are understood elsewhere. A length here is certain or refused:
 * a cell that may be read in two ways is told as no length, for walls are cut by it.
 */
package roundbook.intake.house;
