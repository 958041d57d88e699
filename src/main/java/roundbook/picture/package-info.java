/**
 * Drawings for the crew, black on white, from a plan to the bytes of a PNG file.
 *
 * <p>{@link roundbook.picture.Drawings} is the door: it has each drawing made in its room and turns
 * whatever goes wrong into one fault. The rooms, each using those before it only: {@code raster},
 * {@code letter} and {@code canvas} know pixels, letters and sheets but nothing of logs; {@code
 * words} has the words; {@code face}, {@code wall}, {@code full} and {@code ground} make a kind of
 * drawing each.
 *
 * <p><b>Nothing is printed under 8 points.</b> A drawing says how small its smallest letters are,
 * and a test reckons what is left of them, and of every cell, on the paper at the scale of the
 * page. Words that would have to be smaller are cut or left out, numbers only where another place
 * has them. How {@code wall} and {@code face} hold this stands there.
 */
package roundbook.picture;
