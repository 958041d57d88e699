package roundbook.balance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Sides of a building that are laid alike. */
final class BoundSide {
  /** Which of all it is. */
  final int number;

  /** How many sides there are. */
  final int count;

  /** The slots of one of them, from the lowest. */
  final int[] slots;

  private final List<int[]> all;

  private BoundSide(int number, List<int[]> all) {
    this.number = number;
    this.all = all;
    count = all.size();
    slots = all.get(0);
  }

  /** Returns all sides of a task. */
  static List<BoundSide> of(Model model) {
    Map<List<Object>, List<int[]>> kinds = new LinkedHashMap<>();
    for (int b = 0; b < model.task.buildings(); b++) {
      for (int side = 0; side < model.task.sides(b) && model.task.rounds(b) > 0; side++) {
        int[] slots = slots(model, b, side);
        kinds.computeIfAbsent(kind(model, b, slots), kind -> new ArrayList<>()).add(slots);
      }
    }
    List<List<int[]>> all = List.copyOf(kinds.values());
    return IntStream.range(0, all.size()).mapToObj(i -> new BoundSide(i, all.get(i))).toList();
  }

  private static int[] slots(Model model, int building, int side) {
    int first = model.slots.buildingCourse[building];
    return IntStream.range(first, first + model.task.rounds(building))
        .map(course -> model.slots.courseSlot[course] + side)
        .toArray();
  }

  /** Returns what sides have in common that are laid alike. */
  private static List<Object> kind(Model model, int building, int... slots) {
    List<Object> kind = new ArrayList<>(List.of(building, model.slotFirst[slots[0]]));
    for (int slot : slots) {
      kind.add(List.of(model.slotClass[slot], model.kinds.ofSlot[slot], model.slotPin[slot]));
    }
    return kind;
  }

  /** Returns how many rounds there are. */
  int rounds() {
    return slots.length;
  }

  /** Returns the slot of the first of these sides in a round that has no number yet. */
  int slot(int round, int... numbers) {
    return all.stream()
        .mapToInt(side -> side[round])
        .filter(slot -> numbers[slot] < 0)
        .findFirst()
        .orElseThrow();
  }

  /** Returns the course of a round. */
  int course(Model model, int round) {
    return model.slots.courseOf[slots[round]];
  }

  /** Returns whether another side may be laid together with this one. */
  boolean pairs(BoundSide other, Model model) {
    return course(model, 0) == other.course(model, 0)
        && model.slotClass[slots[0]] == model.slotClass[other.slots[0]]
        && model.slotFirst[slots[0]] == model.slotFirst[other.slots[0]];
  }

  /** Returns the variants that may stand in a round at a size. */
  int[] standing(BoundSizes sizes, Model model, int round, int size) {
    int slot = slots[round];
    int course = model.slots.courseOf[slot];
    long wide = sizes.size(course, size);
    int from = model.classFrom[model.slotClass[slot]];
    int to = model.classFrom[model.slotClass[slot] + 1];
    return IntStream.range(from, to)
        .filter(v -> model.fits(model.variantLog[v], slot) && wide <= model.largest[v])
        .filter(v -> sizes.isNear(course, wide, v))
        .toArray();
  }
}
