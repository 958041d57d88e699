/**
 * The whole crew workbook, and which of its pages print otherwise than before.
 *
 * <p>The only room that knows every sheet. What is printed for whom is told on Start by page
 * numbers, once every other sheet is made: a sheet's pages follow from its print area, its breaks,
 * the heights of its rows and the scale that its width asks for, and a sheet without breaks is
 * fitted to so many pages, so that no viewer turns a page of its own accord. Page numbers count
 * every visible sheet, as a spreadsheet program does that prints them all.
 *
 * <p>Pages to print again after a new plan are computed: the sheets of the plan as it was printed
 * and of the new one are made by the same code and held against each other, for a list of what each
 * kind of change touches had forgotten six sheets. Naming every sheet that printed otherwise named
 * 25 of 30, and a crew that prints everything reads nothing: so only what a crew works by counts,
 * and only where it could see a difference.
 */
package roundbook.report.book;
