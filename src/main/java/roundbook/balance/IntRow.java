package roundbook.balance;

import java.util.Arrays;

/** Whole numbers in a row that grows. */
final class IntRow {
  private int[] numbers = new int[1 << 10];
  private int size;

  /** Adds a number. */
  void add(int number) {
    if (size == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * size);
    }
    numbers[size++] = number;
  }

  /** Returns how many there are. */
  int size() {
    return size;
  }

  /** Returns them all. */
  int[] toArray() {
    return Arrays.copyOf(numbers, size);
  }
}
