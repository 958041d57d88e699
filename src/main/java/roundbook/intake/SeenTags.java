package roundbook.intake;

import java.util.Arrays;

/**
 * The tags of logs with what is remembered of each, numbered in the order they came.
 *
 * <p>All stands in a few arrays: a tally of a million logs takes some 40 MB, and gives the
 * collector of garbage nothing to follow.
 */
final class SeenTags {
  private static final long MIX = 0x9E3779B97F4A7C15L;
  private static final int FEWEST = 64;

  private char[] letters = new char[FEWEST * 8];
  private int[] ends = new int[FEWEST];
  private int[] rows = new int[FEWEST];
  private int[] sheets = new int[FEWEST];
  private long[] measures = new long[FEWEST];

  /** The hash of a tag and its number counted from 1, side by side; 0 where there is none. */
  private long[] slots = new long[FEWEST * 2];

  private int size;

  /** Returns the number of a tag; negative when it was never added. */
  int find(String tag) {
    return number(slots[slot(tag, hash(tag))]);
  }

  /**
   * Adds a tag, unless it is there.
   *
   * @param sheet which sheet it stands on, by a number of the caller's
   * @param row its row
   * @param mixed the log's measures, mixed
   * @return the number of the same tag that was added before; negative when there is none
   */
  int add(String tag, int sheet, int row, long mixed) {
    if (size == ends.length) {
      grow();
    }
    int hash = hash(tag);
    int slot = slot(tag, hash);
    if (slots[slot] != 0) {
      return number(slots[slot]);
    }
    int from = size == 0 ? 0 : ends[size - 1];
    int end = Math.addExact(from, tag.length());
    if (end > letters.length) {
      letters = Arrays.copyOf(letters, Math.max(end, letters.length + (letters.length >> 1)));
    }
    tag.getChars(0, tag.length(), letters, from);
    ends[size] = end;
    rows[size] = row;
    sheets[size] = sheet;
    measures[size] = mixed;
    slots[slot] = (long) hash << 32 | ++size;
    return -1;
  }

  int row(int number) {
    return rows[number];
  }

  int sheet(int number) {
    return sheets[number];
  }

  long measures(int number) {
    return measures[number];
  }

  /** Returns the slot that holds a tag, or the free one where it belongs. */
  private int slot(String tag, int hash) {
    int slot = hash & slots.length - 1;
    while (slots[slot] != 0
        && ((int) (slots[slot] >>> 32) != hash || !isTag(number(slots[slot]), tag))) {
      slot = slot + 1 & slots.length - 1;
    }
    return slot;
  }

  private static int number(long slot) {
    return (int) slot - 1;
  }

  private boolean isTag(int number, String tag) {
    int from = number == 0 ? 0 : ends[number - 1];
    if (ends[number] - from != tag.length()) {
      return false;
    }
    for (int i = 0; i < tag.length(); i++) {
      if (letters[from + i] != tag.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** Mixes all letters well, for tags can be made whose usual hashes are all alike. */
  private static int hash(String tag) {
    long hash = tag.length();
    for (int i = 0; i < tag.length(); i++) {
      hash = MIX * Long.rotateLeft(hash ^ tag.charAt(i), 27);
    }
    return (int) (hash >>> 32);
  }

  private void grow() {
    int more = size + (size >> 1);
    ends = Arrays.copyOf(ends, more);
    rows = Arrays.copyOf(rows, more);
    sheets = Arrays.copyOf(sheets, more);
    measures = Arrays.copyOf(measures, more);
    if (more * 3 > slots.length * 2) {
      long[] before = slots;
      slots = new long[before.length * 2];
      for (long each : before) {
        if (each != 0) {
          slots[free((int) (each >>> 32))] = each;
        }
      }
    }
  }

  private int free(int hash) {
    int slot = hash & slots.length - 1;
    while (slots[slot] != 0) {
      slot = slot + 1 & slots.length - 1;
    }
    return slot;
  }
}
