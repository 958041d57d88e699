/**
 * Sheets of cells with roles to a workbook's file.
 *
 * <p>Every part is written letter by letter. The workbook library, whose user model makes a tree of
 * XML objects of each part and walks it to save, wrote styles, names, rules and what stands around
 * the rows until its own start was a seventh of a run. A first try without it was dropped, for a
 * workbook that a spreadsheet program calls damaged costs more than half a second. When it was done
 * for good, each part of thirteen workbooks (both languages and units, replanned, an order, blank
 * forms, without pictures, with a template of every line, pattern and alignment) was held against
 * the library's: elements, attributes, texts and the looks of every cell are the same; only looks
 * that no cell has and attributes that say what holds anyway are gone. Tests hold what is written
 * to the whole schema of the standard, and read it back by the library and by a second reader.
 *
 * <p>All parts are in memory until the file is written, as they were before: rows that went
 * straight to the file would have to be written before the names and looks that they bring.
 */
package roundbook.sheet.write;
