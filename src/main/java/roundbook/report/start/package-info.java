/**
 * The first page: what this workbook is, what changed, what to do first and what to pick up first.
 *
 * <p>The same words of change are told on the terminal, so they are open to the commands.
 */
package roundbook.report.start;
