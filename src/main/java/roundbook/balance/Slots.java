package roundbook.balance;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import roundbook.balance.BalanceTask.RingPlace;

/** Numbers places and rounds of all buildings in one row, from the lowest round up. */
final class Slots {
  /** How many slots there are. */
  final int count;

  /** First slot of each course; one more entry than there are courses. */
  final int[] courseSlot;

  /** First course of each building; one more entry than there are buildings. */
  final int[] buildingCourse;

  /** Course of each slot. */
  final int[] courseOf;

  /** Building of each course. */
  final int[] buildingOf;

  Slots(BalanceTask task) {
    int buildings = task.buildings();
    buildingCourse = new int[buildings + 1];
    for (int b = 0; b < buildings; b++) {
      buildingCourse[b + 1] = buildingCourse[b] + task.rounds(b);
    }
    int courses = buildingCourse[buildings];
    buildingOf = new int[courses];
    courseSlot = new int[courses + 1];
    for (int b = 0; b < buildings; b++) {
      for (int c = buildingCourse[b]; c < buildingCourse[b + 1]; c++) {
        buildingOf[c] = b;
        courseSlot[c + 1] = courseSlot[c] + task.sides(b);
      }
    }
    count = courseSlot[courses];
    courseOf = new int[count];
    for (int c = 0; c < courses; c++) {
      Arrays.fill(courseOf, courseSlot[c], courseSlot[c + 1], c);
    }
  }

  /** Returns the number of courses. */
  int courses() {
    return buildingOf.length;
  }

  /** Returns the slot of a place. */
  int of(RingPlace place) {
    return courseSlot[buildingCourse[place.building()] + place.round()] + place.side();
  }

  /** Returns whether a place exists (it may lie above a lowered top). */
  boolean has(RingPlace place) {
    int course = buildingCourse[place.building()] + place.round();
    return course < buildingCourse[place.building() + 1];
  }

  /** Returns the place of a slot. */
  RingPlace place(int slot) {
    int course = courseOf[slot];
    int building = buildingOf[course];
    return new RingPlace(building, course - buildingCourse[building], slot - courseSlot[course]);
  }

  /** Returns the side of a slot. */
  int side(int slot) {
    return slot - courseSlot[courseOf[slot]];
  }

  /** Returns how many sides a course has. */
  int sides(int course) {
    return courseSlot[course + 1] - courseSlot[course];
  }

  /** Returns the round of a course, counted from 0. */
  int round(int course) {
    return course - buildingCourse[buildingOf[course]];
  }

  /** Returns whether a course has another one of its building above it. */
  boolean hasAbove(int course) {
    return course + 1 < buildingCourse[buildingOf[course] + 1];
  }

  /** Returns the slots of those places that exist. */
  BitSet setOf(Collection<RingPlace> places) {
    BitSet set = new BitSet();
    places.stream().filter(this::has).forEach(place -> set.set(of(place)));
    return set;
  }
}
