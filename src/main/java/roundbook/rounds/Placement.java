package roundbook.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.job.AsBuilt;
import roundbook.job.AsBuilt.Held;
import roundbook.job.Job;
import roundbook.job.Wall;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;

/** Makes a choice again from where its logs stand, without choosing anything. */
public final class Placement {
  private Placement() {}

  /**
   * Returns the choice that puts these logs into these places.
   *
   * @param job the job
   * @param places the log of each place, and what is cut off its butt
   * @param wanted how many rounds were wanted
   * @throws IllegalArgumentException if a place is empty or its log is not of the job
   */
  public static Choice choice(Job job, Map<AsBuilt.Place, Held> places, int wanted) {
    int rounds = places.keySet().stream().mapToInt(AsBuilt.Place::round).max().orElse(0);
    List<FilledPlace> pairs = new ArrayList<>();
    List<Course> courses = new ArrayList<>();
    for (int round = 1; round <= rounds; round++) {
      List<FilledPlace> filled = new ArrayList<>();
      for (Wall wall : job.building().walls()) {
        AsBuilt.Place place = new AsBuilt.Place(round, wall.name());
        Held held = places.get(place);
        Optional<FilledPlace> here =
            Optional.ofNullable(held).flatMap(each -> FilledPlace.of(job, place, each));
        if (here.isEmpty()) {
          throw new IllegalArgumentException("no log in round " + round + " on " + wall.name());
        }
        filled.add(here.get());
        here.filter(FilledPlace::isShared).ifPresent(pairs::add);
      }
      courses.add(Course.of(round, filled, job));
    }
    Optional<Shortage> shortage = new Wanted(PairedJob.of(job, pairs)).shortage(wanted, rounds);
    Choice.Score none = new Choice.Score(0, 0, 0, 0, 0, 0);
    return new Choice(courses, List.of(), none, shortage, List.of()).ofPairs(job, pairs);
  }
}
