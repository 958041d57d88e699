/**
 * What a file is before it is read as a workbook: its kind, whether it is safe to open, how large
 * it may get; and whether one that was just written is whole.
 */
package roundbook.sheet.kind;
