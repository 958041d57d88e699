package roundbook.rounds;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.DiameterProfile;
import roundbook.job.Job;
import roundbook.job.Log;
import roundbook.job.Piece;
import roundbook.job.Wall;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * Rounds that are missing, as they may come out.
 *
 * @param job the job
 * @param courses the rounds that stand
 */
record Foreseen(Job job, List<Course> courses) {
  /** Lays cylinders of one diameter where rounds are missing, to see what openings cut there. */
  List<Course> to(int wanted) {
    List<Course> all = new ArrayList<>(courses);
    Length size = usualSize();
    Fit fit = new Fit(job);
    for (int round = courses.size() + 1; round <= wanted; round++) {
      List<FilledPlace> places = new ArrayList<>();
      for (Wall wall : job.building().walls()) {
        Length length = fit.least(wall);
        Log log =
            new OrderedLogs(job)
                .log(round, length, size)
                .measured(DiameterProfile.of(length, size, size, size));
        Piece piece =
            new Piece(log, length.minus(fit.trimmed(wall)).dividedBy(2), fit.trimmed(wall));
        places.add(FilledPlace.of(piece, wall, round, job.isButtAtStart(wall, round)));
      }
      all.add(Course.of(round, places, job.rules()));
    }
    return all;
  }

  /** Returns the size of the last round, or the mean middle of all logs where none stands. */
  private Length usualSize() {
    if (!courses.isEmpty()) {
      return courses.get(courses.size() - 1).notch().size();
    }
    Length sum = job.logs().stream().map(Log::mid).reduce(Length.ZERO, Length::plus);
    return job.logs().isEmpty()
        ? job.rules().thickness().times(2)
        : sum.dividedBy(job.logs().size());
  }
}
