package roundbook.rounds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import roundbook.balance.Effort;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.rounds.Shortage.Missing;
import roundbook.rounds.Shortage.Proof;
import roundbook.stack.EndFit;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * The smallest order that makes a job whole, with diameters that suit its logs, proved by planning.
 *
 * <p>How many logs of which length are missing is what a greatest matching of logs and places
 * leaves empty, the longest places filled first: no order of fewer logs can do. Where the rules
 * refuse thin tips a matching does not tell; then a round's worth is ordered for each round that is
 * missing, and lessened log by log for as long as the plan stays whole. An order that brings not
 * one round more when it is planned with, or as many with a log fewer, is never given: then none
 * is.
 */
public final class Reorder {
  private static final long MOVES_A_PLACE = 25_000;
  private static final long MOVES_MOST = 4_000_000;

  private final Chooser chooser;
  private final PairedJob paired;
  private final Job job;
  private final Effort effort;
  private final int goal;
  private final OrderedLogs ordered;

  private Reorder(Chooser chooser, PairedJob asked, int goal, Effort effort) {
    BigDecimal rounds = BigDecimal.valueOf(goal);
    this.chooser = chooser;
    this.job = asked.job().with(asked.job().rules().with(Setting.ROUNDS, rounds, Origin.OPTION));
    this.paired = new PairedJob(job, asked.pairs());
    this.goal = goal;
    this.ordered = new OrderedLogs(job);
    long places = (long) goal * job.building().walls().size();
    long moves = Math.min(MOVES_MOST, MOVES_A_PLACE * places);
    this.effort = effort.moves() == 0 ? effort.withMoves(moves) : effort;
  }

  /**
   * Returns a choice whose shortage, if it has one, lists the smallest order and its proof.
   *
   * @param chooser what plans again
   * @param job the job
   * @param choice the choice made of the logs there are
   * @param effort how hard to look
   */
  public static Choice proved(Chooser chooser, Job job, Choice choice, Effort effort) {
    return choice.with(
        choice
            .shortage()
            .map(
                found ->
                    new Reorder(chooser, PairedJob.of(job, choice.pairs()), found.wanted(), effort)
                        .order(found)));
  }

  /** Orders what a matching counted, else rounds' worths, and nothing where no order helps. */
  private Shortage order(Shortage found) {
    if (!found.missing().isEmpty()) {
      Shortage counted = proved(found, sized(found.missing()));
      if (counted.isProved() && counted.proof().orElseThrow().rounds() == goal) {
        return counted;
      }
    }
    List<Missing> enough = enough(goal - found.built());
    Shortage lessened = proved(found, lessened(enough, rounds(enough)));
    return lessened.isProved() ? lessened : new Shortage(goal, found.built(), List.of());
  }

  private Shortage proved(Shortage found, List<Missing> logs) {
    List<Missing> order = endsKept(logs);
    return new Shortage(goal, found.built(), order, proof(order));
  }

  private List<Missing> sized(List<Missing> counted) {
    return new OrderSizes(paired, goal).sized(counted, effort);
  }

  /** Returns logs for the rounds that are missing, and for up to two more until that is enough. */
  private List<Missing> enough(int rounds) {
    List<Missing> order = sized(roundsWorth(rounds));
    for (int more = 1; more <= 2 && rounds(order) < goal; more++) {
      order = sized(roundsWorth(rounds + more));
    }
    return order;
  }

  /** Returns one log a wall for each of so many rounds. */
  private List<Missing> roundsWorth(int rounds) {
    Fit fit = new Fit(job);
    return job.building().walls().stream()
        .map(wall -> new Missing(rounds, fit.least(wall), wall.name(), Length.ZERO, Length.ZERO))
        .toList();
  }

  /** Leaves out log by log what so many rounds stand without. */
  private List<Missing> lessened(List<Missing> order, int reached) {
    List<Missing> least = order;
    int line = 0;
    while (line < least.size()) {
      List<Missing> fewer = fewer(least, line);
      if (rounds(fewer) >= reached) {
        least = fewer;
      } else {
        line++;
      }
    }
    return least;
  }

  /** Narrows all bands to their middles where the job is not whole with one of their ends. */
  private List<Missing> endsKept(List<Missing> order) {
    boolean whole =
        rounds(order, Missing::midFrom) == goal && rounds(order, Missing::midTo) == goal;
    return whole
        ? order
        : order.stream().map(line -> line.withBand(line.middle(), line.middle())).toList();
  }

  private static List<Missing> fewer(List<Missing> order, int line) {
    List<Missing> fewer = new ArrayList<>(order);
    Missing one = fewer.remove(line);
    if (one.count() > 1) {
      fewer.add(line, one.withCount(one.count() - 1));
    }
    return fewer;
  }

  private Optional<Proof> proof(List<Missing> order) {
    Choice middle = chooser.choose(with(order, Missing::middle), effort);
    if (middle.courses().isEmpty()) {
      return Optional.empty();
    }
    int fewer = 0;
    for (int line = 0; line < order.size(); line++) {
      fewer = Math.max(fewer, rounds(fewer(order, line)));
    }
    Length gap = job.rules().gap();
    List<Joint> joints =
        Stack.of(job.rules(), job.building(), middle.courses(), job.built()).joints();
    return Optional.of(
        new Proof(
            middle.courses().size(),
            fewer,
            joints.stream().map(Joint::least).reduce(Length::least).orElse(gap),
            joints.stream().map(Joint::most).reduce(Length::most).orElse(gap)));
  }

  private PairedJob with(List<Missing> order, Function<Missing, Length> mid) {
    return paired.withLogs(ordered.with(order, mid).logs());
  }

  private int rounds(List<Missing> order) {
    return rounds(order, Missing::middle);
  }

  /**
   * Returns how many rounds stand with an order; where a log is missing, no search is needed unless
   * ends are refused, of which a matching knows nothing.
   */
  private int rounds(List<Missing> order, Function<Missing, Length> mid) {
    PairedJob with = with(order, mid);
    Places places = new Places(with, goal);
    if (places.fillable() || new EndFit(job.rules(), job.building()).refuses()) {
      return chooser.choose(with, effort).courses().size();
    }
    while (places.rounds() > 0 && !places.fillable()) {
      places = places.withRounds(places.rounds() - 1);
    }
    return places.rounds();
  }
}
