/**
 * Tables to a job: reads every cell by its meaning and collects every problem in one pass.
 *
 * <p><b>A setting that cannot be used stops the plan</b>, a misspelt one too; its default may not
 * be what was meant. An unknown name on the Job sheet that is near no setting is only warned of,
 * for people keep notes there. A log with an error is left out and the rest is planned.
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
 * method ({@code RowTaker}), and hands logs to {@code Doubles} by its name. That brought the code
 * compiled for a row from three times 30 kB to once 15 kB.
 */
package roundbook.intake;
