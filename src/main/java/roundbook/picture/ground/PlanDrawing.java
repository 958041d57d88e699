package roundbook.picture.ground;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.picture.canvas.Arrows;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.DrawingFault;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;

/** The building seen from above: its walls, their corners, where each butt lies. */
public final class PlanDrawing {
  static final double WIDTH = 176;
  static final double HEIGHT = 124;

  private static final double SMALL = 9.4;
  private static final double MANY = 9.4;
  private static final double LOG = 11;
  private static final double PAST = 8;
  private static final double UPRIGHT_ROOM = 30;
  private static final double LEVEL_ROOM = 84;
  private static final Box WALLS = new Box(36, 24, WIDTH - 36, HEIGHT - 26);

  /** Pens in a row take the whole width, and their logs are drawn thinner. */
  private static final Box ROW = new Box(13, 24, WIDTH - 13, HEIGHT - 24);

  private static final double ROW_LOG = 6;
  private static final double ROW_PAST = 4;
  private static final double ROW_SMALL = 8;

  private final Building building;
  private final GroundPlan ground;
  private final Wording wording;
  private final Canvas canvas = new Canvas(WIDTH, HEIGHT, SMALL);

  /**
   * Creates the plan of a building.
   *
   * @param building its walls
   * @param wording how words are printed
   * @throws DrawingFault if a pen of it is no ring of four walls
   */
  public PlanDrawing(Building building, Wording wording) {
    this.building = building;
    this.ground = new GroundPlan(building, building.pens().size() > 1 ? ROW : WALLS);
    this.wording = wording;
  }

  /** Returns the sheet with the logs of a round. */
  public Canvas draw(Course course) {
    List<Wall> walls = building.walls();
    walls.stream().filter(Wall::laidFirst).forEach(wall -> log(course, wall));
    walls.stream().filter(wall -> !wall.laidFirst()).forEach(wall -> log(course, wall));
    walls.forEach(wall -> corner(wall, ground.start(wall), building.startCorner(wall)));
    walls.stream()
        .filter(wall -> building.saddle(wall, false).isPresent())
        .forEach(wall -> corner(wall, ground.end(wall), building.endCorner(wall)));
    walls.forEach(wall -> name(course, wall));
    middle(course);
    return canvas;
  }

  /** Returns the words for those who cannot see the drawing. */
  public String altText(Course course) {
    List<String> butts =
        course.places().stream()
            .map(place -> place.wall().name() + " " + place.buttCorner(building))
            .toList();
    return wording.say("plan.alt", course.round(), run(course), String.join(", ", butts));
  }

  /** Draws a wall as a log with an arrow from its butt to its tip. */
  private void log(Course course, Wall wall) {
    PlanSide side = side(wall);
    canvas.shape(Line.NORMAL, side.log(log(), past()), Ink.WHITE);
    Optional<FilledPlace> placed = course.on(wall);
    if (placed.isEmpty()) {
      return;
    }
    List<PlacedLog> logs = placed.get().logs();
    if (logs.size() == 1) {
      butt(side, logs.get(0), 0.13, 0.87);
      boolean atStart = logs.get(0).buttAtStart();
      sign("○", side.along(atStart ? 0.915 : 0.085));
      return;
    }
    butt(side, logs.get(1), 0.11, 0.4);
    butt(side, logs.get(0), 0.6, 0.89);
  }

  /** Points from the butt of a log to its tip, between two parts of a side. */
  private void butt(PlanSide side, PlacedLog log, double from, double to) {
    Spot butt = side.along(log.buttAtStart() ? from : to);
    double head = ground.isRow() ? 6 : 9;
    Arrows.pointer(canvas, butt, side.along(log.buttAtStart() ? to : from), head);
    sign("●", butt);
  }

  /** Writes a sign on a white field, so that the arrow does not run through it. */
  private void sign(String sign, Spot at) {
    double half = ground.isRow() ? 2.5 : 5;
    Box field = new Box(at.x() - half, at.y() - half, at.x() + half, at.y() + half);
    canvas.fill(field, Ink.WHITE);
    canvas.write(Label.of(sign, ground.isRow() ? 7 : 12, at).centred());
  }

  /** Writes the name of a corner outside of it. */
  private void corner(Wall wall, Spot corner, String name) {
    Box pen = ground.pen(wall);
    double right = corner.x() < pen.middle().x() ? -1 : 1;
    double down = corner.y() < pen.middle().y() ? -1 : 1;
    if (ground.isRow()) {
      boolean past = isPast(wall, name);
      Spot at = past ? corner.plus(-6 * right, -11 * down) : corner.plus(0, down * (ROW_PAST + 9));
      double across = !past ? 0.5 : right > 0 ? 1 : 0;
      canvas.write(Label.of(name, MANY, at).bold().across(across).within(34));
      return;
    }
    if (wall.isPartition()) {
      boolean level = side(wall).upright();
      Spot at = level ? corner.plus(0, down * (PAST + 6)) : corner.plus(right * (PAST + 3), 0);
      double across = level ? 0.5 : right < 0 ? 1 : 0;
      canvas.write(Label.of(name, MANY, at).bold().across(across).within(27));
      return;
    }
    Spot at = corner.plus(right * (PAST + 4), down * (PAST + 5));
    Label label = Label.of(name, ground.isMore() ? MANY : 13, at).bold();
    canvas.write(label.across(right < 0 ? 1 : 0).within(27));
  }

  /** Returns whether another wall goes on past a corner, where its name would lie on that. */
  private boolean isPast(Wall wall, String corner) {
    return !wall.isPartition()
        && Stream.of(true, false)
            .flatMap(start -> building.saddle(wall, start).stream())
            .anyMatch(saddle -> !saddle.inward() && building.corner(saddle).equals(corner));
  }

  /** Writes the name of a wall and the tag of its log inside of it. */
  private void name(Course course, Wall wall) {
    PlanSide side = side(wall);
    String tag = course.on(wall).map(FilledPlace::tags).orElse("");
    boolean crossed = !building.saddles(wall).isEmpty();
    if (ground.isRow()) {
      inRow(side, wall, tag);
      return;
    }
    boolean between = wall.isPartition() && !side.upright();
    double part = !crossed ? 0.5 : between ? 0.75 : 0.27;
    Spot at = side.inwards(side.along(part), side.upright() ? 9 : 14);
    if (ground.isMore()) {
      more(side, wall.name(), tag, at);
      return;
    }
    if (!side.upright()) {
      String both = (wall.name() + "  " + tag).strip();
      canvas.write(Label.of(both, 12, at).bold().centred().within(LEVEL_ROOM));
      return;
    }
    double across = at.x() < WALLS.middle().x() ? 0 : 1;
    Label name = Label.of(wall.name(), 12, at.plus(0, -7)).bold().across(across);
    canvas.write(name.within(UPRIGHT_ROOM));
    canvas.write(Label.of(tag, SMALL, at.plus(0, 7)).across(across).within(UPRIGHT_ROOM));
  }

  /** Writes name and tag small, for there is room for a few letters only. */
  private void more(PlanSide side, String wall, String tag, Spot at) {
    if (!side.upright()) {
      canvas.write(Label.of((wall + " " + tag).strip(), MANY, at).bold().centred().within(56));
      return;
    }
    double across = side.end().y() > side.start().y() ? 1 : 0;
    canvas.write(Label.of(wall, MANY, at.plus(0, -6)).bold().across(across).within(22));
    canvas.write(Label.of(tag, MANY - 1.4, at.plus(0, 5)).across(across).within(22));
  }

  /** Writes name and tag where pens in a row leave room: a partition's lower than the walls'. */
  private void inRow(PlanSide side, Wall wall, String tag) {
    if (!side.upright()) {
      Spot at = side.inwards(side.along(ground.free(wall)), ROW_LOG / 2 + 7);
      canvas.write(
          Label.of((wall.name() + " " + tag).strip(), ROW_SMALL, at).bold().centred().within(40));
      return;
    }
    boolean wing = building.hasWing() && wall.stand().pen() > 1;
    double height = ground.middle(wall) + (wall.isPartition() ? 12 : wing ? 0 : -12);
    boolean right = wall.isPartition() || side.start().x() < ground.pen(wall).middle().x();
    Spot at = new Spot(side.start().x() + (right ? 1 : -1) * (ROW_LOG / 2 + 2), height);
    double across = right ? 0 : 1;
    canvas.write(Label.of(wall.name(), ROW_SMALL, at.plus(0, -5)).bold().across(across).within(20));
    canvas.write(Label.of(tag, ROW_SMALL, at.plus(0, 5)).across(across).within(20));
  }

  private double log() {
    return ground.isRow() ? ROW_LOG : LOG;
  }

  private double past() {
    return ground.isRow() ? ROW_PAST : PAST;
  }

  /** Shows which way the butts run, which the page says too, and says where this is seen from. */
  private void middle(Course course) {
    Spot at = WALLS.middle();
    String turn = course.clockwise() ? "↻" : "↺";
    if (!ground.isMore()) {
      canvas.write(Label.of(turn, 20, at).centred());
      Spot foot = new Spot(at.x(), HEIGHT - 7);
      canvas.write(Label.of(wording.say("plan.above"), SMALL, foot).centred().within(100));
    }
  }

  private String run(Course course) {
    return wording.say(course.clockwise() ? "plan.clockwise" : "plan.counterclockwise");
  }

  private PlanSide side(Wall wall) {
    return new PlanSide(ground.start(wall), ground.end(wall));
  }

  /**
   * One side of the plan, clockwise.
   *
   * @param start its first corner
   * @param end its last corner
   */
  private record PlanSide(Spot start, Spot end) {
    /** Returns whether the side runs up or down the sheet. */
    boolean upright() {
      return GroundPlan.isUpright(start, end);
    }

    /** Returns the point a part of the way from the first corner to the last. */
    Spot along(double part) {
      double x = start.x() + part * (end.x() - start.x());
      return new Spot(x, start.y() + part * (end.y() - start.y()));
    }

    /** Returns a point moved towards the inside, which lies right of the way. */
    Spot inwards(Spot at, double by) {
      double length = Math.abs(end.x() - start.x()) + Math.abs(end.y() - start.y());
      double right = -(end.y() - start.y()) / length * by;
      return at.plus(right, (end.x() - start.x()) / length * by);
    }

    /** Returns the outline of the log, its ends past the corners. */
    List<Spot> log(double thick, double past) {
      return grown(Box.around(List.of(start, end)), thick, past).corners();
    }

    private Box grown(Box box, double thick, double past) {
      double x = upright() ? thick / 2 : past;
      double y = upright() ? past : thick / 2;
      return new Box(box.left() - x, box.top() - y, box.right() + x, box.bottom() + y);
    }
  }
}
