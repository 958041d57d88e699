/**
 * Tables to a job: reads every cell by its meaning and collects every problem in one pass.
 *
 * <p><b>A setting that cannot be used stops the plan</b>, a misspelt one too; its default may not
 * be what was meant. An unknown name on the Job sheet that is near no setting is only warned of,
 * for people keep notes there. A log with an error is left out and the rest is planned.
 *
 * <p><b>Whatever decides how a column is read is certain or said.</b> A heading counts as a whole:
 * a word that is not known leaves the column unread, or, where a dimension or a unit stands beside
 * it and the numbers fit, read and said. Where columns claim one meaning, {@code Claims} settles it
 * by what the headings say before what the numbers look like, and {@code HeadingDoubts} lists the
 * losers with their reasons, those that could be a measure as warnings. A tag painted on the log
 * goes before a number of the row; a number that repeats is joined to its load or tree.
 *
 * <p><b>A value far from its column is doubted only where the ratio of two units explains it</b>
 * ({@code Outliers}): a plain rule for outliers warned of large logs, and nobody reads a warning
 * that is often wrong. The quartiles come from the first rows, so that a long tally is still read
 * in one pass.
 *
 * <p><b>A harvester's own butt, middle and top go before its stem profile</b>: single stations are
 * noisy, the last one above all, by over 3 mm at one tip in nine of the open files. The profile
 * keeps its stations between them.
 *
 * <p><b>A cell seen before is not made or read again</b>: a long tally repeats a few hundred
 * measures, so both readers give the same cell again and intake remembers what it was read as. A
 * check holds only tags, rows and a 64-bit mix of the measures of each log, in arrays ({@code
 * SeenTags}): as objects they kept the collector of garbage busy. A line of text in which no cell
 * begins with a quote is cut at its separators; Commons CSV parses the others.
 *
 * <p><b>Rows that need no word are read in few steps</b> ({@code PlainRows}): a plain tag, measures
 * read before, a species. Every other row goes the long way, and a test reads each row of random
 * tallies alone, the long way, and as one of many. In a run of two seconds the compiling is half
 * the work, and what is called through many small methods is compiled once for each of them with
 * all below it; so {@code PlainRows} takes rows from their source itself, by an interface of one
 * method ({@code RowTaker}), and hands logs to {@code UniqueLogs} by its name. That brought the
 * code compiled for a row from three times 30 kB to once 15 kB.
 */
package roundbook.intake;
