package roundbook.balance;

import java.util.Arrays;

/**
 * How many logs of which length are missing, and how many rounds can stand without them.
 *
 * @param missing for each length class, how many logs more would fill every place; their sum is the
 *     least there can be, and longer classes are served first, so that the shortest are missing
 * @param rounds for each building, the greatest number of rounds that can be filled; the first
 *     building is served first
 */
public record Shortage(int[] missing, int[] rounds) {
  /** Copies the numbers. */
  public Shortage {
    missing = missing.clone();
    rounds = rounds.clone();
  }

  /** Returns what a task is short of. */
  public static Shortage of(BalanceTask task) {
    Model model = new Model(task);
    return new Shortage(new Supply(model).missing(), new Supply(model).rounds());
  }

  /** Returns how many logs are missing in all. */
  public int count() {
    return Arrays.stream(missing).sum();
  }

  /** Returns the missing logs of each length class. */
  @Override
  public int[] missing() {
    return missing.clone();
  }

  /** Returns the rounds of each building that can be filled. */
  @Override
  public int[] rounds() {
    return rounds.clone();
  }

  /** Returns a task, lowered to the rounds that can be filled. */
  static BalanceTask fillable(BalanceTask task) {
    int[] rounds = new Supply(new Model(task)).rounds();
    boolean whole = true;
    for (int b = 0; b < rounds.length; b++) {
      whole &= rounds[b] == task.rounds(b);
    }
    return whole ? task : task.withRounds(rounds);
  }
}
