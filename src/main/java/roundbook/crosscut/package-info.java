/**
 * Where the stems of a job are cut, so that its places get pieces that suit each other.
 *
 * <p>{@link roundbook.crosscut.Crosscutter} takes a job with stems and gives the same job with
 * their pieces as logs: tagged, with the stem's own profile, planned, checked and listed like any
 * log. A piece that a place takes is cut; what else the stems hold is a spare that stays on its
 * stem until it is wanted. So kept logs, pins, short logs beside openings, the order and a re-plan
 * need to know nothing of stems.
 *
 * <p><b>Long logs are cut in two only where rounds would be missing without.</b> A log long enough
 * for two pieces is a stem then; all of it that no piece has is waste. Where the logs do as they
 * are, none is cut: a job without need plans as it always did.
 *
 * <p><b>How thick a piece is at the least</b> is told by {@code Tip_least}. Where it is not, it is
 * what no end of the least round is flagged with; where that would cost a round or put more gaps
 * outside their limits, what none is stopped with, then what shows two faces: thin ends are told of
 * as of any log.
 *
 * <p><b>By wall height</b> the rounds are a guess until sizes are known, so stems are cut for the
 * number that comes nearest with the sizes found, three times at the most.
 *
 * <p><b>A re-plan keeps what is cut.</b> Pieces are logs then: those that are cut as they were
 * measured, the others as planned, and the spares on their stems stand in for what is lost. Where
 * some stems are cut, or new ones came, those that no cut was made in are cut anew and the rounds
 * dealt with them, if that brings a round or pays as much as one moved log ({@code Change_pays}): a
 * sheet of cuts that changes for less is worse than a gap. Their pieces get tags of their own, for
 * a tag never means two pieces.
 */
package roundbook.crosscut;
