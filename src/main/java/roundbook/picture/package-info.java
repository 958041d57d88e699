/**
 * Drawings for the crew, black on white, from a plan to the bytes of a PNG file.
 *
 * <p><b>Nothing is printed under 8 points.</b> A drawing says how small its smallest letters are,
 * and a test reckons what is left of them, and of every cell, on the paper at the scale of the
 * page. Words that would have to be smaller are cut or left out, numbers only where another place
 * has them. A wall's drawing is made lower where its chart then stays on the page, down to 15
 * points a round. A round that would shrink under 0.88 of its size, as the first and the last with
 * their two drawings do, takes two pages: what is needed to lay out on the first, what is typed
 * afterwards on the second, under the same bar.
 */
package roundbook.picture;
