package roundbook.balance;

import java.util.function.LongPredicate;

/** Changes a choice step by step under a falling temperature, and keeps the best one met. */
interface Annealer {
  /** Moves tried between two looks at whether to go on. */
  int BLOCK = 1 << 10;

  /** Starts over from a choice. */
  void from(int[] variants);

  /**
   * Runs through a schedule.
   *
   * @param schedule the temperatures
   * @param moves how many moves to try
   * @param goOn asked before every block of moves, told how many are done
   */
  void run(Schedule schedule, long moves, LongPredicate goOn);

  /** Returns the choice of the least score met since the start. */
  int[] best();

  /** Returns the least score met since the start, in squared grains. */
  long bestTotal();

  /**
   * Temperatures that fall geometrically.
   *
   * @param hot first temperature, in unit²
   * @param cold last temperature, in unit²
   */
  record Schedule(double hot, double cold) {
    /** Returns the temperature after a share of the run, in unit². */
    double at(double share) {
      return hot * StrictMath.pow(cold / hot, share);
    }
  }
}
