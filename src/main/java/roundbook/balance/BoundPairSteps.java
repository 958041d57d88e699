package roundbook.balance;

import java.util.Arrays;

/** Makes the steps over one round of two sides that are laid together. */
final class BoundPairSteps {
  private final BoundCosts costs;
  private final BoundSide side;
  private final boolean alike;
  private final double gap;
  private final BoundGraph.Parts parts;
  private final int r;
  private final int course;
  private final int above;
  private final int from;
  private final int variants;
  private final Row[] left;
  private final Row[] right;
  private final int[][] numbers;
  private final int[] seen;
  private final int[][][] joints;
  private final IntRow to = new IntRow();
  private final IntRow cost = new IntRow();

  /**
   * @param one the cheapest ways of a side, found from both ends
   * @param other those of another, or the same again for two that are alike
   * @param gap by how much more than the cheapest ways both may cost together, in units
   * @param parts the states of both
   * @param r the round
   */
  BoundPairSteps(
      BoundCosts costs,
      BoundPaths one,
      BoundPaths other,
      double gap,
      BoundGraph.Parts parts,
      int r) {
    this.costs = costs;
    this.gap = gap;
    this.parts = parts;
    this.r = r;
    side = one.graph.one;
    alike = one == other;
    course = side.course(costs.model, r);
    above = costs.sizes.count(course + 1);
    int lengthClass = costs.model.slotClass[side.slots[r]];
    from = costs.model.classFrom[lengthClass];
    variants = costs.model.classFrom[lengthClass + 1] - from;
    left = rows(one);
    right = alike ? left : rows(other);
    numbers = numbers();
    joints = new int[costs.sizes.count(course) * above][][];
    seen = new int[parts.size()[r + 1].length];
  }

  /**
   * Makes the steps.
   *
   * @param steps takes them
   * @param most how many there may be; it ends when there are more
   * @return how many there are
   */
  int make(BoundGraph.Steps steps, long most) {
    int[] first = new int[parts.size()[r].length + 1];
    for (int s = 0; s + 1 < first.length && to.size() <= most; s++) {
      for (int size = 0; size < above; size++) {
        step(s, size);
      }
      first[s + 1] = to.size();
    }
    steps.first()[r] = first;
    steps.to()[r] = to.toArray();
    steps.cost()[r] = cost.toArray();
    return to.size();
  }

  /** Makes the steps from a state to those of a size, cheapest first. */
  private void step(int s, int size) {
    int row = (parts.size()[r][s] * above + size) * variants;
    Row low = left[row + parts.left()[r][s] - from];
    Row high = right[row + parts.right()[r][s] - from];
    if (low.count == 0 || high.count == 0) {
      return;
    }
    int k = parts.size()[r][s];
    int rise = costs.rise(course, k, size, 2);
    int[][] joints = joints(k, size);
    for (int i = 0; i < low.count && low.excess(i) + high.excess(0) <= gap; i++) {
      int[] number = numbers[size * variants + low.variant(i)];
      for (int j = 0; j < high.count && low.excess(i) + high.excess(j) <= gap; j++) {
        int t = number == null ? -1 : number[high.variant(j)];
        if (t >= 0 && seen[t] <= s) {
          seen[t] = s + 1;
          add(s, t, joint(joints, s, t) + rise);
        }
      }
    }
  }

  private int[][] joints(int k, int size) {
    int at = k * above + size;
    if (joints[at] == null) {
      joints[at] = costs.joints(side.slots[r], k, size);
    }
    return joints[at];
  }

  private void add(int s, int t, int more) {
    if (more <= BoundCosts.KNOWN && !meet(s, t)) {
      to.add(t);
      cost.add(more);
    }
  }

  private int joint(int[][] joints, int s, int t) {
    int v = parts.left()[r][s] - from;
    int w = parts.right()[r][s] - from;
    int x = parts.left()[r + 1][t] - from;
    int y = parts.right()[r + 1][t] - from;
    int straight = joints[v][x] + joints[w][y];
    return alike ? Math.min(straight, joints[v][y] + joints[w][x]) : straight;
  }

  private boolean meet(int s, int t) {
    int[] log = costs.model.variantLog;
    int v = log[parts.left()[r][s]];
    int w = log[parts.right()[r][s]];
    int x = log[parts.left()[r + 1][t]];
    int y = log[parts.right()[r + 1][t]];
    return v == x || v == y || w == x || w == y;
  }

  /** Returns the number of each upper state, by its size and variants, either way if alike. */
  private int[][] numbers() {
    int[][] made = new int[above * variants][];
    for (int t = 0; t < parts.size()[r + 1].length; t++) {
      int row = parts.size()[r + 1][t] * variants;
      int x = parts.left()[r + 1][t] - from;
      int y = parts.right()[r + 1][t] - from;
      number(made, row + x, y, t);
      if (alike) {
        number(made, row + y, x, t);
      }
    }
    return made;
  }

  private void number(int[][] made, int row, int at, int t) {
    if (made[row] == null) {
      made[row] = new int[variants];
      Arrays.fill(made[row], -1);
    }
    made[row][at] = t;
  }

  /** The steps from a variant to those of another size, cheapest first, each as one number. */
  private record Row(int count, long... steps) {
    int excess(int i) {
      return (int) (steps[i] >> Integer.SIZE);
    }

    int variant(int i) {
      return (int) steps[i];
    }
  }

  private Row[] rows(BoundPaths paths) {
    BoundGraph graph = paths.graph;
    long[][] rows = new long[costs.sizes.count(course) * above * variants][0];
    int[] counts = new int[rows.length];
    for (int s = 0; s < graph.size[r].length; s++) {
      for (int step = graph.first[r][s]; step < graph.first[r][s + 1]; step++) {
        long excess = Math.max(0, paths.excess(r, s, step));
        if (excess <= gap) {
          int t = graph.to[r][step];
          int at = (graph.size[r][s] * above + graph.size[r + 1][t]) * variants;
          at += graph.left[r][s] - from;
          rows[at] = counts[at] == 0 ? new long[variants] : rows[at];
          rows[at][counts[at]++] = excess << Integer.SIZE | graph.left[r + 1][t] - from;
        }
      }
    }
    Row[] sorted = new Row[rows.length];
    for (int i = 0; i < rows.length; i++) {
      Arrays.sort(rows[i], 0, counts[i]);
      sorted[i] = new Row(counts[i], rows[i]);
    }
    return sorted;
  }
}
