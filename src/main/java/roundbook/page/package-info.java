/** The workbook that is to be written, as plain values without any file in sight. */
package roundbook.page;
