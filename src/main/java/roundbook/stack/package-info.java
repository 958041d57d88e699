/**
 * Filled places, their rounds, the heights of their centre lines, and the gaps between them.
 *
 * <p><b>A place, a round of a wall, is filled by one log or by two short ones</b>, one each side of
 * an opening: {@code FilledPlace}. Whatever looks at a wall sees the place: its diameters at both
 * corners, at the middle and anywhere between are those of the log that lies there, and across the
 * opening those of a straight line. So size, marks, heights and gaps take it like any log, each
 * corner by the log that is there. Whatever looks at wood sees each log in its own right, a {@code
 * PlacedLog}: a piece of a log, which way round it lies, and where on the wall. No log stands for
 * two, so no tag has to be taken apart; {@code tags()} only prints. In what is built and measured
 * the same is told by tags: {@code AsBuilt.Held} of one or two {@code HeldLog}. A third piece
 * between two openings, and pieces of one stem in several places, would need no other type, for a
 * piece knows where in its log it begins and a placed log where on its wall; today a log gives one
 * piece, and a place takes two at the most.
 *
 * <p><b>The middle is that of the trimmed piece</b>, not of the log: a long log cut short keeps its
 * thick part.
 *
 * <p><b>A reading is shared among the marks since the one before.</b> Where only the second-laid
 * tops were read a quarter of what a corner reads otherwise than expected is in the first-laid
 * log's height and three quarters in the second-laid one's; where both were, half of each in the
 * log that was read. The gaps on both sides use it, in the workbook's formulas as in {@code
 * stack.Corners}.
 */
package roundbook.stack;
