/**
 * The pure integer engine that chooses logs: plain longs in, a choice and its score out.
 *
 * <p>It knows nothing of the rest of the project. {@link roundbook.balance.BalanceTask} says what
 * is wanted, a {@link roundbook.balance.Balancer} answers with a {@link
 * roundbook.balance.BalanceResult}; {@link roundbook.balance.Shortage} answers what is missing.
 *
 * <p><b>How near the best.</b> {@link roundbook.balance.Bound} gives a score that no choice is
 * under. Each side of a building is laid by itself at the least cost, as a shortest path over the
 * size of a round and the cut of a log in it; prices of logs, of sizes and of the sums of middle
 * diameters tie the sides, and follow the subgradient. Like sides are then laid in twos, log by
 * log, so that laying a round over another takes two steps of three logs each and not one of four;
 * no log lies twice on both, for each state keeps its four cheapest ways with their logs, and the
 * least cost of what it dropped. What keeps it a proof: every drop between rounds and every cut of
 * a log is reckoned with; costs are whole numbers of the search's own, summed as doubles, and a
 * thousand-millionth is taken off; a state is taken out only where every way through it costs more
 * than the known choice at the prices of that moment; logs over 64 may lie twice; pins, kept logs
 * and refused tips shut states out. Left out, which can only lower the bound: spread between the
 * two pairs of a building, and logs kept for a place that must lie there. Sizes that are exact
 * means have no bound, nor yards of which one round of prices would take more than some seconds.
 * What mattered, half inches, a minute of one loaded thread: laying sides alone came to 0.49 of the
 * best on r08_x125_U and 0.77 on t3_0, in twos to 0.77 and the whole; leaving out states too far
 * from a round's size, by what a spread alone may cost, a third of the time.
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
 * <p><b>Tried and not taken: a place that weighs all its exchanges at once</b> and draws one by the
 * heat (least of cost and Gumbel noise), from a row of what each log would cost there. With one cut
 * a log it was better in less time than the search there was then. Where logs may be cut at either
 * end, as in most jobs, it never was: three cuts of each log and three of the one that goes back
 * are nine to weigh, a row is three times as long, and every log taken makes ten rows anew. By
 * figures of different days the way above is better there in half the time; with one cut they were
 * not compared. The figures are in src/site/measured.md.
 */
package roundbook.balance;
