/**
 * What is marked on a log, and the chart of it: notches, lower marks that differ from end to end,
 * marks at a wall's own thickness, the two short logs beside an opening.
 */
package roundbook.report.mark;
