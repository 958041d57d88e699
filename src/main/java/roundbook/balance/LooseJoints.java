package roundbook.balance;

import roundbook.balance.JointTables.Table;

/**
 * The joints of a choice whose sizes change in steps, which know what any variant would cost in any
 * slot.
 *
 * <p>The joints of two like columns cost what the better of their two matchings costs; {@link
 * #straighten()} carries that out.
 */
final class LooseJoints {
  private static final int MOST_JOINTS = 4;

  private final Model model;
  private final Columns columns;
  private final JointTables tables;
  private final int[] variant;
  private final Spot[] spots;
  private final boolean[][] near;
  private final int[] none;
  private final int[] tried = new int[MOST_JOINTS];
  private int tries;

  /**
   * Makes joints of a state's variants, which they follow.
   *
   * @param variant variant in each slot
   */
  LooseJoints(Model model, JointTables tables, int... variant) {
    this.model = model;
    this.tables = tables;
    this.variant = variant;
    columns = new Columns(model);
    none = new int[model.variantLog.length];
    spots = new Spot[variant.length];
    near = new boolean[variant.length][variant.length];
    for (int s = 0; s < spots.length; s++) {
      spots[s] = new Spot(model.classFrom[model.slotClass[s]]);
      for (int t = 0; t < spots.length; t++) {
        near[s][t] = columns.share(s, t);
      }
    }
  }

  /** Takes the sizes of all courses and works everything out anew; returns what the joints cost. */
  long set(long... size) {
    for (int s = 0; s < spots.length; s++) {
      if (columns.above[s] >= 0) {
        spots[s].over = tables.of(model.slotClass[s], base(s, size));
        spots[columns.above[s]].under = spots[s].over;
      }
    }
    long total = 0;
    for (int s = 0; s < spots.length; s++) {
      link(s);
      total += columns.lead[s] == s ? spots[s].up : 0;
    }
    return total;
  }

  private long base(int s, long... size) {
    int c = model.slots.courseOf[s];
    return model.slotFirst[s] ? 3 * size[c] + size[c + 1] : size[c] + 3 * size[c + 1];
  }

  /** Returns what the joints of a slot would cost with a variant in it, the others staying. */
  int cost(int s, int v) {
    return spots[s].up(v) + spots[s].down(v);
  }

  /** Returns what the joints of a slot cost. */
  int cost(int s) {
    return spots[s].up + spots[s].down;
  }

  /** Returns whether slots are those of like columns, which may exchange logs without effect. */
  boolean isMate(int s, int t) {
    return columns.mate[s] == t;
  }

  /** Returns whether two slots have joints in common, so that their costs can't be added up. */
  boolean isNear(int s, int t) {
    return near[s][t];
  }

  /** Returns by how much the joints of two slots that have some in common would change. */
  int change(int s, int v, int t, int w) {
    int oldS = variant[s];
    int oldT = variant[t];
    tries = 0;
    int change = -touched(s) - touched(t);
    variant[s] = v;
    variant[t] = w;
    for (int i = 0; i < tries; i++) {
      change += joint(tried[i], spots[tried[i]].over);
    }
    variant[s] = oldS;
    variant[t] = oldT;
    return change;
  }

  private int touched(int s) {
    int below = columns.below[s];
    return touch(columns.lead[s]) + (below < 0 ? 0 : touch(columns.lead[below]));
  }

  private int touch(int s) {
    for (int i = 0; i < tries; i++) {
      if (tried[i] == s) {
        return 0;
      }
    }
    tried[tries++] = s;
    return spots[s].up;
  }

  /** Returns what the joints of two like columns over a slot cost in their better matching. */
  private int joint(int s, Table over) {
    if (over == null) {
      return 0;
    }
    int from = model.classFrom[model.slotClass[s]];
    int above = variant[columns.above[s]] - from;
    int[] row = over.row(variant[s]);
    int mate = columns.mate[s];
    if (mate < 0) {
      return row[above];
    }
    int[] mateRow = over.row(variant[mate]);
    int across = variant[columns.above[mate]] - from;
    return Math.min(row[above] + mateRow[across], row[across] + mateRow[above]);
  }

  /** Works out anew what slots around a changed one must know, and the changed one. */
  void laid(int s) {
    Spot spot = spots[s];
    int v = variant[s];
    spot.up = spot.up(v);
    spot.down = spot.down(v);
    int mate = columns.mate[s];
    if (mate >= 0) {
      Spot beside = spots[mate];
      beside.beside(v);
      beside.up = spot.up;
      beside.down = spot.down;
      linkAround(mate);
    }
    linkAround(s);
  }

  private void linkAround(int s) {
    if (columns.above[s] >= 0) {
      linkDown(columns.above[s]);
    }
    if (columns.below[s] >= 0) {
      linkUp(columns.below[s]);
    }
  }

  /** Works out anew what a slot must know of the logs above, below and beside it. */
  void link(int s) {
    linkUp(s);
    linkDown(s);
  }

  private void linkUp(int s) {
    Spot spot = spots[s];
    int mate = columns.mate[s];
    int[] row = row(spot.over, columns.above[s]);
    if (mate < 0) {
      spot.above(row);
    } else {
      spot.above(row, row(spot.over, columns.above[mate]), variant[mate]);
    }
    spot.up = spot.up(variant[s]);
  }

  private void linkDown(int s) {
    Spot spot = spots[s];
    int mate = columns.mate[s];
    int[] row = row(spot.under, columns.below[s]);
    if (mate < 0) {
      spot.below(row);
    } else {
      spot.below(row, row(spot.under, columns.below[mate]), variant[mate]);
    }
    spot.down = spot.down(variant[s]);
  }

  private int[] row(Table table, int slot) {
    return table == null ? none : table.row(variant[slot]);
  }

  /** Returns by how much the joints over a course change when their bases move by so many steps. */
  long moved(int c, int first, int second) {
    long change = 0;
    for (int s = model.slots.courseSlot[c]; s < model.slots.courseSlot[c + 1]; s++) {
      if (columns.lead[s] == s && spots[s].over != null) {
        Table over = spots[s].over.moved(model.slotFirst[s] ? first : second);
        change += joint(s, over) - spots[s].up;
      }
    }
    return change;
  }

  /** Moves the bases of the joints over a course by so many steps. */
  void move(int c, int first, int second) {
    int to = model.slots.courseSlot[c + 1];
    for (int s = model.slots.courseSlot[c]; s < to && spots[s].over != null; s++) {
      spots[s].over = spots[s].over.moved(model.slotFirst[s] ? first : second);
      spots[columns.above[s]].under = spots[s].over;
    }
  }

  /** Lays every pair of like columns in the better of its matchings, and keeps nothing else. */
  void straighten() {
    for (int s = 0; s < variant.length; s++) {
      int mate = columns.mate[s];
      if (mate > s && columns.above[s] >= 0 && isCrossed(s, mate)) {
        cross(columns.above[s], columns.above[mate]);
      }
    }
  }

  private boolean isCrossed(int s, int mate) {
    int[] row = spots[s].over.row(variant[s]);
    int[] mateRow = spots[s].over.row(variant[mate]);
    int from = model.classFrom[model.slotClass[s]];
    int above = variant[columns.above[s]] - from;
    int across = variant[columns.above[mate]] - from;
    return row[across] + mateRow[above] < row[above] + mateRow[across];
  }

  private void cross(int one, int other) {
    int t = other;
    for (int s = one; s >= 0; s = columns.above[s]) {
      int v = variant[s];
      variant[s] = variant[t];
      variant[t] = v;
      t = columns.above[t];
    }
  }
}
