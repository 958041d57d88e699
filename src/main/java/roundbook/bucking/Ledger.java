package roundbook.bucking;

import java.util.Arrays;

/** Numbers and their sum; what was changed since the last change that was kept can be undone. */
final class Ledger {
  private final long[] numbers;
  private int[] changed;
  private long[] before;
  private int changes;
  private long total;

  /** Begins with zeros. */
  Ledger(int count) {
    numbers = new long[count];
    changed = new int[count];
    before = new long[count];
  }

  long get(int which) {
    return numbers[which];
  }

  /** Changes a number; returns whether it was another. */
  boolean set(int which, long number) {
    long was = numbers[which];
    if (was == number) {
      return false;
    }
    if (changes == changed.length) {
      changed = Arrays.copyOf(changed, 2 * changes);
      before = Arrays.copyOf(before, 2 * changes);
    }
    changed[changes] = which;
    before[changes++] = was;
    put(which, number);
    return true;
  }

  private void put(int which, long number) {
    total += number - numbers[which];
    numbers[which] = number;
  }

  /** Keeps what was changed. */
  void keep() {
    changes = 0;
  }

  /** Undoes what was changed, the last first. */
  void undo() {
    while (changes > 0) {
      changes--;
      put(changed[changes], before[changes]);
    }
  }

  /** Returns the sum of all numbers. */
  long total() {
    return total;
  }
}
