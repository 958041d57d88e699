/**
 * What the crew and the yard hold in their hands: a plan as the sheets of a workbook.
 *
 * <p>Nothing lies here but rooms. {@link roundbook.report.words} and {@link roundbook.report.frame}
 * are what all pages are made with; {@link roundbook.report.live} holds the sums and {@link
 * roundbook.report.mark} what is marked by them; {@link roundbook.report.round}, {@link
 * roundbook.report.wall}, {@link roundbook.report.list} and {@link roundbook.report.start} are the
 * pages; {@link roundbook.report.book} binds them. {@link roundbook.report.table} makes the plain
 * tables and {@link roundbook.report.form} the job workbook that is still to be filled in.
 */
package roundbook.report;
