package roundbook.picture.wall;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.Opening;
import roundbook.job.Saddle;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.notch.Notch;
import roundbook.picture.face.FaceCase;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Spot;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * The true shapes of a wall seen from outside, in inches.
 *
 * <p>Points run from the left trimmed end to the right and from the underside of the first bed up.
 *
 * @param stack the logs and their heights
 * @param wall the wall
 */
record Elevation(Stack stack, Wall wall) {
  private static final int PARTS = 12;

  /** Returns the wall's logs from the lowest up. */
  List<FilledPlace> logs() {
    return stack.courses().stream().map(course -> course.on(wall).orElseThrow()).toList();
  }

  /** Returns the length of the wall's trimmed logs. */
  double length() {
    return stack.building().trimmed(wall, stack.rules().overhang()).inches();
  }

  /** Returns o, from the outer face of the crossing wall to the trimmed end. */
  double overhang() {
    return stack.rules().overhang().inches();
  }

  /** Returns how far the left inside face lies from the left trimmed end. */
  double leftFace() {
    return overhang() + stack.building().after(wall).thickness().inches();
  }

  /** Returns how far the right inside face lies from the left trimmed end. */
  double rightFace() {
    return length() - overhang() - stack.building().before(wall).thickness().inches();
  }

  /** Returns the height of a log's centre line. */
  double centre(FilledPlace log) {
    return stack.centre(log).inches();
  }

  /** Returns the highest point of the wall and of the logs that cross it. */
  double top() {
    return logs().stream().mapToDouble(log -> Box.around(outline(log)).bottom()).max().orElse(0);
  }

  /** Returns the least distance between the centre lines of neighbouring logs. */
  double leastCourse() {
    List<FilledPlace> logs = logs();
    double least = stack.courses().get(0).notch().size().inches();
    for (int i = 1; i < logs.size(); i++) {
      least = Math.min(least, centre(logs.get(i)) - centre(logs.get(i - 1)));
    }
    return least;
  }

  /** Returns the outline of a log: its natural shape between the shoulders, its necks past them. */
  List<Spot> outline(FilledPlace log) {
    Notch notch = notch(log);
    double above = centre(log) + notch.upper().inches();
    List<Spot> outline = new ArrayList<>();
    outline.add(new Spot(0, Math.min(above, crown(log, 0))));
    outline.add(new Spot(leftFace(), Math.min(above, crown(log, leftFace()))));
    for (double x : stations()) {
      outline.add(new Spot(x, crown(log, x)));
    }
    outline.add(new Spot(rightFace(), Math.min(above, crown(log, rightFace()))));
    outline.add(new Spot(length(), Math.min(above, crown(log, length()))));
    under(log, outline);
    return outline;
  }

  /** Returns the height of a log's natural top at a place along the wall. */
  double crown(FilledPlace log, double x) {
    return centre(log) + radius(log, x);
  }

  /** Returns the height of a log's underside between the shoulders. */
  double belly(FilledPlace log, double x) {
    double natural = centre(log) - radius(log, x);
    FaceCase.Special special = FaceCase.special(stack, log);
    boolean flat = special == FaceCase.Special.BED_WHOLE || special == FaceCase.Special.BED_BETWEEN;
    return flat ? Math.max(natural, centre(log) - notch(log).lower().inches()) : natural;
  }

  /** Returns the end grain of a crossing log, at the left or the right end of this wall. */
  List<Spot> crossingEnd(Course course, boolean left) {
    Wall crossing = left ? stack.building().after(wall) : stack.building().before(wall);
    FilledPlace log = course.on(crossing).orElseThrow();
    double thick = crossing.thickness().inches();
    double outer = left ? overhang() : length() - overhang();
    double inner = left ? outer + thick : outer - thick;
    double high = centre(log) + notch(log).upper().inches();
    double low = centre(log) - endDepth(log);
    double drop = notch(log).drop(crossing.thickness()).inches();
    boolean outwards = drains(!left);
    return List.of(
        new Spot(inner, outwards ? high - drop : high),
        new Spot(outer, outwards ? high : high - drop),
        new Spot(outer, low),
        new Spot(inner, low));
  }

  /** Returns whether an end dies in another wall and drains there. */
  private boolean drains(boolean start) {
    return stack.building().drains(wall, start, stack.rules());
  }

  /** Returns the end grain of the partitions' logs that come out through this wall. */
  List<List<Spot>> tails(Course course) {
    return stack.building().saddles(wall).stream().map(saddle -> tail(course, saddle)).toList();
  }

  private List<Spot> tail(Course course, Saddle saddle) {
    FilledPlace log = course.on(saddle.partition()).orElseThrow();
    double left = overhang() + saddle.from().inches();
    double right = overhang() + saddle.to().inches();
    double high = centre(log) + notch(log).upper().inches();
    double depth = saddle.isLevel() ? notch(log).lower().inches() : endDepth(log);
    double low = centre(log) - depth;
    return List.of(
        new Spot(left, high), new Spot(right, high), new Spot(right, low), new Spot(left, low));
  }

  /** Returns how high the foundation stands under this wall between the corners. */
  double foundation() {
    boolean starter = stack.rules().text(Setting.FIRST_BED).equals("starter");
    if (starter && !wall.laidFirst()) {
      return stack.courses().get(0).notch().size().inches() / 2;
    }
    return belly(logs().get(0), length() / 2);
  }

  /** Returns the rough opening, kept inside the wall's outline. */
  Box opening(Opening opening) {
    double left = clamp(overhang() + opening.left().inches(), length());
    double right = clamp(left + opening.width().inches(), length());
    double sill = clamp(opening.sill().inches(), top());
    return new Box(left, sill, right, clamp(opening.head().inches(), top()));
  }

  /** Adds the underside of a log, from its right end back to its left one. */
  private void under(FilledPlace log, List<Spot> outline) {
    double shoulder = centre(log) - notch(log).lower().inches();
    double right = end(log, true);
    double left = end(log, false);
    outline.add(new Spot(length(), Math.max(right, centre(log) - radius(log, length()))));
    double inRight = shoulder - deeper(log, true);
    outline.add(new Spot(rightFace(), Math.max(inRight, centre(log) - radius(log, rightFace()))));
    double[] stations = stations();
    for (int i = stations.length - 1; i >= 0; i--) {
      outline.add(new Spot(stations[i], belly(log, stations[i])));
    }
    double inLeft = shoulder - deeper(log, false);
    outline.add(new Spot(leftFace(), Math.max(inLeft, centre(log) - radius(log, leftFace()))));
    outline.add(new Spot(0, Math.max(left, centre(log) - radius(log, 0))));
  }

  /** Returns how much lower the underside is at the shoulder of an end than its mark LOWER. */
  private double deeper(FilledPlace log, boolean start) {
    return drains(start) ? notch(log).drop(crossing(start).thickness()).inches() : 0;
  }

  private Wall crossing(boolean start) {
    return start ? stack.building().before(wall) : stack.building().after(wall);
  }

  /** Returns the height of this wall's underside at a trimmed end. */
  private double end(FilledPlace log, boolean start) {
    double lower = notch(log).lower().inches();
    return drains(start) ? centre(log) - lower : end(log, crossing(start));
  }

  /** Returns the height of the underside at the trimmed end over a crossing wall. */
  private double end(FilledPlace log, Wall crossing) {
    boolean flat = FaceCase.special(stack, log) == FaceCase.Special.BED_WHOLE;
    Length depth =
        flat
            ? notch(log).lower()
            : notch(log).lowerEnd(crossing.thickness(), stack.rules().overhang());
    return centre(log) - depth.inches();
  }

  /**
   * Returns how far the end grain of a log that crosses this wall reaches below its centre line.
   */
  private double endDepth(FilledPlace log) {
    return centre(log) - end(log, wall);
  }

  /** Returns the places, face to face, at which curved outlines are measured. */
  private double[] stations() {
    double[] stations = new double[PARTS + 1];
    stations[0] = leftFace();
    double step = (rightFace() - leftFace()) / PARTS;
    for (int i = 1; i <= PARTS; i++) {
      stations[i] = stations[i - 1] + step;
    }
    return stations;
  }

  /** Returns half the natural diameter at a place along the wall. */
  private double radius(FilledPlace log, double x) {
    Length from = Length.of(x, LengthUnit.INCH);
    return log.fromLeft(from).inches() / 2;
  }

  private Notch notch(FilledPlace log) {
    return stack.courses().get(log.round() - 1).notch();
  }

  private static double clamp(double value, double most) {
    return Math.max(0, Math.min(most, value));
  }
}
