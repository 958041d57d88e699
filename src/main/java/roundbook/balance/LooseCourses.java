package roundbook.balance;

/** What courses cost beside their joints: spread, misfit and steps up, kept for every course. */
final class LooseCourses {
  private final Model model;
  private final Prices prices;
  private final JointTables tables;
  private final LooseSizes sizes;
  private final int[] variant;
  private final int[] courseOf;
  private final int[] courseSlot;
  private final int freeSpread;
  private final int[] course;
  private final int[] rise;
  private final long[] credit;
  private final int[] mid;
  private final int[] least;
  private final int[] most;
  private double strictness;

  /**
   * Keeps the courses of a state's variants, which it follows.
   *
   * @param variant variant in each slot
   */
  LooseCourses(Model model, JointTables tables, LooseSizes sizes, int... variant) {
    this.model = model;
    this.tables = tables;
    this.sizes = sizes;
    this.variant = variant;
    prices = new Prices(model);
    courseOf = model.slots.courseOf;
    courseSlot = model.slots.courseSlot;
    freeSpread = prices.freeSpread();
    course = new int[model.slots.courses()];
    rise = new int[course.length];
    credit = new long[course.length];
    mid = new int[variant.length];
    least = new int[variant.length];
    most = new int[variant.length];
  }

  /** Sets what a fine unit of misfit costs. */
  void strictness(double price) {
    strictness = price;
    for (int c = 0; c < credit.length; c++) {
      recredit(c);
    }
  }

  private void recredit(int c) {
    credit[c] = course[c] + price(sizes.misfit(c));
  }

  /** Returns what so many fine units of misfit cost. */
  long price(long misfit) {
    return (long) (strictness * misfit);
  }

  /**
   * Returns the most that a change of logs can save in the spread and misfit of a slot's course.
   */
  long credit(int s) {
    return credit[courseOf[s]];
  }

  /** Works everything out anew; returns what spread and steps up cost. */
  long set() {
    long total = 0;
    for (int c = 0; c < course.length; c++) {
      keep(c);
      keepRise(c);
      total += course[c] + rise[c];
    }
    return total;
  }

  /** Keeps spread and misfit of a course as they are now; returns by how much its misfit grew. */
  long keep(int c) {
    int from = courseSlot[c];
    int to = courseSlot[c + 1];
    int thinnest = from;
    int thickest = from;
    for (int s = from; s < to; s++) {
      mid[s] = model.mids[variant[s]];
      thinnest = mid[s] < mid[thinnest] ? s : thinnest;
      thickest = mid[s] > mid[thickest] ? s : thickest;
    }
    int nextLeast = Integer.MAX_VALUE;
    int nextMost = 0;
    for (int s = from; s < to; s++) {
      nextLeast = s == thinnest ? nextLeast : Math.min(nextLeast, mid[s]);
      nextMost = s == thickest ? nextMost : Math.max(nextMost, mid[s]);
      least[s] = mid[thinnest];
      most[s] = mid[thickest];
    }
    least[thinnest] = nextLeast;
    most[thickest] = nextMost;
    course[c] = spread(mid[thickest] - mid[thinnest]);
    long grown = sizes.keep(c);
    recredit(c);
    return grown;
  }

  private int spread(int ticks) {
    return ticks > freeSpread ? tables.cost(prices.spread(ticks)) : 0;
  }

  /** Returns by how much the cost of spread would change with a variant in a slot. */
  int spreadChange(int s, int v) {
    int m = model.mids[v];
    return spread(Math.max(most[s], m) - Math.min(least[s], m)) - course[courseOf[s]];
  }

  /** Returns by how much the cost of spread would change with variants in two slots of a course. */
  int spreadChange(int s, int v, int t, int w) {
    int lower = Math.min(model.mids[v], model.mids[w]);
    int upper = Math.max(model.mids[v], model.mids[w]);
    int c = courseOf[s];
    for (int u = courseSlot[c]; u < courseSlot[c + 1]; u++) {
      if (u != s && u != t) {
        lower = Math.min(lower, mid[u]);
        upper = Math.max(upper, mid[u]);
      }
    }
    return spread(upper - lower) - course[c];
  }

  /** Keeps what the step up over a course costs. */
  void keepRise(int c) {
    rise[c] = rise(c);
  }

  /** Returns by how much the cost of the step up over a course has changed. */
  int riseChange(int c) {
    return rise(c) - rise[c];
  }

  private int rise(int c) {
    return model.slots.hasAbove(c)
        ? tables.cost(prices.inversion(sizes.size[c], sizes.size[c + 1]))
        : 0;
  }
}
