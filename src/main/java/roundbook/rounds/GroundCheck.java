package roundbook.rounds;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import roundbook.job.Job;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.rounds.Verifier.Subject;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;

/**
 * Puts every wall on the ground in inches, each by its own numbers, and checks from there where it
 * ends, what crosses it, and at which end its butts lie.
 *
 * <p>The first wall of a pen runs to the right, the next down, and so on round it; x runs right and
 * y down.
 */
final class GroundCheck {
  private static final double TOLERANCE = 1e-6;

  private final Job job;
  private final Checks checks;
  private final Map<String, Strip> strips = new HashMap<>();

  /**
   * The ground that a wall stands on.
   *
   * @param level whether it runs along x
   * @param left its least x
   * @param top its least y
   * @param right its largest x
   * @param bottom its largest y
   * @param back whether it runs from the larger number to the smaller, as is told of its ends
   */
  private record Strip(
      boolean level, double left, double top, double right, double bottom, boolean back) {
    boolean meets(Strip other) {
      return level != other.level
          && left < other.right - TOLERANCE
          && other.left < right - TOLERANCE
          && top < other.bottom - TOLERANCE
          && other.top < bottom - TOLERANCE;
    }

    /** Returns whether it would meet another one if it were so much longer both ways. */
    boolean meets(Strip other, double more) {
      return level
          ? new Strip(true, left - more, top, right + more, bottom, back).meets(other)
          : new Strip(false, left, top - more, right, bottom + more, back).meets(other);
    }

    /** Returns the same as far as a number along it. */
    Strip longer(double to) {
      return level
          ? new Strip(true, Math.min(left, to), top, Math.max(right, to), bottom, back)
          : new Strip(false, left, Math.min(top, to), right, Math.max(bottom, to), back);
    }

    /** Returns the number, along the wall, of the end that it is told from or of the other one. */
    double end(boolean start) {
      boolean less = start != back;
      return level ? (less ? left : right) : (less ? top : bottom);
    }

    double length() {
      return level ? right - left : bottom - top;
    }
  }

  GroundCheck(Job job, Checks checks) {
    this.job = job;
    this.checks = checks;
    double x = 0;
    Optional<Wall> far = walls().stream().filter(wall -> on(wall).size() == 1).findFirst();
    for (int pen = 1; !ring(pen).isEmpty() && (pen == 1 || far.isEmpty()); pen++) {
      for (Wall wall : ring(pen)) {
        x += wall.stand().at().map(each -> each.inches()).orElse(0.0);
      }
      x += pen(ring(pen), x);
    }
    far.ifPresent(this::wing);
    walls().stream()
        .filter(wall -> on(wall).size() == 2)
        .forEach(wall -> strips.put(wall.name(), partition(wall)));
  }

  private static List<String> on(Wall wall) {
    return wall.stand().between();
  }

  private List<Wall> walls() {
    return job.building().walls();
  }

  private List<Wall> ring(int pen) {
    return walls().stream()
        .filter(wall -> wall.stand().pen() == pen && on(wall).isEmpty())
        .toList();
  }

  /** Puts a pen's ring down and returns how far it reaches to the right. */
  private double pen(List<Wall> ring, double x) {
    double right = x + least(ring.get(0), ring.get(2));
    double bottom = least(ring.get(1), ring.get(3));
    double[] thick = ring.stream().mapToDouble(wall -> wall.thickness().inches()).toArray();
    strips.put(ring.get(0).name(), new Strip(true, x, 0, right, thick[0], false));
    strips.put(ring.get(1).name(), new Strip(false, right - thick[1], 0, right, bottom, false));
    strips.put(ring.get(2).name(), new Strip(true, x, bottom - thick[2], right, bottom, true));
    strips.put(ring.get(3).name(), new Strip(false, x, 0, x + thick[3], bottom, true));
    return right - x;
  }

  /** A wall that goes on along a wing is longer than the one across from it. */
  private static double least(Wall one, Wall other) {
    return Math.min(one.outside().inches(), other.outside().inches());
  }

  /**
   * Puts a wing down outside of the wall that it stands on: its far wall, its own sides from the
   * inner face of that wall on, and as much more of a wall of the house that goes on along it.
   */
  private void wing(Wall far) {
    Wall shared = job.building().wall(on(far).get(0)).orElseThrow();
    Strip on = strips.get(shared.name());
    List<Wall> own =
        walls().stream().filter(wall -> wall.stand().pen() == far.stand().pen()).toList();
    Wall side = own.stream().filter(wall -> !wall.equals(far)).findFirst().orElseThrow();
    double depth = side.outside().inches() - shared.thickness().inches();
    double way = on.back() ? 1 : -1;
    double left = on.end(false) + way * far.stand().at().orElseThrow().inches();
    double right = left + way * far.outside().inches();
    boolean less = (on.level() ? on.top() : on.left()) < TOLERANCE;
    double outer = less ? -depth : (on.level() ? on.bottom() : on.right()) + depth;
    double in = outer + (less ? 1 : -1) * far.thickness().inches();
    strips.put(far.name(), across(on.level(), left, right, outer, in, on.back()));
    double inner =
        less ? (on.level() ? on.bottom() : on.right()) : on.level() ? on.top() : on.left();
    for (Wall wall : own) {
      boolean first = own.indexOf(wall) < own.indexOf(far);
      double edge = first ? right : left;
      double thick = (first ? -way : way) * wall.thickness().inches();
      if (!wall.equals(far)) {
        boolean back = first == less;
        strips.put(wall.name(), across(!on.level(), inner, outer, edge, edge + thick, back));
      }
    }
    for (Wall wall : ring(1)) {
      Strip strip = strips.get(wall.name());
      boolean goesOn = strip.level() != on.level() && strip.meets(strips.get(far.name()), depth);
      if (goesOn) {
        strips.put(wall.name(), strip.longer(outer));
      }
    }
  }

  /** Returns the strip between two numbers along it and two across it. */
  private static Strip across(
      boolean level, double from, double to, double one, double other, boolean back) {
    double low = Math.min(from, to);
    double high = Math.max(from, to);
    double near = Math.min(one, other);
    double far = Math.max(one, other);
    return level
        ? new Strip(true, low, near, high, far, back)
        : new Strip(false, near, low, far, high, back);
  }

  /** A partition lies across the pen, so far from the end at which its first wall ends. */
  private Strip partition(Wall wall) {
    Strip one = strips.get(wall.stand().between().get(0));
    Strip other = strips.get(wall.stand().between().get(1));
    double near = wall.stand().at().orElseThrow().inches();
    double thick = wall.thickness().inches();
    double from = one.back() ? one.end(false) + near : one.end(false) - near - thick;
    double low =
        Math.min(one.level() ? one.top() : one.left(), other.level() ? other.top() : other.left());
    double high =
        Math.max(
            one.level() ? one.bottom() : one.right(),
            other.level() ? other.bottom() : other.right());
    boolean back = one.level() ? one.top() > other.top() : one.left() > other.left();
    return one.level()
        ? new Strip(false, from, low, from + thick, high, back)
        : new Strip(true, low, from, high, from + thick, back);
  }

  /** Returns whether there is more than one ring, whose walls are sound where they are read. */
  boolean isMore() {
    return walls().size() > ring(1).size();
  }

  /** Returns the walls that cross one. */
  List<Wall> crossing(Wall wall) {
    Strip own = strips.get(wall.name());
    return walls().stream().filter(other -> own.meets(strips.get(other.name()))).toList();
  }

  /** Checks where walls end, what is laid first, and the butts of every round. */
  void check(List<Course> courses) {
    for (Wall wall : isMore() ? walls() : List.<Wall>of()) {
      double length = strips.get(wall.name()).length();
      checks.same(Subject.LENGTHS, wall.name() + " outside", length, wall.outside().inches());
      boolean order =
          crossing(wall).size() >= 2
              && crossing(wall).stream().noneMatch(each -> each.laidFirst() == wall.laidFirst());
      checks.that(Subject.PLACES, order, wall.name() + " is crossed by a wall laid as it is");
    }
    courses.forEach(this::butts);
  }

  private void butts(Course course) {
    boolean odd = course.round() % 2 == 1;
    boolean clockwise = odd != job.rules().text(Setting.BUTTS_RUN).equals("counterclockwise");
    for (FilledPlace place : course.places()) {
      boolean start = place.buttAtStart();
      boolean rightWay =
          start == isStart(place.wall(), clockwise)
              && (place.isShared() || place.first().buttAtStart() == start);
      checks.that(
          Subject.BUTTS, rightWay, "round " + course.round() + " has a butt at the wrong end");
    }
  }

  /** Returns whether the butts of a round lie at the end that a wall is told from. */
  private boolean isStart(Wall wall, boolean clockwise) {
    boolean pen = wall.stand().pen() % 2 == 1;
    if (on(wall).size() < 2) {
      return clockwise == pen;
    }
    Wall left = leftOf(wall);
    Strip beside = strips.get(left.name());
    Strip own = strips.get(wall.name());
    double butt = beside.end(isStart(left, clockwise));
    return Math.abs(own.end(true) - butt) > own.length() / 2;
  }

  /** Returns the wall next to a partition on the left, seen from outside its first wall. */
  private Wall leftOf(Wall wall) {
    Strip one = strips.get(wall.stand().between().get(0));
    double end = one.end(false);
    return walls().stream()
        .filter(other -> other.stand().pen() == wall.stand().pen())
        .filter(other -> !other.equals(wall) && one.meets(strips.get(other.name())))
        .filter(other -> away(other, end) < away(wall, end))
        .max(Comparator.comparingDouble(other -> away(other, end)))
        .orElseThrow();
  }

  /** Returns how far a wall that crosses the other is from a number along that. */
  private double away(Wall wall, double end) {
    Strip strip = strips.get(wall.name());
    return Math.abs(
        (strip.level() ? strip.top() + strip.bottom() : strip.left() + strip.right()) / 2 - end);
  }
}
