package roundbook.balance;

import java.util.function.LongPredicate;
import roundbook.balance.Annealer.Schedule;

/**
 * Anneals from a dealt start a few times, then warms the best choice up and cools it down again and
 * again.
 *
 * <p>Which sizes the rounds take is settled while it is hot, and a bad pick can't be mended when it
 * is cold: so the first third of the moves goes into several starts. A warm spell loosens a part of
 * a choice and leaves the rest, so that each one finds something to mend. Few moves on many places
 * go into one long run with sizes that follow the logs, since a spell is kept or dropped as a
 * whole.
 */
final class Search implements Balancer {
  private static final Schedule START = new Schedule(10, 0.02);
  private static final Schedule ONLY = new Schedule(2, 0.004);
  private static final Schedule SPELL = new Schedule(0.5, 0.02);

  /** Moves a place for the usual effort, and how many moves are enough for a small task. */
  private static final long MOVES_A_PLACE = 100_000;

  private static final long LEAST_MOVES_A_PLACE = 10_000;
  private static final long ENOUGH = 10_000_000;

  /** Moves a place of one start and of one warm spell, which are many enough and not too many. */
  private static final long START_MOVES = 7_500;

  private static final long SPELL_MOVES = 1_750;
  private static final int MOST_STARTS = 4;

  @Override
  public BalanceResult solve(BalanceTask task, Effort effort) {
    Model model = new Model(Shortage.fillable(task));
    State state = new State(model);
    state.set(new Run(model, effort).best());
    return new BalanceResult(state, task);
  }

  /** Returns how many moves the usual effort is, which grows slower than a large task. */
  static long usualMoves(int places) {
    long most = Math.min(MOVES_A_PLACE * places, ENOUGH);
    return Math.max(most, LEAST_MOVES_A_PLACE * places);
  }

  /** One search, with the moves it has done. */
  private static final class Run {
    private final Model model;
    private final Effort effort;
    private final Annealer annealer;
    private final int places;
    private final long moves;
    private final long starts;
    private long done;
    private int[] best;
    private long bestTotal = Long.MAX_VALUE;

    Run(Model model, Effort effort) {
      this.model = model;
      this.effort = effort;
      Dice dice = new Dice(effort.seed());
      places = Math.max(1, model.slots.count);
      moves = effort.moves() == 0 ? usualMoves(places) : effort.moves();
      starts = Math.min(MOST_STARTS, moves * 3 / 10 / (START_MOVES * places));
      boolean strict = model.exact || starts < 2;
      annealer = strict ? new Anneal(model, dice) : new LooseAnneal(model, dice);
    }

    int[] best() {
      int[] dealt = SortAndDeal.deal(model);
      if (starts < 2) {
        anneal(dealt, ONLY, moves);
        return best;
      }
      for (int i = 0; i < starts; i++) {
        anneal(dealt, START, START_MOVES * places);
      }
      while (done < moves && !effort.stop().getAsBoolean()) {
        anneal(best, SPELL, Math.min(SPELL_MOVES * places, moves - done));
      }
      return best;
    }

    private void anneal(int[] from, Schedule schedule, long count) {
      annealer.from(from);
      annealer.run(schedule, count, goOn());
      done += count;
      if (annealer.bestTotal() <= bestTotal) {
        bestTotal = annealer.bestTotal();
        best = annealer.best();
      }
    }

    private LongPredicate goOn() {
      return since -> {
        effort.progress().accept((double) (done + since) / moves);
        return !effort.stop().getAsBoolean();
      };
    }
  }
}
