/**
 * The workbook that is to be written, as plain values without any file in sight.
 *
 * <p><b>{@code page} and {@code table} are two rooms.</b> A cell that was read (text, format,
 * hidden, error) and a cell to be written (role, formula with its value, name) share nothing but an
 * address; one type for both was tried on paper and every second field was unused.
 */
package roundbook.page;
