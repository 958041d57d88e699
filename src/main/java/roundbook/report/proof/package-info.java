/**
 * The sheet that a builder who trusts nobody checks with a pencil, before the first cut.
 *
 * <p>Nothing on it asks to be believed: the marks, heights and one gap of round 1 in eight sums
 * with the job's own numbers, a corner from an offcut, how many checks the verifier made, what
 * diameters that are off do to the gaps, and what no program can know.
 *
 * <p><b>A sum must come out as it is printed.</b> So the terms are rounded before they are added,
 * middles to four decimals of an inch, and the sum is that of the terms that stand there. Where a
 * mean or a gap lies so near a tie that these would round it the other way, the sum shows two
 * decimals more. Marks are fractions, or decimals where a rule of the job is no whole number of
 * 64ths. The terms of a sum are never found by taking its result apart: each stands on the working
 * sheet by itself, so that a sum can fail.
 *
 * <p><b>Round 1 only, and only until it is cut.</b> Then the page has done its work; a page that
 * went with the round in hand would be printed again after every re-plan, to show the same eight
 * sums. What is measured on the wall tells more from there on.
 *
 * <p><b>Counts, not praise.</b> The numbers of checks are those that the verifier counted while it
 * checked this plan. The page says that arithmetic was checked, and that wood was not.
 */
package roundbook.report.proof;
