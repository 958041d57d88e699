/** The building seen from above: its walls, its corners and where each butt of a round lies. */
package roundbook.picture.ground;
