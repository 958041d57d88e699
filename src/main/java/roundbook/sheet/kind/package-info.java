/**
 * What a file is before it is read as a workbook: its kind, whether it is safe to open, how large
 * it may get.
 */
package roundbook.sheet.kind;
