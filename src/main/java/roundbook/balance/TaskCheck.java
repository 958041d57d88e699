package roundbook.balance;

import java.util.HashSet;
import java.util.Set;
import roundbook.balance.BalanceTask.RingPlace;

/** Refuses tasks that no caller should have built. */
final class TaskCheck {
  private final BalanceTask task;

  private TaskCheck(BalanceTask task) {
    this.task = task;
  }

  /** Throws an exception that names the first thing wrong with a task. */
  static void check(BalanceTask task) {
    TaskCheck check = new TaskCheck(task);
    check.scale();
    check.sides();
    check.logs();
    check.places();
  }

  private void scale() {
    require(task.scale.tick() > 0 && task.scale.unit() >= task.scale.tick(), "tick and unit");
  }

  private void sides() {
    for (int b = 0; b < task.buildings(); b++) {
      require(task.sides(b) > 0 && task.rounds(b) >= 0, "building " + b + " has no sides");
      for (int w = 0; w < task.sides(b); w++) {
        int lengthClass = task.lengthClass(b, w);
        require(lengthClass >= 0 && lengthClass < task.lengthClasses(), "class of side " + w);
      }
    }
  }

  private void logs() {
    for (int log = 0; log < task.logs(); log++) {
      require(task.classesOf(log) == task.lengthClasses(), "log " + log + " lacks a class");
    }
  }

  private void places() {
    task.pins().keySet().forEach(this::place);
    task.only().keySet().forEach(this::place);
    Set<Integer> seen = new HashSet<>();
    task.pins().forEach((place, log) -> pin(place, log, seen));
  }

  private void pin(RingPlace place, int log, Set<Integer> seen) {
    require(log >= 0 && log < task.logs(), "pin of log " + log);
    require(seen.add(log), "log " + log + " is pinned twice");
    int lengthClass = task.lengthClass(place.building(), place.side());
    require(!task.cuts(log, lengthClass).isEmpty(), "log " + log + " is too short for its pin");
  }

  private void place(RingPlace place) {
    boolean there = place.building() >= 0 && place.building() < task.buildings();
    require(
        there
            && place.round() >= 0
            && place.round() < task.rounds(place.building())
            && place.side() >= 0
            && place.side() < task.sides(place.building()),
        "no such place: " + place);
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new IllegalArgumentException(what);
    }
  }
}
