/**
 * What to order before a log is owned: lengths, diameters, counts, cost and loads; and the same
 * rules for what a short yard lacks.
 *
 * <p><b>Length over the wall's.</b> An order for logs "just long enough" costs the builder his
 * walls: the butt of a tree flares, and a wall log needs that flare off. Of 28 joints of an
 * eight-round house 13, 16, 13 and 13 were flagged in four yards of measured spruce and pine stems
 * bought just long enough with 5 % spares; with butt logs 24 in longer and a quarter spare 0, 0, 3
 * and 4. So butt logs are ordered longer by {@code Butt_spare}, and a quarter more of each line is
 * ordered than the walls hold. Narrow bands of diameters bring little once a quarter is spare, so a
 * yard need not be asked for them: {@code Band_most} is wide.
 *
 * <p><b>Where the middle is measured</b> is told with every band, half the trimmed length from
 * where the squared log begins, for a yard that measures at half of what it delivers measures
 * elsewhere.
 *
 * <p><b>Tips</b> are told in two sizes. At the least one the top bearing is whole; at the better
 * one the lower bearing too, and the wood that is wanted over the shoulder is there. Both are of
 * the thinnest round of a line.
 *
 * <p><b>No price is known here.</b> Every price comes from the builder. Where several ways of
 * selling cover a line the first one counts and the others stand beside it, for two prices for the
 * same logs cannot be added. Quantities are rounded once, to four decimals, as they are printed,
 * and the cost is worked from what is printed, so a sheet recalculated anywhere agrees to the cent.
 *
 * <p><b>Loads</b> are packed by the upper end of the green weight, as if all wood were sapwood: a
 * trailer's limit is no place for a mean. Long logs go first, heaviest first, each into the first
 * load that holds it.
 *
 * <p><b>Trees</b> are no logs: a breast-height diameter misses what stands 8 to 10 m up by half an
 * inch to an inch. The sheet is a help for marking, and nothing else is worked from it.
 */
package roundbook.buying;
