package roundbook.stack;

import java.util.List;
import java.util.Optional;
import roundbook.job.AsBuilt.CutSize;
import roundbook.job.BuildRules;
import roundbook.job.Job;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.notch.RoundSize;
import roundbook.units.Length;

/**
 * One round of the building: a log on every wall, all with the same notch.
 *
 * @param round its number, counted from 1
 * @param places one place a wall, in the walls' clockwise order
 * @param size the size that the logs share
 * @param notch the notch of that size
 * @param clockwise whether the butts run clockwise seen from above
 */
public record Course(
    int round, List<FilledPlace> places, RoundSize size, Notch notch, boolean clockwise) {
  /** Copies the list. */
  public Course {
    places = List.copyOf(places);
  }

  /** Returns the round of these places, sized and notched under a job's rules. */
  public static Course of(int round, List<FilledPlace> places, BuildRules rules) {
    List<Length> mids = places.stream().map(FilledPlace::mid).toList();
    RoundSize size = RoundSize.of(mids, rules.sizeStep());
    return new Course(round, places, size, Notch.of(size.taken(), rules), rules.clockwise(round));
  }

  /** Returns the round of these places, by the size at which the job holds it or that they have. */
  public static Course of(int round, List<FilledPlace> places, Job job) {
    return job.heldSize(round)
        .map(held -> Course.cut(round, places, held, job.rules()))
        .orElseGet(() -> Course.of(round, places, job.rules()));
  }

  /** Returns a round that is cut: its notch is what it was cut to, whatever its logs measure. */
  public static Course cut(int round, List<FilledPlace> places, CutSize cut, BuildRules rules) {
    Notch notch = new Notch(cut.size(), cut.gap(), rules.slope(), rules.printStep());
    RoundSize size = of(round, places, rules).size();
    return new Course(round, places, size, notch, rules.clockwise(round));
  }

  /** Returns the place on a wall; empty when the round has none there. */
  public Optional<FilledPlace> on(Wall wall) {
    for (FilledPlace place : places) {
      if (place.wall().equals(wall)) {
        return Optional.of(place);
      }
    }
    return Optional.empty();
  }

  /** Returns every log of the round, short ones too, wall by wall. */
  public List<PlacedLog> logs() {
    return places.stream().flatMap(place -> place.logs().stream()).toList();
  }

  /** Returns the difference between the largest and the smallest middle diameter. */
  public Length spread() {
    Length most = places.stream().map(FilledPlace::mid).reduce(Length::most).orElseThrow();
    Length least = places.stream().map(FilledPlace::mid).reduce(Length::least).orElseThrow();
    return most.minus(least);
  }
}
