/**
 * What all pages share: the context they are made from, their tabs, their cells and tables, how
 * much room a text takes, and how drawings are laid on them.
 *
 * <p>The context is a value that the caller fills, the changed pages too: they are found by making
 * every sheet, and were the context to ask for them, each page would need every other.
 */
package roundbook.report.frame;
