/** Workbooks as files: the only room that knows how a workbook is stored. */
package roundbook.sheet;
