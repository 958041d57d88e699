/**
 * The whole crew workbook, and which of its pages print otherwise than before.
 *
 * <p>The only room that knows every sheet. Pages to print again are computed: the sheets of the
 * plan as it was printed and of the new one are made by the same code and held against each other,
 * cell by cell as shown and drawing by drawing, for a list of what each kind of change touches had
 * forgotten six sheets. Cut rounds' pages are left out: nothing more is marked by them.
 */
package roundbook.report.book;
