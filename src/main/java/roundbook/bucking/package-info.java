/**
 * The pure integer engine that chooses where stems are cut: plain ints in, a piece for every place
 * out.
 *
 * <p><b>Cross-cuts are chosen with the plan.</b> A piece of a stem is as thick as the place on the
 * stem that it comes from, so which piece lies where and where it is cut are one question. Sliding
 * a cut by a foot moves a middle diameter by a tenth of an inch and more near the butt; a rule that
 * cuts first gives that away. On 28 measured stems for 32 places the gaps outside their limits were
 * 18.8 of 84 when cut from the butt, 0.4 with two feet of flare off first, none when chosen with
 * the plan, for no more wood.
 *
 * <p><b>Three parts.</b> {@link roundbook.bucking.Counts} says, exactly, how many whole rounds the
 * stems hold and gives one way to cut so many pieces: lengths alone. {@link
 * roundbook.bucking.JointSearch} starts there and makes the score of {@link roundbook.balance.Aims}
 * and the wood skipped small together: it exchanges the stems of two places, slides a piece along
 * its stem, or lays it in any free stretch, and cools from 4 to 0.004 in². {@link
 * roundbook.bucking.PricedCuts} is the dynamic programme of the bucking literature (Pnevmaticos and
 * Mann 1972): one stem alone, each length at a price. Prices know nothing of rounds, so it cuts
 * what is left over and is a bound, never the plan.
 *
 * <p><b>A place has one piece or two.</b> Where an opening cuts a place through, two may lie, one
 * each side of it ({@link roundbook.bucking.Parting}); which of such places have two is a part of
 * the search. Its first deal is a greatest matching, and parts a place only where a whole piece is
 * lacking elsewhere for want of it.
 *
 * <p><b>Wood is priced where it is skipped</b>: from the butt to the end of a stem's last piece,
 * less its pieces. The top above it stays whole and is worth something; of a log that was cut
 * already the whole rest counts.
 *
 * <p><b>Moves that come to nothing.</b> A log that is cut already may lie in three ways: off its
 * tip, off its butt or half off each. Laid against an end of the piece before, as pieces of a stem
 * are, one exchange in seven could be made, and one in five of the stems drawn for a place; of the
 * slides a third left a piece where it lay. So such a piece is exchanged the way it lay, three
 * times in four, stems are drawn from those that may serve, and what would change nothing is no
 * move. Pairs begin as warm as other pieces now, at 4 in² instead of 1. Nine yards with short logs,
 * eight seeds, what the search makes small: 16.7 on the mean with 50,000 moves a slot before, 17.2
 * with half of them exchanged so, 15.5 warmer, 14.1 with stems drawn so, 14.6 with 12,000 moves.
 *
 * <p><b>What a change costs</b> is reckoned where it may differ: the joints of the pieces that
 * changed, and all of a round's only where its size is another. What was reckoned stands in a
 * {@link roundbook.bucking.Ledger}, which takes back what is not kept. The same pieces came in less
 * than half of the time.
 *
 * <p>Distances are whole steps (a quarter inch, say), diameters whole ticks. It knows nothing of
 * the rest of the project but what makes a choice good.
 */
package roundbook.bucking;
