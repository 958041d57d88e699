/**
 * The working sheet: every sum that follows from what a crew types, worked out once.
 *
 * <p>{@link roundbook.report.live.LiveMap} says where each number stands; all other sheets show it
 * from there and none of them is asked for a cell of its own, so data run from the working sheet to
 * the pages and never back. The next lower marks of the corners, once the sums of the levels sheet,
 * stand here for that reason.
 */
package roundbook.report.live;
