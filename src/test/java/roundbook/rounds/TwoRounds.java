package roundbook.rounds;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import roundbook.job.AsBuilt.Held;
import roundbook.job.AsBuilt.Place;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.plan.Jobs;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Two rounds laid by hand on walls of 20 by 14 feet: L1 to L4 on N, E, S, W, L5 to L8 over them.
 */
final class TwoRounds {
  static final Length LONG = Length.ofInches(260);

  private TwoRounds() {}

  /** Returns a job of so many logs of 260 in, 14 to 12 in thick, each changed in some way. */
  static Job job(int logs, UnaryOperator<Log> change) {
    List<Log> made = new ArrayList<>();
    for (int i = 1; i <= logs; i++) {
      made.add(change.apply(Jobs.log("L" + i, LONG, "14", "13", "12")));
    }
    Job sample = Jobs.random(1, 1);
    return new Job(sample.rules(), sample.building(), made, List.of(), List.of());
  }

  /** Returns a log of a taper by its number, so that no two cancel each other in a gap. */
  static Log tapered(Log log) {
    int number = Integer.parseInt(log.tag().substring(1));
    String mid = String.valueOf(12 + number % 3 * 0.375);
    return Jobs.log(log.tag(), log.length(), "1" + (3 + number % 2) + ".5", mid, "1" + number / 7);
  }

  /** Returns two rounds of the logs in their order, two inches off every butt. */
  static Choice choice(Job job) {
    Map<Place, Held> places = new HashMap<>();
    for (int i = 0; i < 8; i++) {
      String wall = job.building().walls().get(i % 4).name();
      places.put(new Place(i / 4 + 1, wall), new Held(job.logs().get(i).tag(), Length.ofInches(2)));
    }
    return Placement.choice(job, places, 2);
  }

  /** Returns the stack of a choice, as built. */
  static Stack stack(Job job, Choice choice) {
    return Stack.of(job.rules(), job.building(), choice.courses(), job.built());
  }

  /** Returns what the check of a finished plan says. */
  static List<String> faults(Job job, Choice choice) {
    return Verifier.verify(job, choice, stack(job, choice)).faults();
  }
}
