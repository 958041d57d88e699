/**
 * Placed logs, their rounds, the heights of their centre lines, and the gaps between them.
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
