/**
 * Pixels, black or white: places and boxes in them, outlines filled with an ink, lines of a width,
 * and the bytes of a PNG file.
 */
package roundbook.picture.raster;
