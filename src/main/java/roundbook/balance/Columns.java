package roundbook.balance;

import java.util.Arrays;

/**
 * Which slots lie above each other, and which columns are alike.
 *
 * <p>Two opposite sides of one length, both laid first or both laid second, are alike: everything
 * above a joint may change sides with no other effect than on the joints crossed. So two such
 * columns are mates, and their joints are looked at together.
 */
final class Columns {
  /** Slot above each slot, or -1. */
  final int[] above;

  /** Slot below each slot, or -1. */
  final int[] below;

  /** Slot of the like column in the same course, or -1. */
  final int[] mate;

  /** The lower number of a slot and its mate; its own number where there is none. */
  final int[] lead;

  private final Model model;
  private final Slots slots;

  Columns(Model model) {
    this.model = model;
    slots = model.slots;
    above = new int[slots.count];
    below = new int[slots.count];
    mate = new int[slots.count];
    lead = new int[slots.count];
    Arrays.fill(above, -1);
    Arrays.fill(below, -1);
    Arrays.fill(mate, -1);
    Arrays.setAll(lead, slot -> slot);
    for (int c = 0; c < slots.courses(); c++) {
      if (slots.hasAbove(c)) {
        join(slots.courseSlot[c], slots.courseSlot[c + 1]);
      }
    }
    for (int b = 0; b + 1 < slots.buildingCourse.length; b++) {
      pair(b);
    }
  }

  /** Returns whether two slots are one or lie in joints whose matchings are looked at together. */
  boolean share(int s, int t) {
    int one = lead[s];
    int other = lead[t];
    return one == other
        || above[one] >= 0 && lead[above[one]] == other
        || above[other] >= 0 && lead[above[other]] == one;
  }

  private void join(int from, int to) {
    for (int slot = from; slot < to; slot++) {
      above[slot] = slot + to - from;
      below[slot + to - from] = slot;
    }
  }

  private void pair(int building) {
    int sides = model.task.sides(building);
    boolean[] paired = new boolean[sides];
    for (int one = 0; one < sides; one++) {
      for (int other = one + 1; other < sides && !paired[one]; other++) {
        if (!paired[other] && alike(building, one, other)) {
          paired[one] = true;
          paired[other] = true;
          mate(building, one, other);
        }
      }
    }
  }

  private boolean alike(int building, int one, int other) {
    for (int c = slots.buildingCourse[building]; c < slots.buildingCourse[building + 1]; c++) {
      if (!alike(slots.courseSlot[c] + one, slots.courseSlot[c] + other)) {
        return false;
      }
    }
    return true;
  }

  private boolean alike(int one, int other) {
    return model.slotClass[one] == model.slotClass[other]
        && model.slotFirst[one] == model.slotFirst[other]
        && model.kinds.ofSlot[one] == model.kinds.ofSlot[other]
        && model.slotPin[one] < 0
        && model.slotPin[other] < 0;
  }

  private void mate(int building, int one, int other) {
    for (int c = slots.buildingCourse[building]; c < slots.buildingCourse[building + 1]; c++) {
      int first = slots.courseSlot[c] + one;
      int second = slots.courseSlot[c] + other;
      mate[first] = second;
      mate[second] = first;
      lead[second] = first;
    }
  }
}
