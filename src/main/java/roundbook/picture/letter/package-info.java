/**
 * Letters of our own, drawn as strokes, so that a drawing looks the same on every machine whatever
 * fonts it has: their forms (in {@code letters.txt}), how wide a text is, where it is cut, and how
 * it breaks into lines.
 */
package roundbook.picture.letter;
