package roundbook.rounds;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import roundbook.job.DiameterProfile.Station;
import roundbook.job.Job;
import roundbook.job.Measures;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.rounds.Verifier.Subject;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** Recomputes sizes, marks, heights and gaps in binary inches and compares them. */
final class StackCheck {
  private static final double TOLERANCE = 1e-6;
  private static final int SAMPLES = 240;

  private final Job job;
  private final List<Course> courses;
  private final Stack stack;
  private final double gap;
  private final double step;
  private final Checks checks;
  private final GroundCheck ground;

  StackCheck(Job job, List<Course> courses, Stack stack, Checks checks) {
    this.job = job;
    this.courses = courses;
    this.stack = stack;
    this.checks = checks;
    this.ground = new GroundCheck(job, checks);
    this.gap = job.rules().length(Setting.CHINKING_GAP).inches();
    this.step = job.rules().length(Setting.PRINT_STEP).inches();
  }

  void check() {
    courses.forEach(this::sizeAndMarks);
    heights();
    for (Wall wall : job.building().walls()) {
      stack.joints(wall).forEach(this::gaps);
    }
  }

  private void sizeAndMarks(Course course) {
    double mean =
        course.places().stream()
            .mapToDouble(place -> diameter(place, trimmed(place) / 2, trimmed(place)))
            .average()
            .orElse(0);
    double size =
        job.built()
            .cutSize(course.round())
            .map(cut -> cut.size().inches())
            .or(() -> foundation(course.round()))
            .orElse(rounded(mean, job.rules().length(Setting.SIZE_STEP).inches()));
    String round = "round " + course.round();
    checks.same(Subject.MARKS, round + " size", size, course.notch().size().inches());
    checks.same(
        Subject.MARKS, round + " lower mark", lower(course), course.notch().lower().inches());
    checks.same(
        Subject.MARKS, round + " upper mark", upper(course), course.notch().upper().inches());
  }

  /** Returns the size whose necks are as high as the step of a foundation that stands. */
  private Optional<Double> foundation(int round) {
    boolean stepped = round == 1 && job.rules().text(Setting.FIRST_BED).equals("flat");
    return job.rules()
        .optionalLength(Setting.FOUNDATION_STEP)
        .filter(step -> stepped)
        .map(step -> 2 * step.inches() - gap);
  }

  private double lower(Course course) {
    return rounded((course.notch().size().inches() - gap(course)) / 4, step);
  }

  private double upper(Course course) {
    double neck = (course.notch().size().inches() + gap(course)) / 2;
    return rounded(neck, step) - lower(course);
  }

  /** Returns the gap that a round's marks are made for: that of its time where it is cut. */
  private double gap(Course course) {
    return job.built().cutSize(course.round()).map(cut -> cut.gap().inches()).orElse(gap);
  }

  /** A log lies on those that cross under it: the mean of their centres and upper marks. */
  private void heights() {
    boolean starter = "starter".equals(job.rules().text(Setting.FIRST_BED));
    Map<String, Double> tops = new HashMap<>();
    job.building().walls().forEach(wall -> tops.put(wall.name(), starter ? bedOfStarter() : 0));
    for (int i = 0; i < courses.size(); i++) {
      Course course = courses.get(i);
      lay(course, true, "height of round " + (i + 1), stack.firstHeights().get(i), tops);
      double top =
          lay(course, false, "second height of " + (i + 1), stack.secondHeights().get(i), tops);
      double step = stack.corners().step(i + 1, job.building(), job.rules()).inches();
      String over = "plan over round " + course.round();
      read(i + 1, top).ifPresent(read -> checks.same(Subject.HEIGHTS, over, read, step));
      tops.replaceAll((wall, each) -> each + step);
    }
  }

  /** Lays the walls of one laying order and returns how high their tops are on average. */
  private double lay(
      Course course, boolean first, String name, Length planned, Map<String, Double> tops) {
    List<Wall> walls =
        job.building().walls().stream().filter(wall -> wall.laidFirst() == first).toList();
    Map<String, Double> over = new HashMap<>();
    double sum = 0;
    for (Wall wall : walls) {
      double under =
          ground.crossing(wall).stream()
              .mapToDouble(each -> tops.get(each.name()))
              .average()
              .orElse(0);
      double centre = under + cut(course, wall, true);
      if (ground.isMore()) {
        double found = stack.centre(course.round(), wall).inches();
        checks.same(Subject.HEIGHTS, name + " on " + wall.name(), centre, found);
      }
      over.put(wall.name(), centre + cut(course, wall, false));
      sum += centre;
    }
    tops.putAll(over);
    checks.same(Subject.HEIGHTS, name, sum / walls.size(), planned.inches());
    return over.values().stream().mapToDouble(each -> each).average().orElse(0);
  }

  /**
   * Returns how much the plan goes on higher over a round, all of whose corners were read: the
   * middle ones of what they read over the plan, or nothing where the plan lies between those.
   */
  private OptionalDouble read(int round, double planned) {
    double[] over =
        job.building().corners().stream()
            .flatMap(corner -> job.built().reading(round, corner).stream())
            .mapToDouble(read -> read.inches() - planned)
            .sorted()
            .toArray();
    if (over.length < job.building().corners().size() || job.rules().holdsHeight()) {
      return OptionalDouble.empty();
    }
    double low = over[(over.length - 1) / 2];
    double high = over[over.length / 2];
    return OptionalDouble.of(low > 0 ? low : Math.min(high, 0));
  }

  private double bedOfStarter() {
    return courses.isEmpty() ? 0 : upper(courses.get(0));
  }

  /** Returns a mark that a log is cut to. */
  private double cut(Course course, Wall wall, boolean lower) {
    Measures typed = job.built().measures(course.round(), wall.name());
    double chart = lower ? lower(course) : upper(course);
    return (lower ? typed.lowerCut() : typed.upperCut()).map(Length::inches).orElse(chart);
  }

  private void gaps(Joint joint) {
    double trimmed = trimmed(joint.lower());
    double from = overhang() + job.building().after(joint.lower().wall()).thickness().inches();
    double to =
        trimmed - overhang() - job.building().before(joint.lower().wall()).thickness().inches();
    String name = "gap of " + joint.lower().wall().name() + " over round " + joint.lower().round();
    checks.same(Subject.GAPS, name + ", left", gapAt(joint, from, trimmed), joint.left().inches());
    checks.same(
        Subject.GAPS,
        name + ", middle",
        gapAt(joint, trimmed / 2, trimmed),
        joint.middle().inches());
    checks.same(Subject.GAPS, name + ", right", gapAt(joint, to, trimmed), joint.right().inches());
    double least = joint.least().inches() - TOLERANCE;
    double most = joint.most().inches() + TOLERANCE;
    boolean inside = true;
    for (int i = 0; i <= SAMPLES; i++) {
      double here = gapAt(joint, from + (to - from) * i / SAMPLES, trimmed);
      inside &= here > least && here < most;
    }
    checks.that(Subject.GAPS, inside, name + " passes its own extremes");
  }

  private double gapAt(Joint joint, double fromLeft, double trimmed) {
    double spacing = height(joint.upper()) - height(joint.lower()) + more(joint, fromLeft, trimmed);
    return spacing
        - (diameter(joint.lower(), fromLeft, trimmed) + diameter(joint.upper(), fromLeft, trimmed))
            / 2;
  }

  /** Returns how much further apart two logs are as their corners stand, straight between faces. */
  private double more(Joint joint, double fromLeft, double trimmed) {
    double from = overhang() + job.building().after(joint.lower().wall()).thickness().inches();
    double to =
        trimmed - overhang() - job.building().before(joint.lower().wall()).thickness().inches();
    double left = joint.more().left().inches();
    return left + (joint.more().right().inches() - left) * (fromLeft - from) / (to - from);
  }

  private double height(FilledPlace place) {
    return stack.centre(place).inches();
  }

  private double trimmed(FilledPlace place) {
    return place.wall().outside().inches() + 2 * overhang();
  }

  private double overhang() {
    return job.rules().length(Setting.OVERHANG).inches();
  }

  /**
   * Returns the diameter of a place at a distance from its left end, in inches: that of the log
   * which lies there, or, across an opening, that of a straight line from one log to the other.
   */
  static double diameter(FilledPlace place, double left, double trimmed) {
    PlacedLog one = place.logs().get(0);
    PlacedLog other = place.logs().get(place.logs().size() - 1);
    double to = one.piece().trimmed().inches();
    double from = trimmed - other.piece().trimmed().inches();
    if (one == other || left <= to) {
      return own(one, left);
    }
    if (left >= from) {
      return own(other, left - from);
    }
    double inner = own(one, to);
    return inner + (own(other, 0) - inner) * (left - to) / (from - to);
  }

  private static double own(PlacedLog log, double fromItsLeft) {
    double length = log.piece().trimmed().inches();
    return diameter(log, log.buttAtStart() ? length - fromItsLeft : fromItsLeft);
  }

  /** Returns the diameter at a distance from the trimmed butt, in inches, by straight lines. */
  static double diameter(PlacedLog placed, double fromButt) {
    double at = fromButt + placed.piece().cutOffButt().inches();
    return diameter(placed.piece().log().profile().stations(), at);
  }

  /** Returns the diameter at a distance along stations, in inches, by straight lines. */
  static double diameter(List<Station> stations, double at) {
    int i = 0;
    while (i < stations.size() - 2 && at > stations.get(i + 1).fromButt().inches()) {
      i++;
    }
    double x0 = stations.get(i).fromButt().inches();
    double x1 = stations.get(i + 1).fromButt().inches();
    double d0 = stations.get(i).diameter().inches();
    double d1 = stations.get(i + 1).diameter().inches();
    return d0 + (d1 - d0) * (at - x0) / (x1 - x0);
  }

  /** Rounds to a step, ties up, after the quotient is rounded to six decimals. */
  static double rounded(double value, double step) {
    return step == 0 ? value : Math.floor(Math.rint(value / step * 1e6) / 1e6 + 0.5) * step;
  }
}
