/**
 * The pure integer engine that chooses logs: plain longs in, a choice and its score out.
 *
 * <p>It knows nothing of the rest of the project. {@link roundbook.balance.BalanceTask} says what
 * is wanted, a {@link roundbook.balance.Balancer} answers with a {@link
 * roundbook.balance.BalanceResult}; {@link roundbook.balance.Shortage} answers what is missing.
 *
 * <p><b>How near the best.</b> {@link roundbook.balance.Bound} gives a score that no choice is
 * under. Sides that are laid alike are laid in twos, each two as a shortest path: a state is a
 * round, a size of it and a log on each side, and steps from state to state are kept one by one,
 * most of them left out before they are made, for what both sides cost above the least is no less
 * than what each does by itself. Each state keeps its eight cheapest steps, and the state below
 * takes the first that leads to none of its own logs, so no log lies twice within three rounds.
 * Prices of logs, of sizes, of the sums of middle diameters and of sides that lie higher than
 * others of their round tie the sides, and follow the subgradient. What is left open is closed by
 * parting all choices, first by the sizes of their rounds, then by what lies in a place, the part
 * of the least bound first; where one choice is left, its score is its bound. Whole graphs do not
 * fit into memory for large yards, so a lower target is reached first ("no choice is under three
 * quarters"), for which far fewer steps can matter, then a higher one; or sides are laid by
 * themselves until a part is small enough for twos.
 *
 * <p>What keeps it a proof: costs are whole numbers, rounded down, of which 2<sup>24</sup> make the
 * known score; prices are whole too or rounded against the bound, and two units a place are taken
 * off for those that are not; a step is left out only where every way over it costs more than the
 * target; parts leave nothing out. Of all spread in a round half is told by the twos and half by
 * the prices between them. Where lone sides would have twenty million steps it is asked whether a
 * choice is under a half, a quarter or an eighth of the known score. Sizes that are exact means
 * have no bound, nor yards of over a thousand cuts for one length of wall.
 *
 * <p>On the way it comes upon better choices, and hands over the best. The cheapest ways of a part
 * have logs that lie twice; each is laid where it comes first, other places take the log nearest in
 * size that is left, and a spell of 4,000 moves a place mends the rest: that is a search that
 * begins with sizes the bound thinks cheap. A part is looked at whenever so many steps were
 * followed that spells take a small share of the time, and each that is a single choice. A find
 * lowers the target of all that is open. That happens between parts, so the outcome is the same
 * with any number of threads, but for where time runs out.
 *
 * <p>What mattered, half inches, one cut a log, a minute of one loaded thread, r10_x125_M: twos
 * laid log by log, each state with four ways and all their logs, 0.69; steps kept and no log twice
 * within three rounds, 0.80; sizes parted, the whole. Fixing the sizes of the best choice shows
 * why: with them the bound is at 0.96 at once. Places parted alone, without a price for spread
 * between twos, left choices open that spread too much.
 *
 * <p><b>Looking up.</b> With sizes in steps the base of a joint is one of few numbers, and what a
 * joint costs hangs on nothing else but the length class and the two cuts that meet, so it is
 * worked out once. A slot keeps the rows of costs that meet there: what any cut of any log would
 * cost in it is four look-ups, and an exchange of logs that have no joint in common the sum of two
 * such costs. The tables are emptied when they grow too large; with a thousand cuts for one length
 * of wall they cost more than they save, and sizes follow the logs as in one long run.
 *
 * <p><b>Where the time of a choice goes.</b> Not into exchanges that are refused: drawing those
 * that pass more often made choices no better. What counts is in which sizes of rounds a start
 * ends, and how cold a spell gets. So starts are many, short, and only as hot as they must be; some
 * begin from the dealt choice molten down, since a yard that is dealt badly is never mended at 3
 * unit². A spell ends at a twentieth of a place's score, for what is cold for a yard of even logs
 * is warm for another; it begins anywhere between hot enough for sizes to change and cool enough to
 * keep them. Exact means keep their hotter and longer starts.
 *
 * <p><b>When a search ends.</b> A choice begins as four small sets that are bettered in turn. What
 * is easy all four find alike, and it ends in a third of the time that it takes one set to settle
 * after the other; else they join two by two, and two sets that agree end it too. Four small sets
 * agree less often on a poor choice than two large ones do, and lose nothing where they don't: what
 * they found goes on together, and is at last told by a set that begins anew.
 *
 * <p><b>Tried and not taken: a place that weighs all its exchanges at once</b> and draws one by the
 * heat (least of cost and Gumbel noise), from a row of what each log would cost there. With one cut
 * a log it was better in less time than the search there was then. Where logs may be cut at either
 * end, as in most jobs, it never was: three cuts of each log and three of the one that goes back
 * are nine to weigh, a row is three times as long, and every log taken makes ten rows anew. By
 * figures of different days the way above is better there in half the time; with one cut they were
 * not compared. The figures are in src/site/measured.md.
 */
package roundbook.balance;
