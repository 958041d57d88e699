package roundbook.picture.wall;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import roundbook.job.Opening;
import roundbook.job.Wall;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Joint;
import roundbook.stack.Stack;
import roundbook.units.Length;

/** A wall to scale, seen from outside: logs, ends, gaps, openings and heights. */
public final class WallDrawing {
  static final double WIDTH = 497;

  /** The least lettering, as large as it is printed. */
  static final double SMALL = 9.4;

  private static final double LEFT = 59;
  private static final double RIGHT = 84;
  private static final double HEAD = 8;
  private static final double FOOT = 38;
  private static final double MOST_HIGH = 320;

  /** The least height of a round that still has room for its words, in points. */
  private static final double LEAST_COURSE = 15;

  private final Elevation elevation;
  private final List<Opening> openings;
  private final Wording wording;
  private final double top;
  private final double scale;
  private final double shift;
  private final Canvas canvas;

  /**
   * Creates the drawing of a wall.
   *
   * @param stack the courses and their heights
   * @param wall the wall
   * @param openings doors and windows; those of other walls are left out
   * @param wording how lengths and words are printed
   * @param high how high it should be at most, in points; see {@link #lowest}
   */
  public WallDrawing(Stack stack, Wall wall, List<Opening> openings, Wording wording, double high) {
    this.elevation = new Elevation(stack, wall);
    this.openings =
        openings.stream().filter(each -> each.wall().equalsIgnoreCase(wall.name())).toList();
    this.wording = wording;
    double room = WIDTH - LEFT - RIGHT;
    this.top = elevation.top();
    this.scale = Math.min(room / elevation.length(), mostHigh(high) / top);
    this.shift = LEFT + (room - scale * elevation.length()) / 2;
    this.canvas = new Canvas(WIDTH, HEAD + scale * top + FOOT, SMALL);
  }

  /** Returns how high the wall may be: as is wanted, unless its rounds would be too low. */
  private double mostHigh(double wanted) {
    boolean low = wanted < lowest(logs().size());
    return low ? MOST_HIGH : Math.min(MOST_HIGH, wanted - HEAD - FOOT);
  }

  /** Returns how low a drawing of so many rounds may be, in points. */
  public static double lowest(int rounds) {
    return HEAD + FOOT + LEAST_COURSE * rounds;
  }

  /** Returns the sheet; settling says how much space an opening wants over its frame. */
  public Canvas draw(Function<Opening, Optional<Length>> settling) {
    foundation();
    logs().forEach(log -> canvas.shape(Line.NORMAL, on(elevation.outline(log)), Ink.WHITE));
    stack().courses().forEach(this::crossingEnds);
    WallOpenings holes = new WallOpenings(this);
    openings.forEach(opening -> holes.draw(opening, settling.apply(opening)));
    WallRows rows = new WallRows(this);
    logs().forEach(log -> rows.draw(log, holes));
    for (Joint joint : stack().joints(elevation.wall())) {
      gaps(joint, holes);
    }
    openings.forEach(holes::pins);
    new WallFoot(this).draw();
    return canvas;
  }

  /** Returns the words for those who cannot see the drawing. */
  public String altText() {
    List<String> logs = logs().stream().map(log -> log.round() + " " + tag(log)).toList();
    return wording.say("wall.alt", elevation.wall().name(), String.join(", ", logs));
  }

  Canvas canvas() {
    return canvas;
  }

  Wording wording() {
    return wording;
  }

  Elevation elevation() {
    return elevation;
  }

  Stack stack() {
    return elevation.stack();
  }

  /** Returns the points of one inch. */
  double scale() {
    return scale;
  }

  /** Returns how high the lowest log is on the sheet, with the gap under it. */
  double course() {
    return elevation.leastCourse() * scale;
  }

  /** Returns the size of lettering that goes in a log, kept between two sizes. */
  double size(double part, double least, double most) {
    return Math.max(least, Math.min(most, course() * part));
  }

  /** Returns the size of the lettering of gaps. */
  double gapSize() {
    return size(0.45, SMALL, 10.5);
  }

  /** Returns a point of the wall on the sheet. */
  Spot on(double x, double z) {
    return new Spot(shift + scale * x, HEAD + scale * (top - z));
  }

  /** Returns an outline of the wall on the sheet. */
  List<Spot> on(List<Spot> outline) {
    return outline.stream().map(spot -> on(spot.x(), spot.y())).toList();
  }

  List<FilledPlace> logs() {
    return elevation.logs();
  }

  /** Returns the tag of a placed log. */
  static String tag(FilledPlace log) {
    return log.tags();
  }

  /** Draws what stands under the wall between the corners, and the level of the first bed. */
  private void foundation() {
    double top = elevation.foundation();
    Spot low = on(elevation.leftFace(), 0);
    Spot high = on(elevation.rightFace(), top);
    if (low.y() - high.y() > 1) {
      canvas.shape(Line.NORMAL, new Box(low.x(), high.y(), high.x(), low.y()).corners(), Ink.DOTS);
    }
    canvas.line(Line.HEAVY, on(0, 0).plus(-20, 0), on(elevation.length(), 0).plus(20, 0));
  }

  /** Draws the ends of a round's crossing logs over the necks that lie behind them. */
  private void crossingEnds(Course course) {
    canvas.shape(Line.NORMAL, clear(elevation.crossingEnd(course, true)), Ink.CROSS);
    canvas.shape(Line.NORMAL, clear(elevation.crossingEnd(course, false)), Ink.CROSS);
    elevation.tails(course).forEach(tail -> canvas.shape(Line.NORMAL, clear(tail), Ink.CROSS));
  }

  private List<Spot> clear(List<Spot> outline) {
    List<Spot> placed = on(outline);
    canvas.fill(placed, Ink.WHITE);
    return placed;
  }

  /** Writes the gap of a joint at both inside faces and in the middle. */
  private void gaps(Joint joint, WallOpenings holes) {
    double size = gapSize();
    gap(joint, holes, new GapLabel(elevation.leftFace(), 0, joint.left(), size));
    gap(joint, holes, new GapLabel(elevation.length() / 2, 0.5, joint.middle(), size));
    gap(joint, holes, new GapLabel(elevation.rightFace(), 1, joint.right(), size));
  }

  /** Writes a gap on its joint unless an opening takes the place; white on black when flagged. */
  private void gap(Joint joint, WallOpenings holes, GapLabel station) {
    Joint.Flag flag = Joint.flag(station.gap(), stack().rules());
    String text = (flag.symbol() + " " + wording.mark(station.gap())).strip();
    double middle = elevation.crown(joint.lower(), station.x()) + station.gap().inches() / 2;
    Spot at = on(station.x(), middle).plus(5 - 10 * station.across(), 0);
    Label label = Label.of(text, station.size(), at).bold().across(station.across());
    boolean plain = flag == Joint.Flag.NONE;
    label = label.on(plain ? Label.Ground.CLEAR : Label.Ground.REVERSED);
    if (!holes.cover(label.box())) {
      canvas.writeIfFree(label);
    }
  }

  /**
   * Where a gap is written.
   *
   * @param x inches from the left trimmed end
   * @param across which part of the text lies left of it
   * @param gap the gap there
   * @param size of the lettering
   */
  private record GapLabel(double x, double across, Length gap, double size) {}
}
