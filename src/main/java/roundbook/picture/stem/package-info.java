/** Felled stems to scale: where each is cut, what is sawn off, which piece is which. */
package roundbook.picture.stem;
