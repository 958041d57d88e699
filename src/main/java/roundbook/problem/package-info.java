/**
 * What is wrong and where it stands, in no language.
 *
 * <p>A problem is a code, a place and a sentence by its key with named values: lengths, tags,
 * counts, the texts of cells. A value knows how it is printed in the job's unit and in a language's
 * form of numbers, so nothing is ever taken out of a finished sentence again. Where a code has
 * several sentences, each has a variant of its own after the code. A workbook carries problems
 * written out as key and values, which a later revision reads and tells in its own language; what
 * somebody typed over is told as it stood there.
 */
package roundbook.problem;
