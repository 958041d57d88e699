/**
 * What the builder told us: rules, walls, openings, pins, and logs with their diameters.
 *
 * <p><b>Walls are a set along two directions</b>: those along one are laid first in every round,
 * those along the other second. {@code Building} says of each what crosses it at its ends and in
 * between; a corner is where two walls end, a crossing where a partition ends past a wall that goes
 * through, a tee where a wing's side comes to such a wall from outside. A partition has a start, an
 * end, a left and a right like any wall, as the wall left of it has, so whatever is reckoned for a
 * wall holds for it without a case of its own: lengths, heights, gaps, readings where it crosses.
 * Only three things differ, and each asks: which line of a neck is level, what is sawn in mid-wall,
 * and at which end the butts lie.
 *
 * <p><b>No new number at a crossing.</b> The log that goes through keeps its sloping top and is
 * level underneath; the partition's log keeps its sloping underside and is level on top. So every
 * pair of planes that meet is one plane, with the round's own two marks. This is our own reckoning,
 * held by solids in the tests; half-dovetail crossings have no published numbers, and each page
 * that has one says so. That partitions of log were notched into the front and back logs is told by
 * writers on the craft; none gives a measure.
 *
 * <p><b>Butts.</b> They alternate in every wall. A partition lies opposite to the wall left of it,
 * and a second pen mirrors the first, so that a wall that goes through shares thick ends and thin
 * ones.
 *
 * <p><b>Partitions that cross</b> both go through, level above and below: whichever is laid first
 * is under the other at every round, so neither needs to be named as the one that goes through.
 *
 * <p><b>A wing</b> stands on a wall of the house that goes through, for walls do not turn at an
 * inner corner. Its side ends in that wall with its tail inside the house, and is as long as the
 * wing is deep, the wall thick, and two tails. A half-dovetail there either hooks, its saddle
 * falling to the tail and so into the house, or drains, falling outwards as that wall does
 * everywhere, which makes the side's log deeper at the shoulder and leaves it held by a peg only:
 * the tests draw both out as solids. Which of them is for the builder to say; there is no default.
 * Tails are planned with the overhang on the inside too, so that every end is marked alike, and may
 * be sawn flush once the walls stand. A side in line with a wall of the house is that wall, which
 * goes on along the wing; where the shared wall meets it, that ends past its outer face like a
 * partition. A wing mirrors the house as a second pen does. One wing is planned, with partitions in
 * the house that do not run from the wall that goes on.
 *
 * <p><b>What is refused.</b> A corner at which walls turn inwards, a wing among pens in a row, and
 * whatever does not close or has no room, each with its wall. Pens of one row are equally deep, for
 * their plates lie on both; how long those are is told, how thick they must be is not ours to say.
 */
package roundbook.job;
