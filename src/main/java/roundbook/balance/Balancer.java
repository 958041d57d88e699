package roundbook.balance;

/** Chooses a log and a cut for every place of a task. */
public interface Balancer {
  /**
   * Chooses logs. Every answer keeps the hard rules: one log a place, no log twice, long enough,
   * pins kept, butts alternating. When the task cannot be filled whole, as many rounds are planned
   * as the logs allow, and the result says so.
   *
   * @param task what is wanted
   * @param effort how hard to look
   */
  BalanceResult solve(BalanceTask task, Effort effort);

  /** Returns what a careful person does with a list: sort by size and deal off, larger low. */
  static Balancer sortAndDeal() {
    return new SortAndDeal();
  }

  /** Returns the search that gets near the best choice there is. */
  static Balancer search() {
    return new Search();
  }
}
