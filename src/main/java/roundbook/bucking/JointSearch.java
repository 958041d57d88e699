package roundbook.bucking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import roundbook.balance.Effort;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;

/**
 * Chooses cross-cuts and places together, by annealing.
 *
 * <p>Of a hundred moves 45 exchange the stems of two places, their pieces aligned at either end, 30
 * slide a piece by 1 to 24 units of the slide, a quarter of them four times as far, and 25 lay a
 * piece anywhere on any stem, half of them against a neighbour or the end of a free stretch; one in
 * 128 exchanges all pieces of two rounds, without which a stack may stay upside down. What was best
 * on the way is the answer, the best of three starts: one in twenty ends with a round too many of
 * one size. The same seed gives the same pieces on any machine.
 */
public final class JointSearch {
  private static final long MOVES_A_PLACE = 190_000;
  private static final int BLOCK = 1_024;
  private static final double HOT = 4;
  private static final double COLD = 0.004;
  private static final int STARTS = 3;
  private static final int NOISES = 4_096;
  private static final int SLIDES = 24;
  private static final int ROUND_EVERY = 128;

  private final BuckingTask task;
  private final JointState state;
  private final SplittableRandom dice;
  private final int slide;
  private final int[] open;
  private final double[] noise = new double[NOISES];
  private Cut[] best;
  private long bestTotal;

  private JointSearch(BuckingTask task, int slide, long seed) {
    this.task = task;
    this.state = new JointState(task);
    this.dice = new SplittableRandom(seed);
    this.slide = slide;
    this.open =
        IntStream.range(0, task.places())
            .filter(place -> task.settled().piece(place) == null)
            .toArray();
    for (int i = 0; i < NOISES; i++) {
      noise[i] = -StrictMath.log((i + 0.5) / NOISES);
    }
  }

  /**
   * Returns pieces for every place; empty where the stems do not hold them.
   *
   * @param task what is to be cut
   * @param slide steps of the unit that pieces are slid by (an inch, say)
   * @param effort how hard to look; zero moves: the usual number, by places
   */
  public static Optional<BuckingResult> solve(BuckingTask task, int slide, Effort effort) {
    Optional<List<Cut>> start = Counts.cuts(task);
    if (start.isEmpty()) {
      return Optional.empty();
    }
    JointSearch search = new JointSearch(task, slide, effort.seed());
    if (!search.deal(start.get())) {
      return Optional.empty();
    }
    search.run(effort);
    return Optional.of(BuckingResult.of(task, List.of(search.best)));
  }

  /**
   * Lays settled pieces, and the others by size, the thickest lowest; false where one finds none.
   */
  private boolean deal(List<Cut> cuts) {
    for (int place = 0; place < task.places(); place++) {
      Cut settled = task.settled().piece(place);
      if (settled != null) {
        state.put(place, settled.bole(), settled.from());
      }
    }
    List<Cut> left = new ArrayList<>(cuts);
    left.sort(
        Comparator.comparingInt(
            cut -> -task.boles().get(cut.bole()).atHalf(cut.from() + cut.to())));
    Optional<int[]> dealt = new Dealing(task, open, left).places();
    dealt.ifPresent(
        places -> {
          for (int i = 0; i < open.length; i++) {
            Cut cut = left.get(places[i]);
            state.put(open[i], cut.bole(), cut.from());
          }
          state.settle();
          note();
        });
    return dealt.isPresent();
  }

  private void note() {
    bestTotal = state.total();
    best = state.cuts();
  }

  private void run(Effort effort) {
    long all = effort.moves() > 0 ? effort.moves() : MOVES_A_PLACE * open.length;
    Cut[] dealt = best;
    for (int start = 0; start < STARTS && open.length > 0; start++) {
      double begun = (double) start / STARTS;
      for (int place : open) {
        state.put(place, dealt[place].bole(), dealt[place].from());
      }
      state.settle();
      if (!cool(all / STARTS, begun, effort)) {
        return;
      }
    }
  }

  /** Makes so many moves, cooling; returns whether it was let go on to the end. */
  private boolean cool(long moves, double begun, Effort effort) {
    for (long done = 0; done < moves; done += BLOCK) {
      double share = (double) done / moves;
      double heat = state.grains.grains(HOT * StrictMath.pow(COLD / HOT, share));
      for (int i = 0; i < BLOCK; i++) {
        if (i % ROUND_EVERY == 0) {
          rounds(heat);
        } else {
          step(heat);
        }
      }
      if (effort.stop().getAsBoolean()) {
        return false;
      }
      effort.progress().accept(begun + share / STARTS);
    }
    return true;
  }

  private void step(double heat) {
    int kind = dice.nextInt(100);
    int place = open[dice.nextInt(open.length)];
    if (kind < 45) {
      exchange(place, open[dice.nextInt(open.length)], heat);
    } else if (kind < 75) {
      int far = (1 + dice.nextInt(SLIDES)) * (dice.nextInt(4) == 0 ? 4 : 1) * slide;
      int start = state.from[place] + (dice.nextBoolean() ? far : -far);
      lay(place, state.bole[place], start, heat);
    } else {
      free(place, heat);
    }
  }

  /** Exchanges all pieces of two rounds. */
  private void rounds(double heat) {
    int one = dice.nextInt(task.rounds());
    int other = dice.nextInt(task.rounds());
    if (one != other && mayTurn(one, other)) {
      long before = state.total();
      state.turn(one, other);
      if (!accepted(before, heat)) {
        state.turn(one, other);
      }
    }
  }

  private boolean mayTurn(int one, int other) {
    boolean may = task.settled().size(one) == 0 && task.settled().size(other) == 0;
    for (int side = 0; side < state.sides && may; side++) {
      int low = one * state.sides + side;
      int high = other * state.sides + side;
      may =
          task.settled().piece(low) == null
              && task.settled().piece(high) == null
              && may(state.bole[high], low)
              && may(state.bole[low], high);
    }
    return may;
  }

  private void exchange(int one, int other, double heat) {
    int stem = state.bole[one];
    int second = state.bole[other];
    if (one == other || !may(second, one) || !may(stem, other)) {
      return;
    }
    int more = raw(one) - raw(other);
    int begin = state.from[one];
    int start = state.from[other];
    int there = dice.nextBoolean() ? start : start - more;
    int here = dice.nextBoolean() ? begin : begin + more;
    if (stem == second && !apart(there, raw(one), here, raw(other))
        || !state.isFree(second, there, raw(one), one, other)
        || !state.isFree(stem, here, raw(other), one, other)) {
      return;
    }
    long before = state.total();
    state.put(one, second, there);
    state.put(other, stem, here);
    state.settle(one / state.sides, other / state.sides, stem, second);
    if (!accepted(before, heat)) {
      state.put(one, stem, begin);
      state.put(other, second, start);
      state.settle(one / state.sides, other / state.sides, stem, second);
    }
  }

  private boolean apart(int from, int raw, int other, int otherRaw) {
    return from + raw + task.kerf() <= other || other + otherRaw + task.kerf() <= from;
  }

  private void free(int place, double heat) {
    int stem = dice.nextInt(task.boles().size());
    Bole bole = task.boles().get(stem);
    if (bole.free().isEmpty() || !may(stem, place)) {
      return;
    }
    Stretch stretch = bole.free().get(dice.nextInt(bole.free().size()));
    int room = stretch.length() - raw(place);
    if (room >= 0) {
      int start =
          dice.nextBoolean()
              ? snapped(stem, stretch, place)
              : stretch.from() + dice.nextInt(room + 1);
      lay(place, stem, start, heat);
    }
  }

  /** Returns where a piece begins that lies against a neighbour or an end of the stretch. */
  private int snapped(int stem, Stretch stretch, int place) {
    int count = state.count[stem];
    int against = dice.nextInt(count + 1);
    boolean above = dice.nextBoolean();
    if (against == count) {
      return above ? stretch.from() : stretch.to() - raw(place);
    }
    int neighbour = state.at[stem][against];
    int from = state.from[neighbour];
    return above ? from + raw(neighbour) + task.kerf() : from - task.kerf() - raw(place);
  }

  private void lay(int place, int stem, int start, double heat) {
    if (!state.isFree(stem, start, raw(place), place, place)) {
      return;
    }
    int old = state.bole[place];
    int begin = state.from[place];
    int round = place / state.sides;
    long before = state.total();
    state.put(place, stem, start);
    state.settle(round, round, old, stem);
    if (!accepted(before, heat)) {
      state.put(place, old, begin);
      state.settle(round, round, old, stem);
    }
  }

  private boolean accepted(long before, double heat) {
    long now = state.total();
    boolean taken = now - before <= heat * noise[dice.nextInt(NOISES)];
    if (taken && now < bestTotal) {
      note();
    }
    return taken;
  }

  private boolean may(int stem, int place) {
    return task.settled().allowed().test(stem, place);
  }

  private int raw(int place) {
    return task.side(place).raw();
  }
}
