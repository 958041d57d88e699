package roundbook.bucking;

import java.util.ArrayList;
import java.util.List;
import roundbook.bucking.BuckingTask.Cut;

/** Checks pieces against their stems step by step, sharing nothing with the search. */
final class OverlapCheck {
  private OverlapCheck() {}

  /**
   * Returns what is wrong: a step of a stem used twice, unsound or thin, a cut without its kerf.
   */
  static List<String> faults(BuckingTask task, List<Cut> cuts) {
    List<String> faults = new ArrayList<>();
    for (int stem = 0; stem < task.boles().size(); stem++) {
      int[] owner = new int[task.boles().get(stem).length() + task.kerf()];
      for (int place = 0; place < cuts.size(); place++) {
        Cut cut = cuts.get(place);
        if (cut.bole() == stem) {
          for (int step = cut.from(); step < cut.to() + task.kerf(); step++) {
            if (owner[step] > 0) {
              faults.add("stem " + stem + " is cut twice at " + step);
            }
            owner[step] = place + 1;
          }
          boolean sound =
              task.boles().get(stem).free().stream()
                  .anyMatch(free -> cut.from() >= free.from() && cut.to() <= free.to());
          if (!sound || cut.from() < 0) {
            faults.add("stem " + stem + " is not sound from " + cut.from());
          }
        }
      }
    }
    for (int place = 0; place < cuts.size(); place++) {
      if (cuts.get(place).raw() != task.sides().get(place % task.sides().size()).raw()) {
        faults.add("place " + place + " has a piece of another length");
      }
    }
    return faults;
  }
}
