/**
 * Plain tables for other programs: in English whatever the workbook's language, with a point before
 * decimals, lengths in the unit that the heading names.
 */
package roundbook.report.table;
