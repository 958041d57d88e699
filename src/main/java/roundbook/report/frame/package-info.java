/**
 * What all pages share: the context they are made from, their tabs, their cells and tables, how
 * much room a text takes, and how drawings are laid on them.
 *
 * <p>The context is a value that the caller fills, the changed pages too: they are found by making
 * every sheet, and were the context to ask for them, each page would need every other.
 *
 * <p><b>Pages turn before a block, not in it.</b> A list is written row by row; what begins with a
 * heading is a block, whose height is the sum of its rows once it ends. Only then is it decided
 * whether a page turns before it, so nothing guesses a height beforehand. A block higher than a
 * page begins where a third of one is free; and where blocks would cost the sheet a page more than
 * its rows need, rows flow on and the sheet is scaled to the fewer pages.
 */
package roundbook.report.frame;
