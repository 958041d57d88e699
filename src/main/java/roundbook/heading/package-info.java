/**
 * The words of tallies: what a heading, or a word in a cell, means in which language.
 *
 * <p>The words stand in one file a language beside this package, one line a word, {@code zopf =
 * tip}, so that a forester can add to them without a compiler, and a user can lay a file of his own
 * beside the job. Where the words of a language come from, its file says in its first line.
 *
 * <p>One spelling may mean different things: {@code stock} is the butt in German and the log in
 * Swedish, {@code le} the large end in English and an article in French. So a word is never read
 * alone: the languages are ranked by how many words of the whole heading row they know, and a word
 * takes its meaning from the first that has it. Where two languages know as much and disagree, the
 * word is unsure, and whoever reads the column says so.
 *
 * <p>A heading is understood only as a whole. A word that is not known is kept as a stranger and
 * never passed over: {@code Large knots} is no large end.
 *
 * <p>A unit counts where it stands in brackets, after a slash or at the end. {@code in} is the inch
 * only where no word of the heading follows it, for in half the languages it is a preposition.
 */
package roundbook.heading;
