/** What the crew and the yard hold in their hands: a plan as the sheets of a workbook. */
package roundbook.report;
