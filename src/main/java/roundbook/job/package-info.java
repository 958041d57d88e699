/**
 * What the builder told us: rules, walls, openings, pins, and logs with their diameters.
 *
 * <p><b>Walls are a set along two directions</b>: those along one are laid first in every round,
 * those along the other second. {@code Building} says of each what crosses it at its ends and in
 * between; a corner is where two walls end, a crossing where a partition ends past a wall that goes
 * through. A partition has a start, an end, a left and a right like any wall, as the wall left of
 * it has, so whatever is reckoned for a wall holds for it without a case of its own: lengths,
 * heights, gaps, readings where it crosses. Only three things differ, and each asks: which line of
 * a neck is level, what is sawn in mid-wall, and at which end the butts lie.
 *
 * <p><b>No new number at a crossing.</b> The log that goes through keeps its sloping top and is
 * level underneath; the partition's log keeps its sloping underside and is level on top. So every
 * pair of planes that meet is one plane, with the round's own two marks. This is our own reckoning,
 * held by polygons in the tests; half-dovetail crossings have no published numbers, and each page
 * that has one says so. That partitions of log were notched into the front and back logs is told by
 * writers on the craft; none gives a measure.
 *
 * <p><b>Butts.</b> They alternate in every wall. A partition lies opposite to the wall left of it,
 * and a second pen mirrors the first, so that a wall that goes through shares thick ends and thin
 * ones.
 *
 * <p><b>What is refused.</b> At an inner corner a half-dovetail cannot both hook and drain; a wing
 * on another pen's wall would need that question answered by the builder, and partitions that cross
 * each other a junction that is level on both sides. Neither is planned, and both are said with the
 * wall. Pens of one row are equally deep, for their plates lie on both.
 */
package roundbook.job;
