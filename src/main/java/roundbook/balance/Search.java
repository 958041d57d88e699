package roundbook.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongPredicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
 *
 * <p>Choices that are bettered together grow alike, good or bad. When they bring nothing better any
 * more, others begin anew beside them; where both end about equally good, that is trusted and the
 * search ends, else all go on together, and so on until the moves are spent.
 *
 * <p>Spells are done four at once, each from choices known before the four and with dice of its
 * own, so that the outcome does not hang on how many threads there are.
 */
final class Search implements Balancer {
  private static final Schedule START = new Schedule(30, 0.02);
  private static final Schedule ONLY = new Schedule(2, 0.004);
  private static final Schedule SPELL = new Schedule(0.35, 0.01);

  /** Moves a place for the usual effort, and how many moves are enough for a task of spells. */
  private static final long MOVES_A_PLACE = 600_000;

  private static final long ENOUGH = 24_000_000;

  /** The same for a task of one long run. */
  private static final long LONG_MOVES_A_PLACE = 10_000;

  private static final long LONG_ENOUGH = 16_000_000;

  /** Moves that a yard of any size has, which take about a minute. */
  private static final long MOST = 120_000_000;

  /** Moves a place, and in all, that choices have at least before others begin anew. */
  private static final long SPAN_A_PLACE = 200_000;

  private static final long SPAN = 6_000_000;

  /** Of these, the share during which they must differ in the sizes of their rounds. */
  private static final double SPREAD = 0.5;

  /** Of their moves, the share that went before the last find when they have settled. */
  private static final double FOUND_BY = 0.5;

  /** By what share of the score a choice must be better to count as a find. */
  private static final double FIND = 1 / 2000.0;

  /** By what share of the score choices that began apart may differ to agree. */
  private static final double AGREED = 0.01;

  /** Moves a place of one start and of one warm spell, which are many enough and not too many. */
  private static final long START_MOVES = 3_000;

  private static final long SPELL_MOVES = 500;
  private static final int MOST_STARTS = 12;

  /** Choices bettered at once, whatever the number of threads. */
  private static final int AT_ONCE = 4;

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

  /** Returns how many moves the usual effort is at most, which grows slower than a large task. */
  static long usualMoves(int places) {
    return places > MANY
        ? Math.min(Math.max(LONG_ENOUGH, LONG_MOVES_A_PLACE * places), MOST)
        : Math.min(MOVES_A_PLACE * places, ENOUGH);
  }

  /** One search, with the moves it has done. */
  private static final class Run {
    private final Model model;
    private final Effort effort;
    private final Dice dice;
    private final List<Annealer> annealers = new ArrayList<>();
    private final int places;
    private final long moves;
    private final long span;
    private final int starts;
    private long done;

    Run(Model model, Effort effort) {
      this.model = model;
      this.effort = effort;
      dice = new Dice(effort.seed());
      places = Math.max(1, model.freeSlots());
      moves = effort.moves() == 0 ? usualMoves(places) : effort.moves();
      span = Math.min(moves, Math.min(SPAN_A_PLACE * places, SPAN));
      long room = span * 3 / 10 / (START_MOVES * places);
      starts = places > MANY ? 1 : (int) Math.min(MOST_STARTS, room);
      boolean strict = model.exact || moves < FEW_MOVES * places;
      for (int i = 0; i < (starts < 2 ? 1 : AT_ONCE); i++) {
        Dice own = i == 0 ? dice : new Dice(dice.next());
        annealers.add(strict ? new Anneal(model, own) : new LooseAnneal(model, own));
      }
    }

    int[] best() {
      int[] dealt = SortAndDeal.deal(model);
      if (model.slots.count == 0) {
        return dealt;
      }
      if (starts < 2) {
        return anneal(0, dealt, ONLY, moves, this::goOnTelling).variants();
      }
      Population all = begun(dealt);
      settle(all);
      while (goOn() && done + starts * START_MOVES * places < moves) {
        Population anew = begun(dealt);
        settle(anew);
        boolean agreed = all.isNear(anew, AGREED);
        all.join(anew);
        if (agreed) {
          break;
        }
        settle(all);
      }
      return all.best().variants();
    }

    private Population begun(int[] dealt) {
      Population population = new Population(model, dice);
      for (int i = 0; i < starts; i += AT_ONCE) {
        int count = Math.min(AT_ONCE, starts - i);
        atOnce(count, () -> new AnnealStart(dealt, Optional.empty()), START, START_MOVES * places)
            .forEach(made -> population.add(made.member));
      }
      return population;
    }

    /** Betters choices together until that brings nothing more. */
    private void settle(Population population) {
      long from = done;
      long found = done;
      long least = population.best().total();
      while (goesOn() && (done < from + span || found - from > FOUND_BY * (done - from))) {
        population.spread(done < from + SPREAD * span);
        long count = Math.min(SPELL_MOVES * places, Math.max(1, (moves - done) / AT_ONCE));
        atOnce(AT_ONCE, () -> begun(population), SPELL, count)
            .forEach(made -> population.offer(made.member, made.from));
        long now = population.best().total();
        if (now < least - least * FIND) {
          least = now;
          found = done;
        }
      }
    }

    private boolean goesOn() {
      return done < moves && goOn();
    }

    private AnnealStart begun(Population population) {
      if (dice.below(10) < CROSSED) {
        return new AnnealStart(population.cross(), Optional.empty());
      }
      Member from = population.any();
      return new AnnealStart(from.variants(), Optional.of(from));
    }

    /** Anneals choices at once, on as many threads as there are. */
    private List<AnnealResult> atOnce(
        int count, Supplier<AnnealStart> begin, Schedule schedule, long each) {
      List<AnnealStart> all = Stream.generate(begin).limit(count).toList();
      IntStream turns = IntStream.range(0, count);
      List<AnnealResult> made =
          (effort.anyThreads() ? turns.parallel() : turns)
              .mapToObj(i -> made(i, all.get(i), schedule, each))
              .toList();
      done += count * each;
      tell(0);
      return made;
    }

    private AnnealResult made(int i, AnnealStart begun, Schedule schedule, long count) {
      return new AnnealResult(
          anneal(i, begun.variants, schedule, count, since -> goOn()), begun.from);
    }

    private Member anneal(int i, int[] from, Schedule schedule, long count, LongPredicate goOn) {
      Annealer annealer = annealers.get(i);
      annealer.from(from);
      annealer.run(schedule, count, goOn);
      return new Member(annealer.best(), annealer.bestTotal());
    }

    private boolean goOnTelling(long since) {
      tell(since);
      return goOn();
    }

    private boolean goOn() {
      return !effort.stop().getAsBoolean();
    }

    private void tell(long since) {
      effort.progress().accept((double) (done + since) / moves);
    }

    /** What an annealing begins with: a choice, and the one of the population that it is, if so. */
    private record AnnealStart(int[] variants, Optional<Member> from) {}

    /** What an annealing made, and what of the population it was made from, if from one. */
    private record AnnealResult(Member member, Optional<Member> from) {}
  }
}
