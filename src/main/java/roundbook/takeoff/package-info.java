/**
 * What follows from chosen logs besides the notches: openings, chinking, wood, settling, bed and
 * top.
 *
 * <p>Lengths that someone lays out are exact; areas and volumes are plain numbers of square and
 * cubic inches.
 */
package roundbook.takeoff;
