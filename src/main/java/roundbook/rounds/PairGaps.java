package roundbook.rounds;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.stack.Course;
import roundbook.stack.EndFit;
import roundbook.stack.FilledPlace;
import roundbook.units.Length;

/**
 * What the gaps of chosen logs are off, kept up to date while pairs of short logs are exchanged.
 *
 * <p>Counted are the squares of what each gap is off at the inside faces, at the middle and at both
 * sides of the openings with short logs, in square inches; twenty times those of what a gap lacks
 * of the least allowed; flagged ends of short logs; a square inch for each that is long enough for
 * a whole wall, as a spare that is lost; and their offcuts, five thousandths an inch, so that ten
 * feet of a log fall for no less than half an inch of its diameter. Only the levels that an
 * exchange touches are reckoned again.
 */
final class PairGaps {
  private static final double LEAST_WEIGHT = 20;
  private static final double FLAGGED_END = 4;
  private static final double OFFCUT_PRICE = 0.005;
  private static final double WALL_LOG = 1;

  private final Job job;
  private final Fit fit;
  private final List<Wall> walls;
  private final List<Course> courses;
  private final List<List<Length>> stations;
  private final double[][][] diameters;
  private final double[] levels;
  private final double[] ends;
  private final double gap;
  private final double least;

  /**
   * Begins with chosen logs.
   *
   * @param job the job
   * @param courses the rounds, from the lowest up
   * @param jambs distances of the sides of openings from the left trimmed end, wall by wall
   */
  PairGaps(Job job, List<Course> courses, List<List<Length>> jambs) {
    this.job = job;
    this.fit = new Fit(job);
    this.walls = job.building().walls();
    this.courses = new ArrayList<>(courses);
    this.stations = new ArrayList<>();
    for (int side = 0; side < walls.size(); side++) {
      stations.add(stations(walls.get(side), jambs.get(side)));
    }
    this.diameters = new double[courses.size()][walls.size()][];
    this.levels = new double[courses.size()];
    this.ends = new double[courses.size()];
    this.gap = job.rules().gap().inches();
    this.least = Math.min(gap, job.rules().length(Setting.GAP_LEAST).inches());
    for (int round = 1; round <= courses.size(); round++) {
      for (FilledPlace log : courses.get(round - 1).places()) {
        measure(log);
      }
      ends[round - 1] = ends(courses.get(round - 1));
    }
    for (int round = 1; round < courses.size(); round++) {
      levels[round - 1] = level(round);
    }
  }

  private List<Length> stations(Wall wall, List<Length> jambs) {
    Length overhang = job.rules().overhang();
    Length trimmed = job.building().trimmed(wall, overhang);
    List<Length> stations = new ArrayList<>(jambs);
    stations.add(job.building().after(wall).thickness().plus(overhang));
    stations.add(trimmed.dividedBy(2));
    stations.add(trimmed.minus(job.building().before(wall).thickness()).minus(overhang));
    return stations;
  }

  /** Returns a round as it is now. */
  Course course(int round) {
    return courses.get(round - 1);
  }

  /** Puts a log in its place and reckons the levels that it touches. */
  void put(FilledPlace placed) {
    int round = placed.round();
    List<FilledPlace> places =
        course(round).places().stream()
            .map(place -> place.wall().equals(placed.wall()) ? placed : place)
            .toList();
    courses.set(round - 1, BalancedChooser.course(job, round, places));
    measure(placed);
    ends[round - 1] = ends(course(round));
    for (int lower = Math.max(1, round - 1); lower <= round && lower < courses.size(); lower++) {
      levels[lower - 1] = level(lower);
    }
  }

  /** Returns what all gaps are off. */
  double cost() {
    double sum = 0;
    for (int i = 0; i < levels.length; i++) {
      sum += levels[i] + ends[i];
    }
    return sum;
  }

  private void measure(FilledPlace log) {
    int side = walls.indexOf(log.wall());
    diameters[log.round() - 1][side] =
        stations.get(side).stream().mapToDouble(at -> log.fromLeft(at).inches()).toArray();
  }

  private double level(int lower) {
    Notch below = course(lower).notch();
    Notch above = course(lower + 1).notch();
    double marks = below.upper().plus(above.lower()).inches();
    double first = marks + below.upper().plus(below.lower()).inches();
    double second = marks + above.upper().plus(above.lower()).inches();
    double sum = 0;
    for (int side = 0; side < walls.size(); side++) {
      double spacing = walls.get(side).laidFirst() ? first : second;
      double[] under = diameters[lower - 1][side];
      double[] over = diameters[lower][side];
      for (int k = 0; k < under.length; k++) {
        double found = spacing - (under[k] + over[k]) / 2;
        double lack = Math.max(0, least - found);
        sum += (found - gap) * (found - gap) + LEAST_WEIGHT * lack * lack;
      }
    }
    return sum;
  }

  private double ends(Course course) {
    double sum = 0;
    Length allowance = job.rules().length(Setting.SQUARING_ALLOWANCE);
    for (FilledPlace place : course.places()) {
      if (place.isShared()) {
        sum += OFFCUT_PRICE * place.offcut(allowance).plus(allowance).inches();
        sum += hasFlaggedEnd(job, course, place) ? FLAGGED_END : 0;
        sum += WALL_LOG * wallLogs(place);
      }
    }
    return sum;
  }

  /** Returns how many of the two short logs of a place are long enough for a whole wall. */
  private long wallLogs(FilledPlace log) {
    return log.logs().stream().filter(each -> fit.isWallLog(each.piece().log())).count();
  }

  /** Returns whether an end of a place at a corner is flagged. */
  static boolean hasFlaggedEnd(Job job, Course course, FilledPlace log) {
    return new EndFit(job.rules(), job.building()).isFlagged(course, log);
  }
}
