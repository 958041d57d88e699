package roundbook.picture.ground;

import java.util.List;
import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.DrawingFault;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.units.Length;

/**
 * The foundation seen from above, with the height of its top under both walls at each corner.
 *
 * <p>Walls laid second lie half a course higher, so under them the foundation is higher by one neck
 * of the first round, where both first logs are sawn flat. The higher part is hatched; the corners
 * belong to the walls laid first.
 */
public final class FoundationDrawing {
  static final double WIDTH = 250;
  static final double HEIGHT = 132;

  private static final double SMALL = 12;
  private static final double NUMBER = 12;
  private static final double WALL = 14;
  private static final Box OUTSIDE = new Box(34, 14, WIDTH - 34, HEIGHT - 14);

  /** Pens in a row take the whole width, and their walls are drawn thinner. */
  private static final Box ROW = new Box(13, 16, WIDTH - 13, HEIGHT - 16);

  private static final double ROW_WALL = 7;

  private final Building building;
  private final GroundPlan ground;
  private final double thick;
  private final Length step;
  private final Wording wording;
  private final Canvas canvas = new Canvas(WIDTH, HEIGHT, SMALL);

  /**
   * Creates the drawing.
   *
   * @param building its walls
   * @param step by how much the foundation is higher under the walls laid second
   * @param wording how lengths and words are printed
   * @throws DrawingFault if a pen of it is no ring of four walls
   */
  public FoundationDrawing(Building building, Length step, Wording wording) {
    this.building = building;
    boolean row = building.pens().size() > 1;
    this.ground = new GroundPlan(building, row ? ROW : OUTSIDE);
    this.thick = row ? ROW_WALL : WALL;
    this.step = step;
    this.wording = wording;
  }

  /** Returns the sheet. */
  public Canvas draw() {
    List<Wall> walls = building.walls();
    walls.stream().filter(wall -> !wall.laidFirst()).forEach(this::wall);
    walls.stream().filter(Wall::laidFirst).forEach(this::wall);
    walls.stream().filter(wall -> !wall.isPartition()).forEach(this::corner);
    walls.forEach(this::heights);
    return canvas;
  }

  /** Returns the words for those who cannot see the drawing. */
  public String altText() {
    List<String> heights =
        building.walls().stream().map(wall -> wall.name() + " " + height(wall)).toList();
    return wording.say("foundation.alt", String.join(", ", heights), wording.unit());
  }

  private void wall(Wall wall) {
    boolean high = !wall.laidFirst() && !step.isZero();
    canvas.shape(Line.NORMAL, strip(wall).corners(), high ? Ink.HATCH : Ink.WHITE);
  }

  /** Writes the name of a wall's first corner outside of it. */
  private void corner(Wall wall) {
    Spot at = ground.start(wall);
    Box pen = ground.pen(wall);
    boolean left = at.x() < pen.middle().x();
    boolean top = at.y() < pen.middle().y();
    Spot outside = at.plus(left ? -4 : 4, top ? 6 : -6);
    if (ground.isRow()) {
      outside = at.plus(0, top ? -8 : 8);
    }
    Label label = Label.of(building.startCorner(wall), ground.isMore() ? 10 : 13, outside).bold();
    canvas.write(label.across(ground.isRow() ? 0.5 : left ? 1 : 0).within(28));
  }

  /**
   * Writes the height of a wall's foundation inside of it, at both of its corners, and its name.
   */
  private void heights(Wall wall) {
    Spot start = ground.start(wall);
    Spot end = ground.end(wall);
    boolean upright = GroundPlan.isUpright(start, end);
    Spot middle = ground.pen(wall).middle();
    if (ground.isMore()) {
      boolean crossed = !building.saddles(wall).isEmpty();
      Spot at = along(start, end, crossed ? ground.free(wall) : wall.isPartition() ? 0.3 : 0.5);
      double past = 4 + (wall.isPartition() ? thick / 2 : thick);
      Spot in = upright ? at.plus(side(wall) * past, 0) : inwards(at, middle, false);
      boolean brief = upright && ground.isRow();
      String both = brief ? wall.name() : wall.name() + " " + height(wall);
      double across = !upright ? 0.5 : side(wall) < 0 ? 1 : 0;
      canvas.write(Label.of(both, NUMBER - 2.5, in).bold().across(across).within(48));
      if (brief) {
        canvas.write(Label.of(height(wall), 9, in.plus(0, 12)).across(across).within(34));
      }
      return;
    }
    for (double part : upright ? new double[] {0.38, 0.62} : new double[] {0.24, 0.76}) {
      number(height(wall), inwards(along(start, end, part), middle, upright));
    }
    Spot name = inwards(along(start, end, 0.5), middle, upright);
    canvas.write(Label.of(wall.name(), NUMBER, name).bold().across(across(name, upright)));
  }

  /** Returns on which side of an upright wall there is room: right of it, or left at the right. */
  private int side(Wall wall) {
    return ground.start(wall).x() > ground.pen(wall).middle().x() && !wall.isPartition() ? -1 : 1;
  }

  private void number(String text, Spot at) {
    boolean side = Math.abs(at.x() - OUTSIDE.middle().x()) > OUTSIDE.width() / 4;
    double across = !side ? 0.5 : at.x() < OUTSIDE.middle().x() ? 0 : 1;
    canvas.write(Label.of(text, NUMBER, at).bold().across(across).within(56).uncut());
  }

  private static double across(Spot at, boolean upright) {
    return !upright ? 0.5 : at.x() < OUTSIDE.middle().x() ? 0 : 1;
  }

  private static Spot along(Spot start, Spot end, double part) {
    return start.plus(part * (end.x() - start.x()), part * (end.y() - start.y()));
  }

  /** Returns a point of a wall's outer edge moved in, past the wall. */
  private Spot inwards(Spot at, Spot middle, boolean upright) {
    double in = thick + (upright ? 5 : 10);
    double right = upright ? Math.signum(middle.x() - at.x()) * in : 0;
    double down = upright ? 0 : Math.signum(middle.y() - at.y()) * in;
    return at.plus(right, down);
  }

  private String height(Wall wall) {
    return wall.laidFirst() || step.isZero() ? "0" : "+" + wording.mark(step);
  }

  private Box strip(Wall wall) {
    Box all = Box.around(List.of(ground.start(wall), ground.end(wall)));
    Box pen = ground.pen(wall);
    boolean upright = all.width() < 1;
    if (wall.isPartition()) {
      double x = upright ? thick / 2 : 0;
      double y = upright ? 0 : thick / 2;
      return new Box(all.left() - x, all.top() - y, all.right() + x, all.bottom() + y);
    }
    if (upright) {
      boolean left = all.left() < pen.middle().x();
      double from = left ? all.left() : all.left() - thick;
      return new Box(from, all.top(), from + thick, all.bottom());
    }
    boolean top = all.top() < pen.middle().y();
    double from = top ? all.top() : all.top() - thick;
    return new Box(all.left(), from, all.right(), from + thick);
  }
}
