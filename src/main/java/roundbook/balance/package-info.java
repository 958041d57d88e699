/**
 * The pure integer engine that chooses logs: plain longs in, a choice and its score out.
 *
 * <p>It knows nothing of the rest of the project. {@link roundbook.balance.BalanceTask} says what
 * is wanted, a {@link roundbook.balance.Balancer} answers with a {@link
 * roundbook.balance.BalanceResult}; {@link roundbook.balance.Shortage} answers what is missing.
 *
 * <p><b>Tried and not taken yet: a place that weighs all its exchanges at once.</b> With sizes in
 * steps the base of a joint is one of few numbers, and what a joint costs hangs on nothing else but
 * the length class and the two cuts that meet, so it can be worked out once; a row of costs, what
 * each log would cost in a place with the others staying, is then one pass over four rows of
 * joints, and one look draws of all exchanges by the heat (least of cost and Gumbel noise). With
 * one cut a log it was better on all three yards of 32 to 48 places that were compared in about the
 * same processor time. Where logs may be cut at either end, as in most jobs, it reached the best
 * scores met of the sample cabin, but too many seeds ended 5 to 20 % above them, where this search
 * stays within 2 %. The figures are in src/site/measured.md. What mattered: steps of sizes (of
 * 1,024 moves 420 with one cut, 200 with several; 100 is too few, 620 too many), nine spells of ten
 * crossed, half as many starts as places and no small sets joined afterwards, spells from 0.1 in²
 * instead of 0.35 with several cuts. What did not: spells of 30 or 60 moves a place, one spell at a
 * time instead of four, misfit dearer at first, starts cooled further. A look takes for each log
 * the cut whose joints are evenest, blind to the middle diameter that the round's size needs; that
 * is where to look next.
 */
package roundbook.balance;
