package roundbook.bucking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import roundbook.bucking.BuckingTask.Cut;

/**
 * A piece for every place.
 *
 * @param cuts the pieces, by place; the left one where there are two
 * @param sizes the size of each round, in ticks
 * @param score what is made small besides the wood skipped, in unit²
 * @param waste what the wood skipped costs, in unit²
 * @param gaps the gaps at both ends and the middle of every joint, in ticks
 * @param parted the places that have two pieces
 */
public record BuckingResult(
    List<Cut> cuts,
    List<Long> sizes,
    double score,
    double waste,
    double[] gaps,
    List<PartedCut> parted) {
  /**
   * Two pieces beside an opening.
   *
   * @param place the number of their place
   * @param left the left one, seen from outside
   * @param right the right one
   * @param leftOut whether the butt of the left one lies at the corner
   * @param rightOut whether that of the right one does
   */
  public record PartedCut(int place, Cut left, Cut right, boolean leftOut, boolean rightOut) {}

  static BuckingResult of(JointState state) {
    Long[] sizes = new Long[state.task.rounds()];
    Arrays.setAll(sizes, state::size);
    double waste = state.grains.units(state.wasted());
    List<Cut> cuts = new ArrayList<>();
    List<PartedCut> parted = new ArrayList<>();
    for (int place = 0; place < state.task.places(); place++) {
      cuts.add(state.cut(place));
      if (state.isParted(place)) {
        int right = state.rightOf(place);
        boolean out = !state.turned[place];
        parted.add(
            new PartedCut(place, cuts.get(place), state.cut(right), out, !state.turned[right]));
      }
    }
    return new BuckingResult(
        cuts,
        List.of(sizes),
        state.grains.units(state.total()) - waste,
        waste,
        state.gaps(),
        parted);
  }

  /** Returns what pieces that are given cost. */
  public static BuckingResult of(BuckingTask task, List<Cut> cuts) {
    JointState state = new JointState(task);
    for (int place = 0; place < cuts.size(); place++) {
      state.put(place, cuts.get(place).bole(), cuts.get(place).from(), false);
    }
    state.settle();
    return of(state);
  }

  /** Returns how many gaps lie outside two limits. */
  public long gapsOutside(long least, long most) {
    return Arrays.stream(gaps).filter(gap -> gap < least - 1e-6 || gap > most + 1e-6).count();
  }

  /** Returns the root of the mean squared error of the gaps, in ticks. */
  public double rms(long wanted) {
    return Math.sqrt(
        Arrays.stream(gaps).map(gap -> (gap - wanted) * (gap - wanted)).average().orElse(0));
  }
}
