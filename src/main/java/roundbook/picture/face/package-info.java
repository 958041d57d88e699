/**
 * Both faces of a log, with its marks, and what decides that two logs are cut alike.
 *
 * <p>The first and the last round have two drawings. They stand on one sheet with the boxes all the
 * same, shrunk to three fourths at the most: marks and the boxes for what is measured are read
 * together, and a second sheet is the one left in the truck. What nobody may cut has no number on
 * the drawing: the tops of the last round's second-laid logs.
 */
package roundbook.picture.face;
