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
 * <p><b>Tried and not taken yet: a place that weighs all its exchanges at once.</b> With sizes in
 * steps the base of a joint is one of few numbers, and what a joint costs hangs on nothing else but
 * the length class and the two cuts that meet, so it can be worked out once; a row of costs, what
 * each log would cost in a place with the others staying, is then one pass over four rows of
 * joints, and one look draws of all exchanges by the heat (least of cost and Gumbel noise). With
 * one cut a log it was better in about the same time on three yards of 32 to 48 places, and as good
 * in two fifths of it on one of them. Where logs may be cut at either end, as in most jobs, a look
 * at each log cut as suits its joints best was blind to the middle diameter that the round's size
 * needs, and too many seeds of the sample cabin ended 5 to 20 % above the best. Since then every
 * cut of every log is weighed, the log that goes back is tried in each of its cuts with what spread
 * and misfit change, and of up to 90 starts the twenty best are kept. With cuts at either end that
 * was better in less than half the time on the one yard of 48 places that was run, and no better
 * than this search with a third to a half of its usual moves on the samples and the measured stems.
 * The figures are in src/site/measured.md. What mattered: steps of sizes (of 1,024 moves 400 in the
 * end; 100 and 200 were too few with twelve starts), many starts, nine spells of ten crossed,
 * spells from 0.06 in² instead of 0.35 with several cuts. What did not: spells of 10, 30 or 60
 * moves a place, one spell at a time instead of four, misfit dearer at first, starts cooled
 * further. Of its time a fifth goes into weighing, a fifth into rows of costs anew, a tenth into
 * spread and misfit.
 */
package roundbook.balance;
