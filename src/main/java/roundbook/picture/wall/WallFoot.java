package roundbook.picture.wall;

import roundbook.job.Building;
import roundbook.job.Wall;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;

/** What stands under a wall drawing: corner names and a scale. */
final class WallFoot {
  private static final double SMALL = WallDrawing.SMALL;

  private final WallDrawing drawing;
  private final double top;

  WallFoot(WallDrawing drawing) {
    this.drawing = drawing;
    this.top = drawing.on(0, 0).y();
  }

  /** Draws all of it. */
  void draw() {
    Wall wall = drawing.elevation().wall();
    Building building = drawing.stack().building();
    double left = drawing.on(0, 0).x();
    double right = drawing.on(drawing.elevation().length(), 0).x();
    corner(building.endCorner(wall), left, 0);
    corner(building.startCorner(wall), right, 1);
    scale((left + right) / 2);
  }

  /** Writes the name of a corner under its end of the wall. */
  private void corner(String name, double x, double across) {
    Label label = Label.of(name, 11, new Spot(x, top + 11)).bold().across(across);
    drawing.canvas().write(label.within(40));
  }

  /** Draws a rule of five feet or a metre, so that the scale holds however it is printed. */
  private void scale(double middle) {
    boolean metric = drawing.wording().lengths().unit().metric();
    double part = (metric ? 1 / 0.0254 / 4 : 12) * drawing.scale();
    int parts = metric ? 4 : 5;
    double from = middle - parts * part / 2;
    Canvas canvas = drawing.canvas();
    for (int i = 0; i < parts; i++) {
      Box box = new Box(from + i * part, top + 24, from + (i + 1) * part, top + 28);
      canvas.shape(Line.THIN, box.corners(), i % 2 == 0 ? Ink.BLACK : Ink.WHITE);
    }
    String end = drawing.wording().say(metric ? "wall.metre" : "wall.feet");
    Spot at = new Spot(from + parts * part + 5, top + 26);
    canvas.write(Label.of(end, SMALL, at).within(110));
  }
}
