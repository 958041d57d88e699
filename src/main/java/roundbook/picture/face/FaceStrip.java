package roundbook.picture.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.face.FaceCase.End;
import roundbook.picture.face.FaceCase.Special;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;

/**
 * One face of a log: both ends, broken in the middle, centre line level.
 *
 * <p>Heights are fixed places above and below the centre line in the right order, not to scale.
 */
final class FaceStrip {
  static final double WIDTH = 510;
  static final double HEIGHT = 125;
  static final double BUTT_HALF = 41;
  static final double TIP_HALF = 38;
  static final double UPPER_INSIDE = 28;
  static final double UPPER_OUTSIDE = 18;
  static final double UPPER_BELOW = -8;
  static final double LOWER = 18;
  static final double LOWER_END = 32;
  static final double CENTRE = 64;

  private static final double MARGIN = 58;
  private static final double BAND = 33;
  private static final double BREAK = 9;

  private final FaceDrawing drawing;
  private final boolean inside;
  private final double left;

  FaceStrip(FaceDrawing drawing, boolean inside, double left) {
    this.drawing = drawing;
    this.inside = inside;
    this.left = left;
  }

  double left() {
    return left;
  }

  /** Returns the height of the centre line on the sheet. */
  double centre() {
    return CENTRE;
  }

  /** Returns where the trimmed end at the left, or at the right, is drawn. */
  private double edge(boolean atLeft) {
    return atLeft ? left + MARGIN : left + WIDTH - MARGIN;
  }

  private double middle() {
    return left + WIDTH / 2;
  }

  /** Returns whether the butt lies left, looking at this face. */
  boolean buttLeft() {
    return drawing.faces().buttAtStart() == inside;
  }

  /** Returns how high the upper mark of this face is drawn at an end. */
  double upper(End end) {
    if (inside || end.level()) {
      return UPPER_INSIDE;
    }
    return drawing.faces().upperOutside(end).isNegative() ? UPPER_BELOW : UPPER_OUTSIDE;
  }

  /** Returns whether this is the inside face. */
  boolean inside() {
    return inside;
  }

  FaceDrawing drawing() {
    return drawing;
  }

  /** Draws the log, both its ends, the break and the words in the middle. */
  void draw() {
    Canvas canvas = drawing.canvas();
    canvas.outline(Line.NORMAL, outline());
    bed();
    end(true).draw();
    end(false).draw();
    breakOut();
    Spot from = new Spot(edge(true) - 14, centre());
    canvas.line(Line.CENTRE, from, new Spot(edge(false) + 14, centre()));
    words();
  }

  /** Returns the butt end or the tip end, on the side where it lies on this face. */
  private FaceEnd end(boolean butt) {
    FaceCase faces = drawing.faces();
    End end = butt ? faces.butt() : faces.tip();
    boolean atLeft = butt == buttLeft();
    return new FaceEnd(this, end, butt, edge(atLeft), atLeft ? 1 : -1);
  }

  /** Returns the uncut log, thicker at its butt. */
  private List<Spot> outline() {
    double leftHalf = buttLeft() ? BUTT_HALF : TIP_HALF;
    double rightHalf = buttLeft() ? TIP_HALF : BUTT_HALF;
    return List.of(
        new Spot(edge(true), centre() - leftHalf),
        new Spot(edge(false), centre() - rightHalf),
        new Spot(edge(false), centre() + rightHalf),
        new Spot(edge(true), centre() + leftHalf));
  }

  /** Hatches what is sawn off underneath where the log lies flat on its bed. */
  private void bed() {
    Special special = drawing.faces().special();
    if (special != Special.BED_WHOLE && special != Special.BED_BETWEEN) {
      return;
    }
    double reach = special == Special.BED_WHOLE ? 0 : FaceEnd.SHOULDER;
    double from = edge(true) + reach;
    double to = edge(false) - reach;
    List<Spot> waste =
        List.of(
            new Spot(from, centre() + LOWER),
            new Spot(to, centre() + LOWER),
            new Spot(to, bottom(to)),
            new Spot(from, bottom(from)));
    drawing.canvas().shape(Line.NORMAL, waste, Ink.HATCH);
  }

  /** Returns the underside of the uncut log at a place along it. */
  double bottom(double x) {
    double part = (x - edge(true)) / (WIDTH - 2 * MARGIN);
    double fromButt = buttLeft() ? part : 1 - part;
    return centre() + BUTT_HALF - fromButt * (BUTT_HALF - TIP_HALF);
  }

  /** Wipes out a zigzag in the middle: the log is longer than it is drawn. */
  private void breakOut() {
    List<Spot> one = zigzag(middle() - BREAK / 2);
    List<Spot> other = zigzag(middle() + BREAK / 2);
    List<Spot> gap = new ArrayList<>(one);
    for (int i = other.size() - 1; i >= 0; i--) {
      gap.add(other.get(i));
    }
    drawing.canvas().fill(gap, Ink.WHITE);
    drawing.canvas().line(Line.THIN, one);
    drawing.canvas().line(Line.THIN, other);
  }

  private List<Spot> zigzag(double x) {
    double reach = BUTT_HALF + 4;
    return List.of(
        new Spot(x + 3, centre() - reach),
        new Spot(x - 3, centre() - 10),
        new Spot(x + 4, centre() - 3),
        new Spot(x - 4, centre() + 3),
        new Spot(x + 3, centre() + 10),
        new Spot(x - 3, centre() + reach));
  }

  /** Writes which way the crown goes, what is kept or special, and what the middle line is. */
  private void words() {
    Special special = drawing.faces().special();
    String crown = "▲ " + say("crown");
    String said = special == Special.NONE ? "" : say(special.name().toLowerCase(Locale.ROOT));
    boolean differ = drawing.changes().differ();
    boolean top = special == Special.TOP_FREE;
    word(!said.isEmpty() && (differ || top) ? said : crown, -BAND);
    if (!differ) {
      word(said.isEmpty() || top ? say("keep") : said, LOWER_END - 1.8);
    }
    double room = FaceEnd.SHOULDER - FaceEnd.CORNER - 8;
    Spot above = new Spot(edge(true) + FaceEnd.CORNER + 5, centre() - 8);
    drawing.canvas().write(Label.of(say("centre"), FaceDrawing.SMALL, above).within(room));
  }

  private String say(String key) {
    return drawing.wording().say("faces." + key);
  }

  /** Writes words in the middle of the log, between the dimensions of its corner lines. */
  private void word(String text, double below) {
    double room = WIDTH - 2 * (MARGIN + FaceEnd.CORNER) - 12;
    Label label = Label.of(text, FaceDrawing.SMALL, new Spot(middle(), centre() + below)).bold();
    drawing.canvas().write(label.centred().within(room).on(Label.Ground.CLEAR));
  }
}
