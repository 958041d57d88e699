/** The page of each wall: its drawing, its joints and their gaps, and what to look out for. */
package roundbook.report.wall;
