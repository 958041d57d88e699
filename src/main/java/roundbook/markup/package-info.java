/**
 * Tables in markup: OpenDocument spreadsheets, packed or flat, the spreadsheet XML of 2003, and web
 * pages.
 *
 * <p>All are read as streams, and of a long sheet only the first rows are held, as of any other
 * table. OpenDocument is read by the names of its standard (OASIS, OpenDocument 1.3, parts 3 and
 * 4): values come from {@code office:value}, never from the text that a cell shows, rows and cells
 * that are repeated count as often as they say, and a cell that is merged downwards holds for every
 * row that it covers. A web page is cut into tags by a reader of our own, for all that is wanted of
 * it is rows and cells, and pages that people save are seldom well-formed.
 */
package roundbook.markup;
