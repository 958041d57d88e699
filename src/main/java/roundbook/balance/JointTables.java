package roundbook.balance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What joints cost, worked out once for each length class, base and variant, at its first use.
 *
 * <p>With sizes in steps the base of a joint, {@code 3 D + D₊} on first-laid sides and {@code D + 3
 * D₊} on second-laid ones, is one of few numbers, and what a joint costs hangs on nothing else but
 * its two variants. Which of the two lies below makes no difference, for butts alternate.
 */
final class JointTables {
  /** Costs in one unit². */
  static final int UNIT = 1 << 15;

  /** The most that one joint is said to cost, of which twenty still make an int. */
  private static final int MOST = 1 << 26;

  /** What a log costs at most in a round too large for its tip. */
  private static final int REFUSED = 1 << 27;

  /**
   * Entries that are kept before all tables are emptied, which bounds the memory of large yards.
   */
  private static final long ENTRIES = 1 << 23;

  /** A step of a size moves the base of a joint by so many steps at most. */
  private static final int FURTHEST = 3;

  private final Model model;
  private final Prices prices;
  private final List<Map<Long, Table>> tables = new ArrayList<>();
  private final long step;
  private final double scale;
  private long entries;

  JointTables(Model model) {
    this.model = model;
    prices = new Prices(model);
    step = model.part(model.task.aims().sizeStep());
    scale = UNIT / (model.grains * model.grains);
    for (int c = 0; c < model.classes; c++) {
      tables.add(new HashMap<>());
    }
  }

  /** Returns squared grains as a cost. */
  int cost(long squaredGrains) {
    return (int) Math.min(MOST, Math.round(squaredGrains * scale));
  }

  /** Returns what each variant costs by itself. */
  int[] own() {
    int[] own = new int[model.variantLog.length];
    for (int v = 0; v < own.length; v++) {
      own[v] = cost(model.costs[v]);
    }
    return own;
  }

  /** Returns what a log costs in a round too large for its tip. */
  int refused() {
    return (int) Math.min(REFUSED, prices.refused * scale);
  }

  /** Returns the joints of a length class and a base in M-th parts of a tick. */
  Table of(int lengthClass, long base) {
    return tables.get(lengthClass).computeIfAbsent(base, key -> new Table(lengthClass, key));
  }

  private int[] costs(int lengthClass, long base, int v) {
    int from = model.classFrom[lengthClass];
    int[] costs = new int[model.classFrom[lengthClass + 1] - from];
    int[] d = model.diameters;
    long butt = base - d[3 * v];
    long mid = base - d[3 * v + 1];
    long tip = base - d[3 * v + 2];
    for (int i = 0; i < costs.length; i++) {
      int w = 3 * (from + i);
      costs[i] =
          cost(prices.gap(butt - d[w + 2]) + prices.gap(mid - d[w + 1]) + prices.gap(tip - d[w]));
    }
    entries += costs.length;
    return costs;
  }

  private void empty() {
    entries = 0;
    tables.forEach(ofClass -> ofClass.values().forEach(Table::empty));
  }

  /** The joints of one class and base; variants are counted from the first of the class. */
  final class Table {
    private final int lengthClass;
    private final int from;
    private final long base;
    private final Table[] beside = new Table[2 * FURTHEST + 1];
    private int[][] rows;

    private Table(int lengthClass, long base) {
      this.lengthClass = lengthClass;
      this.base = base;
      from = model.classFrom[lengthClass];
      empty();
    }

    private void empty() {
      rows = new int[model.classFrom[lengthClass + 1] - from][];
    }

    /** Returns the joints of the base that is some steps of a size away. */
    Table moved(int steps) {
      Table found = beside[FURTHEST + steps];
      if (found == null) {
        found = of(lengthClass, base + steps * step);
        beside[FURTHEST + steps] = found;
      }
      return found;
    }

    /** Returns what each variant costs over or under a variant. */
    int[] row(int v) {
      int[] row = rows[v - from];
      return row == null ? added(v) : row;
    }

    private int[] added(int v) {
      if (entries > ENTRIES) {
        JointTables.this.empty();
      }
      int[] row = costs(lengthClass, base, v);
      rows[v - from] = row;
      return row;
    }
  }
}
