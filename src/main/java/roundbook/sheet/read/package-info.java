/**
 * Workbooks, old and new, to sheets of typed cells that know their address.
 *
 * <p>A workbook that lost a part is refused. A sheet listed without its part, a shared text that is
 * not there and a cell at no address once were passed over, and a log, a wish or a column with
 * them.
 */
package roundbook.sheet.read;
