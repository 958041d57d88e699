/**
 * Workbooks as files: the only rooms that know how a workbook is stored.
 *
 * <p>{@link roundbook.sheet.kind} says what a file is, {@link roundbook.sheet.read} reads it;
 * {@link roundbook.sheet.style} holds the looks and {@link roundbook.sheet.write} writes. Reading
 * and writing share nothing.
 */
package roundbook.sheet;
