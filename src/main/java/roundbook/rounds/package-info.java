/**
 * Which log goes where and which way round, and an independent check of every such plan.
 *
 * <p><b>Rounds by height.</b> A plan's height is {@code b_n + D_n / 2}, the last second-laid centre
 * line and half its round's size, as for "to hit the height use gap". The first number of rounds is
 * a guess; the plan made, its own height is taken, and where it misses by more than a third of a
 * course another number is planned too and the nearer kept (fewer rounds on a tie). Where logs run
 * out, the rounds still missing are counted from the height of what stands.
 *
 * <p><b>One whole search a plan.</b> Rounds by height, header logs and short logs beside openings
 * are found in steps, each of which plans the job: ordinary jobs took 2 to 13 searches. What
 * decides a step, where openings lie and how high the wall gets, shows in a search of a twelfth of
 * the moves, whose score is a tenth above that of the whole one. So {@code StepPlans} looks at each
 * step with few moves, searches in full for the one that the way ends at, and goes the way again
 * with that, until it ends where it has searched; steps are remembered. Where rounds would be given
 * up for a thin tip, a step is searched for in full first. A re-plan searches for holes only, so
 * moves are counted by the places that are not settled. Weighed and dropped: keeping the search's
 * population from step to step, for a step pins pairs and shuts places out, and the whole search
 * has to begin anew anyway lest all seeds of it agree on one poor choice. Pairs of short logs are
 * remembered by the places that they were searched for, which most steps of a way share.
 *
 * <p><b>The score looks where the pages look</b>: at both inside faces and the middle. Until now it
 * took the trimmed ends, a corner further out. Over the three samples and 60 measured logs, with
 * four seeds, what printed gaps are off fell by 1.6 percent on average (rms; best 5.6 less, worst 3
 * more); the worst gap stayed, but for one sample with two seeds, where it is 1.5 mm further off.
 *
 * <p><b>An end graded stop weighs half a square inch</b> where the rules only warn of it. The
 * engine is asked as ever; only where its choice has such ends it is asked again with that price,
 * which is no part of the score, and the better of both by score and price is taken. So jobs
 * without stops are searched once and as before. Where few moves on the way showed such ends, the
 * whole search of that step has the price at once and is the only one. The price at once for every
 * step was tried and dropped: nine yards with a height, six seeds, scored 1.1 percent worse, with
 * logs kept for headers alike. On eight yards of 44 logs that taper .14 to .23 in a foot, eight
 * rounds, ten stops of 512 ends became none, while what gaps are off went from .0911 to .0902 in
 * (rms) and the worst of a yard from .250 to .239 in on average: the second search found better
 * plans besides. Only marks that are cut are graded, but the price, like the refusal, takes every
 * round for one with both: a log's places are not known to the way it is cut.
 *
 * <p><b>How near the best</b> a choice is, {@code LeastScore} has the engine reckon for the same
 * number of rounds and the same pairs of short logs, every other log free to lie anywhere it may. A
 * better choice that the engine comes upon is taken if it keeps what is no part of the score: ends
 * not graded stop, headers over openings, pairs beside them, the height; one that puts the worst
 * gap first is left as it is, and so is a re-plan, which is told the bound alone: it moves a log
 * only where that pays. What a bound is in wood {@code Nearness} tells: gaps, faults and waste add
 * up to the score, so of a choice whose faults and waste weigh no more only the gaps can be better.
 *
 * <p><b>The order is minimal, and proved.</b> A greatest matching of logs and places, the longest
 * places first, leaves empty what no fewer logs could fill. The missing logs' diameters are found
 * by the search itself: each may take any of a row of diameters as if that were a way to cut it.
 * They are banded no wider than a round may spread. Then the job is planned again with logs from
 * the thin end, the middle and the thick end of all bands, and matched with one log fewer on each
 * line; the result stands in {@code Shortage.Proof}. Ordered logs are just long enough and taper as
 * the job's logs commonly do. Where thin tips are refused a matching tells too little, so a round's
 * worth a missing round is lessened log by log.
 *
 * <p><b>Logs kept for sills, plates and headers</b> lie there and not unused: places of the first
 * and last round and over openings are reserved for them while every place can still be filled.
 * Which places lie over openings follows from the heights, so the plan is made without and then
 * again with them until they stay; where that would cost a round, header logs may lie anywhere and
 * the plan says which do.
 *
 * <p><b>The verifier shares no code with the planner</b>: it works in binary inches from the
 * stations of each log. It runs on every plan before anything is written; a fault ends the run with
 * exit 1. It counts what it checks, by subject, where it is checked, so that no page has to claim a
 * number.
 *
 * <p><b>Two short logs beside an opening are two pieces at one place</b>, chosen by the search that
 * cuts stems: a tallied log is a stem that gives one piece. {@code OpeningPieces} puts a job into
 * the words of that search, {@code ShortPairs} plans again with the pairs that it chose until they
 * are what the plan's heights want, as header logs are. All logs and all places are dealt together,
 * so that pairs and the logs over and under them suit each other, and the search itself decides
 * which places have two: one log there costs four square inches, a pair that leaves a gap outside
 * its limits or an end that is too thin ten. What it deals to other places is let go: the engine
 * for whole logs then deals those anew, to which a place with two is one log that lies nowhere else
 * ({@code PairedJob}). It could not hold pairs itself, for the gaps beside the opening, which spoil
 * most pairs, lie between the three stations that it looks at. A search of its own for pairs stood
 * here before, which exchanged short logs while all others stayed. On forty yards with one to three
 * openings (walls of 20 by 14 ft, eight rounds or a height; 300,000 moves, made up by seed) it laid
 * 242 pairs in 322 rounds, gaps 0.122 in off (rms), scores 90.7 in all; this one 235 in 322, 0.099
 * and 49.3, no joint flagged in either, and on the nineteen compared 59 long logs lie idle for 51.
 * The pairs that it leaves out are those that saved no long log: a short wall's log lay beside the
 * opening, and a long one on the short wall. The code did not shrink by it: some 240 lines less
 * here and where stems are cut, some 430 more in the search, that knows now of openings, of ways
 * round and of which end loses the excess. Tried and dropped: pieces that slide along whole logs
 * (as many pairs, scores a tenth higher, for the plan cannot follow), exchanging whole rounds (5
 * percent more pairs, scores alike, for sixty lines), gaps and ends judged only after (the plan is
 * then made once for each pair that fails). The round counts the diameter at the middle of the
 * wall, as of every log; the mean of the two middles was weighed and dropped, for then the size and
 * the middle gap would come from different diameters. A short log is one too short for its wall;
 * that no round loses a log to a pair follows from dealing all rounds aimed at, the most first that
 * can be filled. Of pairs that the plan spoils all the same the worst is taken out, and pairs
 * chosen anew, before the next; one stays only where a round would be lost without it. What no
 * place took is tried by itself, and the page says how near the best two come. A short piece is no
 * reason to cut up a long log: an inch of offcut costs {@code Waste_price}, and a log that is long
 * enough for a whole wall, and so is a spare, a square inch more. Where one is cut all the same,
 * for a whole wall or for more than twice its piece, the plan says so. For rounds that are missing
 * the openings' places are foreseen with cylinders of the last size; what they turn out not to be
 * is taken out and planned again. A pair has one pair of boxes for marks as cut, beside its left
 * log. A re-plan keeps pairs and makes new ones only in places that had one, or while rounds are
 * missing. A log cut through by two openings gets none. Where the middles of two short logs are
 * typed, a page's least and largest gap are those of its three stations and of the planned logs
 * between, so a flag there can be missing or too many; a new plan gives the rest.
 */
package roundbook.rounds;
