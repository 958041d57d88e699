package roundbook.stack;

import java.util.List;
import java.util.Optional;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.BuildRules;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.notch.RoundSize;
import roundbook.units.Length;

/**
 * One round of the building: a log on every wall, all with the same notch.
 *
 * @param round its number, counted from 1
 * @param logs one log a wall, in the walls' clockwise order
 * @param size the size that the logs share
 * @param notch the notch of that size
 * @param clockwise whether the butts run clockwise seen from above
 */
public record Course(
    int round, List<PlacedLog> logs, RoundSize size, Notch notch, boolean clockwise) {
  /** Copies the list. */
  public Course {
    logs = List.copyOf(logs);
  }

  /** Returns the round of these logs, sized and notched under a job's rules. */
  public static Course of(int round, List<PlacedLog> logs, BuildRules rules) {
    List<Length> mids = logs.stream().map(log -> log.piece().mid()).toList();
    RoundSize size = RoundSize.of(mids, rules.sizeStep());
    return new Course(round, logs, size, Notch.of(size.taken(), rules), rules.clockwise(round));
  }

  /** Returns a round that is cut: its notch is what it was cut to, whatever its logs measure. */
  public static Course cut(int round, List<PlacedLog> logs, CutSize cut, BuildRules rules) {
    Notch notch = new Notch(cut.size(), cut.gap(), rules.slope(), rules.printStep());
    RoundSize size = of(round, logs, rules).size();
    return new Course(round, logs, size, notch, rules.clockwise(round));
  }

  /** Returns the log on a wall; empty when the round has none there. */
  public Optional<PlacedLog> on(Wall wall) {
    for (PlacedLog log : logs) {
      if (log.wall().equals(wall)) {
        return Optional.of(log);
      }
    }
    return Optional.empty();
  }

  /** Returns the difference between the largest and the smallest middle diameter. */
  public Length spread() {
    Length most = logs.stream().map(log -> log.piece().mid()).reduce(Length::most).orElseThrow();
    Length least = logs.stream().map(log -> log.piece().mid()).reduce(Length::least).orElseThrow();
    return most.minus(least);
  }
}
