/** What a crew typed into its workbook, read back by the names of the cells. */
package roundbook.site;
