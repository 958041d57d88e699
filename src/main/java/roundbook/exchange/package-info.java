/**
 * What other logs would do in the places of a plan: spares, substitutes, next best choices.
 *
 * <p><b>Spares and reasons are computed, not told.</b> {@code exchange} puts each spare into each
 * place, takes the round's size anew, and counts flags by the exact stack; a short log beside an
 * opening has its own spare, the other of the two staying; the score is summed apart from the
 * search by the formula of {@code Aims}, and a test holds the two together. Why a round has its
 * logs is said from numbers: its middles among those on hand, thicker logs above it, long logs on
 * short walls, and the cheapest exchange of one of its logs with any other that costs something.
 * Logs that the tally keeps for a place, or wishes there, are not offered: leaving them out would
 * better the score and undo what was asked.
 */
package roundbook.exchange;
