package roundbook.balance;

import roundbook.balance.JointTables.Table;

/** What a slot must know of the slots around it to tell what any variant would cost in it. */
final class Spot {
  /** Joints over and under the slot; null where there are none. */
  Table over;

  Table under;

  /** What the joints cost, with those of the like column, in the better of their two matchings. */
  int up;

  int down;

  private final int from;
  private int[] above;
  private int[] aboveMate;
  private int[] below;
  private int[] belowMate;
  private int withAbove;
  private int withAboveMate;
  private int withBelow;
  private int withBelowMate;

  /**
   * Knows nothing yet.
   *
   * @param from first variant of the slot's length class
   */
  Spot(int from) {
    this.from = from;
  }

  /** Takes the log above, a row of its joints. */
  void above(int... row) {
    above = row;
    aboveMate = row;
  }

  /** Takes the logs above of this and the like column, rows of their joints, and the one beside. */
  void above(int[] row, int[] mateRow, int mate) {
    above = row;
    aboveMate = mateRow;
    withAbove = row[mate - from];
    withAboveMate = mateRow[mate - from];
  }

  /** Takes the log below, a row of its joints. */
  void below(int... row) {
    below = row;
    belowMate = row;
  }

  /** Takes the logs below of this and the like column, rows of their joints, and the one beside. */
  void below(int[] row, int[] mateRow, int mate) {
    below = row;
    belowMate = mateRow;
    withBelow = row[mate - from];
    withBelowMate = mateRow[mate - from];
  }

  /** Takes another log in the like column. */
  void beside(int mate) {
    above(above, aboveMate, mate);
    below(below, belowMate, mate);
  }

  /** Returns what the joints over the slot would cost with a variant in it. */
  int up(int v) {
    int i = v - from;
    return Math.min(above[i] + withAboveMate, aboveMate[i] + withAbove);
  }

  /** Returns what the joints under the slot would cost with a variant in it. */
  int down(int v) {
    int i = v - from;
    return Math.min(below[i] + withBelowMate, belowMate[i] + withBelow);
  }
}
