/** Drawings for the crew, black on white, from a plan to the bytes of a PNG file. */
package roundbook.picture;
