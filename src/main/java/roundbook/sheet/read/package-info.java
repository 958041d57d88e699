/**
 * Workbooks, old and new, to sheets of typed cells that know their address.
 *
 * <p>A workbook that lost a part is refused. A sheet listed without its part, a shared text that is
 * not there and a cell at no address once were passed over, and a log, a wish or a column with
 * them.
 *
 * <p>A workbook of the present kind is opened without the workbook library, which makes trees of
 * its lists of parts by readers of XML that nothing else needs, and starts a log: that was most of
 * the time of reading a job. The library's limits are kept: no more than a thousand parts, none
 * that unpacks to more than a hundred times its packed size. Old workbooks are the library's.
 */
package roundbook.sheet.read;
