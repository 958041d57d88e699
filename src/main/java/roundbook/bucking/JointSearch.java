package roundbook.bucking;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import roundbook.balance.Effort;
import roundbook.bucking.Bole.Stretch;
import roundbook.bucking.BuckingTask.Cut;
import roundbook.bucking.Parting.PartedPlace;

/**
 * Chooses cross-cuts and places together, by annealing.
 *
 * <p>Of a hundred moves 45 exchange the stems of two places, their pieces aligned at either end or
 * lying on their stems the way that those before did, 30 slide a piece by 1 to 24 units of the
 * slide, a quarter of them four times as far, and 25 lay a piece anywhere on any stem that may
 * serve, half of them against a neighbour or the end of a free stretch. Where an opening cuts a
 * place through, two pieces are laid in place of one, one in place of two, and each turned end for
 * end. What was best on the way is the answer, the best of three starts: one in twenty ends with a
 * round too many of one size. The same seed gives the same pieces on any machine.
 */
public final class JointSearch {
  private static final long MOVES_A_PLACE = 190_000;
  private static final int BLOCK = 1_024;
  private static final double HOT = 4;
  private static final double COLD = 0.004;
  private static final int STARTS = 3;
  private static final int NOISES = 4_096;
  private static final int SLIDES = 24;
  private static final int DRAWS = 16;

  /** Of a hundred pieces that may lie in a few ways, how many are exchanged without a turn. */
  private static final int SAME_WAY = 75;

  private final BuckingTask task;
  private final JointState state;
  private final SplittableRandom dice;
  private final int slide;
  private final int[] open;
  private final double[] noise = new double[NOISES];
  private JointState.Laid best;
  private long bestTotal;

  private JointSearch(BuckingTask task, int slide, long seed) {
    this.task = task;
    this.state = new JointState(task);
    this.dice = new SplittableRandom(seed);
    this.slide = slide;
    this.open =
        IntStream.range(0, state.bole.length)
            .filter(slot -> task.settled().piece(state.placeOf(slot)) == null)
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
    JointSearch search = new JointSearch(task, slide, effort.seed());
    if (!new FirstDeal(task, search.state).lay()) {
      return Optional.empty();
    }
    search.note();
    search.run(effort);
    search.state.lay(search.best);
    return Optional.of(BuckingResult.of(search.state));
  }

  private void note() {
    bestTotal = state.total();
    best = state.laid();
  }

  private void run(Effort effort) {
    long all = effort.moves() > 0 ? effort.moves() : MOVES_A_PLACE * open.length;
    JointState.Laid dealt = best;
    for (int start = 0; start < STARTS && open.length > 0; start++) {
      double begun = (double) start / STARTS;
      state.lay(dealt);
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
        step(heat);
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
    int slot = open[dice.nextInt(open.length)];
    if (state.bole[slot] < 0) {
      part(state.placeOf(slot), heat);
    } else if (kind < 45) {
      exchange(slot, open[dice.nextInt(open.length)], heat);
    } else if (kind < 75) {
      slide(slot, heat);
    } else if (state.isParted(state.placeOf(slot)) && dice.nextInt(4) == 0) {
      join(state.placeOf(slot), heat);
    } else {
      int[] stems = state.serving[state.demand(slot)];
      free(slot, stems[dice.nextInt(stems.length)], heat);
    }
  }

  /** Slides a piece along its stem, or turns one beside an opening end for end. */
  private void slide(int slot, double heat) {
    int stem = state.bole[slot];
    if (state.isParted(state.placeOf(slot)) && dice.nextBoolean()) {
      state.change(slot, stem, state.from[slot], !state.turned[slot]);
      decide(heat);
    } else if (task.boles().get(stem).ways() > 0) {
      free(slot, stem, heat);
    } else {
      int far = (1 + dice.nextInt(SLIDES)) * (dice.nextInt(4) == 0 ? 4 : 1) * slide;
      lay(slot, stem, state.from[slot] + (dice.nextBoolean() ? far : -far), heat);
    }
  }

  private void exchange(int one, int other, double heat) {
    int stem = state.bole[one];
    int second = state.bole[other];
    if (one == other || second < 0 || !state.may(second, one) || !state.may(stem, other)) {
      return;
    }
    int there = begin(other, state.raw(one));
    int here = begin(one, state.raw(other));
    if (stem == second && !apart(there, state.raw(one), here, state.raw(other))
        || !state.isFree(second, there, state.raw(one), one, other)
        || !state.isFree(stem, here, state.raw(other), one, other)) {
      return;
    }
    state.change(one, second, there, state.turned[one]);
    state.change(other, stem, here, state.turned[other]);
    decide(heat);
  }

  /** Returns where a piece of another length begins in place of the one in a slot. */
  private int begin(int slot, int raw) {
    int from = state.from[slot];
    int was = state.raw(slot);
    Bole bole = task.boles().get(state.bole[slot]);
    if (bole.ways() == 0) {
      return dice.nextBoolean() ? from : from + was - raw;
    }
    return dice.nextInt(100) < SAME_WAY
        ? bole.again(from, was, raw)
        : bole.begin(bole.holding(from, was), raw, dice.nextInt(bole.ways()));
  }

  private boolean apart(int from, int raw, int other, int otherRaw) {
    return from + raw + task.kerf() <= other || other + otherRaw + task.kerf() <= from;
  }

  private void free(int slot, int stem, double heat) {
    if (state.may(stem, slot)) {
      draw(stem, state.raw(slot)).ifPresent(start -> lay(slot, stem, start, heat));
    }
  }

  /** Draws where a piece of a stem begins; empty where it holds none. */
  private OptionalInt draw(int stem, int raw) {
    Bole bole = task.boles().get(stem);
    if (bole.free().isEmpty()) {
      return OptionalInt.empty();
    }
    Stretch stretch = bole.free().get(dice.nextInt(bole.free().size()));
    int room = stretch.length() - raw;
    if (room < 0) {
      return OptionalInt.empty();
    }
    if (bole.ways() > 0) {
      return OptionalInt.of(bole.begin(stretch, raw, dice.nextInt(bole.ways())));
    }
    return OptionalInt.of(
        dice.nextBoolean() ? snapped(stem, stretch, raw) : stretch.from() + dice.nextInt(room + 1));
  }

  /** Returns where a piece begins that lies against a neighbour or an end of the stretch. */
  private int snapped(int stem, Stretch stretch, int raw) {
    int count = state.count[stem];
    int against = dice.nextInt(count + 1);
    boolean above = dice.nextBoolean();
    if (against == count) {
      return above ? stretch.from() : stretch.to() - raw;
    }
    int neighbour = state.at[stem][against];
    int from = state.from[neighbour];
    return above ? from + state.raw(neighbour) + task.kerf() : from - task.kerf() - raw;
  }

  private void lay(int slot, int stem, int start, double heat) {
    boolean same = stem == state.bole[slot] && start == state.from[slot];
    if (!same && state.isFree(stem, start, state.raw(slot), slot, slot)) {
      state.change(slot, stem, start, state.turned[slot]);
      decide(heat);
    }
  }

  /** Lays two pieces where one lies for the whole wall. */
  private void part(int place, double heat) {
    int right = state.rightOf(place);
    PartedPlace lengths = task.parting().places().get(right - task.places());
    Optional<Cut> left = drawn(place, state.demand(place, true), lengths.left());
    Optional<Cut> other = drawn(place, state.demand(right, true), lengths.right());
    if (left.isPresent() && other.isPresent() && left.get().bole() != other.get().bole()) {
      state.change(place, left.get().bole(), left.get().from(), dice.nextBoolean());
      state.change(right, other.get().bole(), other.get().from(), dice.nextBoolean());
      decide(heat);
    }
  }

  /** Lays one piece for the whole wall where two lie. */
  private void join(int place, double heat) {
    Optional<Cut> one = drawn(place, place, task.side(place).raw());
    if (one.isPresent()) {
      state.change(state.rightOf(place), -1, 0, false);
      state.change(place, one.get().bole(), one.get().from(), false);
      decide(heat);
    }
  }

  /** Draws a piece for a place that no other place has; empty where some draws find none. */
  private Optional<Cut> drawn(int place, int demand, int raw) {
    int[] stems = state.serving[demand];
    for (int draw = 0; draw < DRAWS && stems.length > 0; draw++) {
      int stem = stems[dice.nextInt(stems.length)];
      OptionalInt start = draw(stem, raw);
      if (start.isPresent()
          && state.isFree(stem, start.getAsInt(), raw, place, state.rightOf(place))) {
        return Optional.of(new Cut(stem, start.getAsInt(), raw));
      }
    }
    return Optional.empty();
  }

  /** Keeps the change that was made, or undoes it. */
  private void decide(double heat) {
    if (state.changed() > heat * noise[dice.nextInt(NOISES)]) {
      state.undo();
      return;
    }
    state.keep();
    if (state.total() < bestTotal) {
      note();
    }
  }
}
