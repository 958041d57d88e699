/**
 * A sheet measured in points, on which lines, arrows, inks and labels are put, and the finished
 * picture that it becomes.
 *
 * <p>A sheet remembers where it wrote and how small, so that a label can be left out where another
 * stands and a test can look for what overlaps.
 */
package roundbook.picture.canvas;
