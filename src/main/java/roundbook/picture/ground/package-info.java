/**
 * The building seen from above: its walls, its corners and where each butt of a round lies, the
 * heights of its foundation; and how a log's centre line is found.
 */
package roundbook.picture.ground;
