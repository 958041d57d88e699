/**
 * What is wrong and where it stands, in no language.
 *
 * <p>A problem is a code, a place and a sentence by its key with named values: lengths, tags,
 * counts, the texts of cells. A value knows how it is printed in the job's unit and in a language's
 * form of numbers, so nothing is ever taken out of a finished sentence again. Where a code has
 * several sentences, each has a variant of its own after the code. A workbook carries problems
 * written out as key and values, which a later revision reads and tells in its own language; what
 * somebody typed over is told as it stood there.
 *
 * <p><b>What is told first.</b> Of 39 problems of an ordinary job a builder would act on six, and
 * those stood after the wall of the others. So a run and the sheet Start say a {@link
 * roundbook.problem.Briefing}: errors, then at most eight lines to settle before the first cut by
 * what a mistake there costs (units and bark make every log wrong, pins and openings a wall, gaps
 * and ends a joint), three of a kind one by one and more of it as one line, and the rest counted by
 * kind. The list of problems and {@code check} tell all.
 */
package roundbook.problem;
