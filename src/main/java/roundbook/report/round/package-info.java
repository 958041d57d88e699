/** The page of each round, which the crew works by: what to lay, to mark, to cut and to type. */
package roundbook.report.round;
