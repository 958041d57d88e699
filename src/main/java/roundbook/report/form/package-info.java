/** The blank job workbook that a builder fills in, and the made-up job that shows how. */
package roundbook.report.form;
