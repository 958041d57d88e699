/**
 * Sheets of cells with roles to a workbook's file.
 *
 * <p>The workbook library keeps writing styles, names, rules and drawings. Its user model makes a
 * tree of XML objects of each and walks it to save. All of that was written as XML here twice, the
 * second time in fewer lines than the library takes and, with workbooks opened to read without it
 * too, in a fifth less processor time of a whole run; elements, attributes, texts and looks of
 * twelve workbooks were the same, the printed pages too. It was dropped both times: what a workbook
 * must have in it is not what this program is for, a well-kept library knows it better, and one
 * that a spreadsheet program calls damaged costs more than a second. Only rows, nearly all of a
 * sheet, are written letter by letter.
 */
package roundbook.sheet.write;
