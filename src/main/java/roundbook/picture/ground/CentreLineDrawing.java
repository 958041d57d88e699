package roundbook.picture.ground;

import java.util.List;
import roundbook.picture.canvas.Arrows;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;

/**
 * How the centre line of a tapered log is found and snapped on both faces: every mark is measured
 * from it.
 *
 * <p>At each end a plumb line halves the thickness; half of the height on it is the centre, level
 * across to both faces; the chalk line runs from end to end (common practice).
 */
public final class CentreLineDrawing {
  static final double WIDTH = 720;
  static final double HEIGHT = 58;

  private static final double SMALL = 9.4;
  private static final double AXIS = 29;
  private static final double BUTT = 24;
  private static final double TIP = 17;
  private static final double THICKNESS = 24;
  private static final double STEEP = 0.78;
  private static final double BUTT_END = 36;
  private static final double TIP_END = 434;
  private static final double FACE_FROM = 86;
  private static final double FACE_TO = 386;
  private static final double TEXT = 476;

  private final Wording wording;
  private final Canvas canvas = new Canvas(WIDTH, HEIGHT, SMALL);

  /** Creates the drawing with the words of a workbook. */
  public CentreLineDrawing(Wording wording) {
    this.wording = wording;
  }

  /** Returns the sheet: the butt's end, a face, the tip's end, and what to do. */
  public Canvas draw() {
    end(BUTT_END, BUTT, "●");
    face();
    end(TIP_END, TIP, "○");
    for (int step = 1; step <= 4; step++) {
      Spot at = new Spot(TEXT, 7 + (step - 1) * 14.5);
      canvas.write(Label.of(wording.say("centre." + step), SMALL, at).within(WIDTH - TEXT - 2));
    }
    return canvas;
  }

  /** Returns the words for those who cannot see the drawing. */
  public String altText() {
    return wording.say("centre.alt");
  }

  /** Draws the end grain of a log that is flat on both sides, with the two lines across it. */
  private void end(double middle, double half, String sign) {
    double side = THICKNESS / 2;
    double flat = half * STEEP;
    canvas.shape(
        Line.NORMAL,
        List.of(
            new Spot(middle - side, AXIS - flat),
            new Spot(middle - side / 2, AXIS - half + 1),
            new Spot(middle, AXIS - half),
            new Spot(middle + side / 2, AXIS - half + 1),
            new Spot(middle + side, AXIS - flat),
            new Spot(middle + side, AXIS + flat),
            new Spot(middle + side / 2, AXIS + half - 1),
            new Spot(middle, AXIS + half),
            new Spot(middle - side / 2, AXIS + half - 1),
            new Spot(middle - side, AXIS + flat)),
        Ink.WHITE);
    canvas.line(Line.DASHED, new Spot(middle, AXIS - half), new Spot(middle, AXIS + half));
    canvas.line(Line.HEAVY, new Spot(middle - side, AXIS), new Spot(middle + side, AXIS));
    double beside = middle + (sign.equals("●") ? -1 : 1) * (side + 9);
    Arrows.dimension(canvas, new Spot(beside, AXIS - half), new Spot(beside, AXIS));
    Arrows.dimension(canvas, new Spot(beside, AXIS), new Spot(beside, AXIS + half));
    double letter = beside + (sign.equals("●") ? -9 : 9);
    canvas.write(Label.of("½", 10, new Spot(letter, AXIS - half / 2)).centred());
    canvas.write(Label.of("½", 10, new Spot(letter, AXIS + half / 2)).centred());
  }

  /** Draws a face, thicker at the butt, with the centre line snapped from end to end. */
  private void face() {
    canvas.shape(
        Line.NORMAL,
        List.of(
            new Spot(FACE_FROM, AXIS - BUTT),
            new Spot(FACE_TO, AXIS - TIP),
            new Spot(FACE_TO, AXIS + TIP),
            new Spot(FACE_FROM, AXIS + BUTT)),
        Ink.WHITE);
    canvas.line(Line.HEAVY, new Spot(FACE_FROM - 8, AXIS), new Spot(FACE_TO + 8, AXIS));
    double middle = (FACE_FROM + FACE_TO) / 2;
    double room = FACE_TO - FACE_FROM - 90;
    write(wording.say("centre.line"), middle, -9, room);
    write(wording.say("centre.faces"), middle, 9, room);
    canvas.write(Label.of("●", 12, new Spot(FACE_FROM + 12, AXIS - 11)).centred());
    canvas.write(Label.of("○", 12, new Spot(FACE_TO - 12, AXIS - 9)).centred());
  }

  private void write(String text, double middle, double below, double room) {
    Spot at = new Spot(middle, AXIS + below);
    canvas.write(Label.of(text, SMALL, at).bold().centred().within(room));
  }
}
