package roundbook.balance;

import java.util.function.LongPredicate;
import roundbook.balance.Annealer.Schedule;
import roundbook.balance.Population.Member;

/**
 * Anneals from a dealt start a number of times, then betters these choices together: two are
 * crossed, or one is taken, warmed up and cooled down again.
 *
 * <p>Which sizes the rounds take is settled while it is hot, and a bad pick can't be mended when it
 * is cold. A warm spell finds the best logs for sizes near those that it began with, so what counts
 * is to begin with good sizes: those of two good choices, some rounds from one and some from the
 * other. Few moves on many places go into one long run with sizes that follow the logs, since a
 * spell is kept or dropped as a whole.
 */
final class Search implements Balancer {
  private static final Schedule START = new Schedule(30, 0.02);
  private static final Schedule ONLY = new Schedule(2, 0.004);
  private static final Schedule SPELL = new Schedule(0.35, 0.01);

  /** Moves a place for the usual effort, and how many moves are enough for a small task. */
  private static final long MOVES_A_PLACE = 200_000;

  private static final long LEAST_MOVES_A_PLACE = 10_000;
  private static final long ENOUGH = 8_000_000;

  /** Moves a place of one start and of one warm spell, which are many enough and not too many. */
  private static final long START_MOVES = 3_000;

  private static final long SPELL_MOVES = 1_000;
  private static final int MOST_STARTS = 12;

  /** Places that are too many for spells, which are kept or dropped as a whole. */
  private static final int MANY = 100;

  /** Moves a place that are too few for sizes held loosely. */
  private static final long FEW_MOVES = 20_000;

  /** Of ten spells, how many begin with two choices crossed. */
  private static final int CROSSED = 8;

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
    private final Dice dice;
    private final Annealer annealer;
    private final Population population;
    private final int places;
    private final long moves;
    private final long starts;
    private long done;

    Run(Model model, Effort effort) {
      this.model = model;
      this.effort = effort;
      dice = new Dice(effort.seed());
      population = new Population(model, dice);
      places = Math.max(1, model.slots.count);
      moves = effort.moves() == 0 ? usualMoves(places) : effort.moves();
      long room = moves * 3 / 10 / (START_MOVES * places);
      starts = places > MANY ? 1 : Math.min(MOST_STARTS, room);
      boolean strict = model.exact || moves < FEW_MOVES * places;
      annealer = strict ? new Anneal(model, dice) : new LooseAnneal(model, dice);
    }

    int[] best() {
      int[] dealt = SortAndDeal.deal(model);
      if (starts < 2) {
        return anneal(dealt, ONLY, moves).variants();
      }
      for (int i = 0; i < starts; i++) {
        population.add(anneal(dealt, START, START_MOVES * places));
      }
      while (done < moves && !effort.stop().getAsBoolean()) {
        spell();
      }
      return population.best().variants();
    }

    private void spell() {
      long count = Math.min(SPELL_MOVES * places, moves - done);
      if (dice.below(10) < CROSSED) {
        population.offer(anneal(population.cross(), SPELL, count));
      } else {
        Member from = population.any();
        population.offer(anneal(from.variants(), SPELL, count), from);
      }
    }

    private Member anneal(int[] from, Schedule schedule, long count) {
      annealer.from(from);
      annealer.run(schedule, count, goOn());
      done += count;
      return new Member(annealer.best(), annealer.bestTotal());
    }

    private LongPredicate goOn() {
      return since -> {
        effort.progress().accept((double) (done + since) / moves);
        return !effort.stop().getAsBoolean();
      };
    }
  }
}
