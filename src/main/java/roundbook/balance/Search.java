package roundbook.balance;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;
import roundbook.balance.Annealer.Schedule;
import roundbook.balance.Population.Member;

/**
 * Anneals from a dealt start a number of times, then betters these choices together: two are
 * crossed, or one is taken, warmed up and cooled down again.
 *
 * <p>Which sizes the rounds take is settled while it is hot, and a bad pick can't be mended when it
 * is cold. A warm spell finds the best logs for sizes near those that it began with, so what counts
 * is to begin with good sizes: those of two good choices, some rounds from one and some from the
 * other; how warm they are is a matter of chance, for what suits one choice freezes another. Few
 * moves, or any on many places, go into one long run with sizes that follow the logs, since a spell
 * is kept or dropped as a whole.
 *
 * <p>Choices that are bettered together grow alike, good or bad. When they bring nothing better any
 * more, others begin anew beside them; where both end about equally good, that is trusted and the
 * search ends, else all go on together, and so on until the moves are spent.
 *
 * <p>But for few moves the first choices begin as four small sets, bettered in turn and apart,
 * since what is good in one set soon fills it. Where all four agree and find nothing better the
 * task is an easy one and the search ends; else they join two by two, then all.
 *
 * <p>Spells are done four at once and a few in a row, each from choices known before all of them
 * and with dice of its own, so that the outcome does not hang on how many threads there are.
 */
final class Search implements Balancer {
  private static final Schedule MELT = new Schedule(30, 1);
  private static final Schedule START = new Schedule(3, 0.005);
  private static final Schedule STRICT_START = new Schedule(30, 0.02);
  private static final Schedule ONLY = new Schedule(2, 0.004);
  private static final Schedule MANY_ONLY = new Schedule(1, 0.003);

  /** The least of the hottest beginnings of a spell, in unit²: below it sizes hardly change. */
  private static final double HOT = 0.35;

  /** The hottest and the least warm beginning of a spell, and its end, in scores of a place. */
  private static final double HOTTEST = 3;

  private static final double WARM = 0.8;
  private static final double COLD = 0.05;

  /** Moves a place for the usual effort, and how many moves are enough for a task of spells. */
  private static final long MOVES_A_PLACE = 350_000;

  private static final long ENOUGH = 16_000_000;

  /** The same for a task of one long run. */
  private static final long LONG_MOVES_A_PLACE = 10_000;

  private static final long LONG_ENOUGH = 16_000_000;

  /** Moves that a yard of any size has, which take about half a minute. */
  private static final long MOST = 70_000_000;

  /** Moves a place, and in all, that choices have at least before others begin anew. */
  private static final long SPAN_A_PLACE = 100_000;

  private static final long SPAN = 3_300_000;

  /** Of these, the share during which they must differ in the sizes of their rounds. */
  private static final double SPREAD = 0.5;

  /** Of their moves, the share that went before the last find when they have settled. */
  private static final double FOUND_BY = 0.5;

  /** By what share of the score a choice must be better to count as a find. */
  private static final double FIND = 1 / 2000.0;

  /** By what share of the score choices that began apart may differ to agree. */
  private static final double AGREED = 0.002;

  /** Moves a place of one start and of one warm spell, which are many enough and not too many. */
  private static final long START_MOVES = 1_500;

  private static final long STRICT_START_MOVES = 3_000;
  private static final long MELT_MOVES = 1_000;
  private static final long SPELL_MOVES = 250;
  private static final int MOST_STARTS = 24;

  /** Choices that are kept of those begun. */
  private static final int KEPT = 12;

  /** Spells of each of these in a row, at the least, between two looks at what came of them. */
  private static final int FEWEST_SPELLS = 2;

  /** Choices annealed at once, whatever the number of threads. */
  private static final int AT_ONCE = 4;

  /** Sets of choices that begin apart where moves suffice, and starts of each. */
  private static final int SETS = 4;

  private static final int SET_STARTS = 6;

  /** Moves a place that each set has at least, and at most, for agreeing before they join. */
  private static final long SOON_A_PLACE = 4_000;

  private static final long LATE_A_PLACE = 12_000;

  /** Places that are too many for spells, which are kept or dropped as a whole. */
  private static final int MANY = 100;

  /** Cuts of all logs for one length of wall that are too many for tables of what joints cost. */
  private static final int MANY_VARIANTS = 1_000;

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
    private final long startMoves;
    private long done;

    Run(Model model, Effort effort) {
      this.model = model;
      this.effort = effort;
      dice = new Dice(effort.seed());
      places = Math.max(1, model.freeSlots());
      moves = effort.moves() == 0 ? usualMoves(places) : effort.moves();
      span = Math.min(moves, Math.min(SPAN_A_PLACE * places, SPAN));
      startMoves = (model.exact ? STRICT_START_MOVES : START_MOVES) * places;
      long room = span * 3 / 10 / startMoves;
      starts = places > MANY ? 1 : (int) Math.min(MOST_STARTS, room);
      boolean strict = model.exact || starts < 2 || model.mostVariants() > MANY_VARIANTS;
      for (int i = 0; i < (starts < 2 ? 1 : AT_ONCE); i++) {
        Dice own = i == 0 ? dice : new Dice(dice.next());
        annealers.add(strict ? new Anneal(model, own, places > MANY) : new LooseAnneal(model, own));
      }
    }

    int[] best() {
      int[] dealt = SortAndDeal.deal(model);
      if (model.slots.count == 0) {
        return dealt;
      }
      if (starts < 2) {
        Schedule heats = places > MANY ? MANY_ONLY : ONLY;
        return anneal(0, dealt, heats, moves, this::goOnTelling).variants();
      }
      List<Population> apart =
          span < moves ? begun(dealt, SETS, SET_STARTS) : begun(dealt, 1, starts);
      while (apart.size() > 1) {
        boolean agreed = agree(apart);
        apart = joined(apart, agreed ? apart.size() : 2);
        if (agreed) {
          return apart.get(0).best().variants();
        }
      }
      Population all = apart.get(0);
      settle(all);
      while (goOn() && done + MELT_MOVES * places + starts * startMoves < moves) {
        Population anew = begun(dealt, 1, starts).get(0);
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

    /**
     * Returns sets of choices that began anew, from the dealt one or from it molten down, which is
     * better where dealing by size leaves logs far from where they should lie.
     */
    private List<Population> begun(int[] dealt, int sets, int each) {
      int[] molten = model.exact ? dealt : molten(dealt);
      int tried = Math.min(each, Math.max(2, AT_ONCE / sets));
      List<Member> first = began(sets * tried, i -> i % 2 == 0 ? dealt : molten);
      Member best = Collections.min(first, Comparator.comparingLong(Member::total));
      int[] better = first.indexOf(best) % 2 == 0 ? dealt : molten;
      List<Member> rest = began(sets * (each - tried), i -> better);
      return IntStream.range(0, sets)
          .mapToObj(
              i -> {
                Population population = new Population(model, dice);
                first.subList(i * tried, (i + 1) * tried).forEach(population::add);
                rest.subList(i * (each - tried), (i + 1) * (each - tried)).forEach(population::add);
                population.keep(KEPT);
                return population;
              })
          .toList();
    }

    private int[] molten(int... dealt) {
      done += MELT_MOVES * places;
      return anneal(0, dealt, MELT, MELT_MOVES * places, since -> goOn()).variants();
    }

    private List<Member> began(int count, IntFunction<int[]> from) {
      Schedule heats = model.exact ? STRICT_START : START;
      List<AnnealStart> begun =
          IntStream.range(0, count)
              .mapToObj(i -> new AnnealStart(from.apply(i), heats, Optional.empty()))
              .toList();
      return annealed(begun, startMoves).stream().map(made -> made.member).toList();
    }

    /** Betters choices together until that brings nothing more. */
    private void settle(Population population) {
      long from = done;
      long found = done;
      long least = population.best().total();
      while (goesOn() && (done < from + span || found - from > FOUND_BY * (done - from))) {
        long now = bettered(List.of(population), done < from + SPREAD * span);
        if (now < least - least * FIND) {
          least = now;
          found = done;
        }
      }
    }

    /** Betters sets of choices in turn; returns whether all soon agree and find no more. */
    private boolean agree(List<Population> apart) {
      long from = done;
      long found = done;
      long least = Long.MAX_VALUE;
      long each = (long) places * apart.size();
      while (goesOn() && done < from + LATE_A_PLACE * each) {
        long now = bettered(apart, true);
        if (now < least - least * FIND) {
          least = now;
          found = done;
        }
        boolean settled = found - from <= FOUND_BY * (done - from);
        if (settled && done >= from + SOON_A_PLACE * each && agreed(apart)) {
          return true;
        }
      }
      return false;
    }

    private static boolean agreed(List<Population> apart) {
      return apart.stream().allMatch(one -> one.isNear(apart.get(0), AGREED));
    }

    /** Returns sets joined, so many at a time. */
    private static List<Population> joined(List<Population> apart, int each) {
      for (int i = 0; i < apart.size(); i++) {
        if (i % each > 0) {
          apart.get(i - i % each).join(apart.get(i));
        }
      }
      return IntStream.range(0, apart.size())
          .filter(i -> i % each == 0)
          .mapToObj(apart::get)
          .toList();
    }

    /** Anneals choices of sets, all of other sizes or not; returns the sum of least scores then. */
    private long bettered(List<Population> sets, boolean apart) {
      int each = AT_ONCE * Math.max(1, FEWEST_SPELLS / sets.size());
      List<AnnealStart> begun = new ArrayList<>();
      for (Population set : sets) {
        set.spread(apart);
        IntStream.range(0, each).forEach(i -> begun.add(begun(set)));
      }
      long left = Math.max(1, (moves - done) / begun.size());
      List<AnnealResult> made = annealed(begun, Math.min(SPELL_MOVES * places, left));
      for (int i = 0; i < made.size(); i++) {
        sets.get(i / each).offer(made.get(i).member, made.get(i).from);
      }
      return sets.stream().mapToLong(set -> set.best().total()).sum();
    }

    private boolean goesOn() {
      return done < moves && goOn();
    }

    private AnnealStart begun(Population population) {
      Schedule heats = spell(population.best());
      if (dice.below(10) < CROSSED) {
        return new AnnealStart(population.cross(), heats, Optional.empty());
      }
      Member from = population.any();
      return new AnnealStart(from.variants(), heats, Optional.of(from));
    }

    /** Returns temperatures of a spell, more or less hot by chance: what suits a choice differs. */
    private Schedule spell(Member best) {
      double each = model.area(best.total()) / places;
      double share = dice.below(1 << 10) / (double) (1 << 10);
      Schedule warmth = new Schedule(WARM * each, Math.max(HOT, HOTTEST * each));
      return new Schedule(warmth.at(share), COLD * each);
    }

    /** Anneals choices, some at once on as many threads as there are. */
    private List<AnnealResult> annealed(List<AnnealStart> begun, long each) {
      AnnealResult[] made = new AnnealResult[begun.size()];
      IntStream lanes = IntStream.range(0, AT_ONCE);
      (effort.anyThreads() ? lanes.parallel() : lanes)
          .forEach(
              lane -> {
                for (int i = lane; i < made.length; i += AT_ONCE) {
                  made[i] = made(lane, begun.get(i), each);
                }
              });
      done += made.length * each;
      tell(0);
      return List.of(made);
    }

    private AnnealResult made(int i, AnnealStart begun, long count) {
      return new AnnealResult(
          anneal(i, begun.variants, begun.heats, count, since -> goOn()), begun.from);
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

    /**
     * What an annealing begins with: a choice, temperatures, and the one of the population that the
     * choice is, if so.
     */
    private record AnnealStart(int[] variants, Schedule heats, Optional<Member> from) {}

    /** What an annealing made, and what of the population it was made from, if from one. */
    private record AnnealResult(Member member, Optional<Member> from) {}
  }
}
