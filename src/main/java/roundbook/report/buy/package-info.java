/**
 * The workbook of an order, written before a log is owned, and its plain tables.
 *
 * <p>It is two things in one file: what a yard is asked for, with its cost, loads and trees, and
 * the job itself with an empty tally. So the file that went to the yard is filled in when the logs
 * are there and planned as it is; the sheets that only tell the order are passed over then. The
 * job's sheets keep their English names in every language, as they are read by them; their headings
 * are in the job's language, and read in both.
 *
 * <p>Money is worked by formulas from the prices typed on the sheet Prices, so that a changed price
 * changes every sum; each carries what the program worked.
 */
package roundbook.report.buy;
