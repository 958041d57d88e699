package roundbook.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import roundbook.picture.FaceCase.End;
import roundbook.picture.FaceCase.Special;

/**
 * One face of a log: both ends, broken in the middle, centre line level.
 *
 * <p>Heights are fixed places above and below the centre line in the right order, not to scale.
 */
final class FaceStrip {
  static final double BUTT_HALF = 36;
  static final double TIP_HALF = 33;
  static final double UPPER_INSIDE = 23;
  static final double UPPER_OUTSIDE = 13;
  static final double UPPER_BELOW = -7;
  static final double LOWER = 15;
  static final double LOWER_CORNER = 23;
  static final double LOWER_END = 27;

  private static final double MARGIN = 54;
  private static final double CENTRE = 55;
  private static final double BREAK = 9;

  private final FaceDrawing drawing;
  private final boolean inside;
  private final double top;

  FaceStrip(FaceDrawing drawing, boolean inside, double top) {
    this.drawing = drawing;
    this.inside = inside;
    this.top = top;
  }

  double top() {
    return top;
  }

  /** Returns the height of the centre line on the sheet. */
  double centre() {
    return top + CENTRE;
  }

  /** Returns whether the butt lies left, looking at this face. */
  boolean buttLeft() {
    return drawing.faces().buttAtStart() == inside;
  }

  /** Returns how high the upper mark of this face is drawn. */
  double upper() {
    if (inside) {
      return UPPER_INSIDE;
    }
    FaceCase faces = drawing.faces();
    return faces.notch().upperOutside(faces.thickness()).isNegative() ? UPPER_BELOW : UPPER_OUTSIDE;
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
    Spot from = new Spot(MARGIN - 14, centre());
    canvas.line(Line.CENTRE, from, new Spot(FaceDrawing.WIDTH - MARGIN + 14, centre()));
    words();
  }

  /** Returns the butt end or the tip end, on the side where it lies on this face. */
  private FaceEnd end(boolean butt) {
    FaceCase faces = drawing.faces();
    End end = butt ? faces.butt() : faces.tip();
    boolean left = butt == buttLeft();
    return new FaceEnd(this, end, butt, left ? MARGIN : FaceDrawing.WIDTH - MARGIN, left ? 1 : -1);
  }

  /** Returns the uncut log, thicker at its butt. */
  private List<Spot> outline() {
    double leftHalf = buttLeft() ? BUTT_HALF : TIP_HALF;
    double rightHalf = buttLeft() ? TIP_HALF : BUTT_HALF;
    double right = FaceDrawing.WIDTH - MARGIN;
    return List.of(
        new Spot(MARGIN, centre() - leftHalf),
        new Spot(right, centre() - rightHalf),
        new Spot(right, centre() + rightHalf),
        new Spot(MARGIN, centre() + leftHalf));
  }

  /** Hatches what is sawn off underneath where the log lies flat on its bed. */
  private void bed() {
    Special special = drawing.faces().special();
    if (special != Special.BED_WHOLE && special != Special.BED_BETWEEN) {
      return;
    }
    double reach = special == Special.BED_WHOLE ? 0 : FaceEnd.SHOULDER;
    double left = MARGIN + reach;
    double right = FaceDrawing.WIDTH - MARGIN - reach;
    List<Spot> waste =
        List.of(
            new Spot(left, centre() + LOWER),
            new Spot(right, centre() + LOWER),
            new Spot(right, bottom(right)),
            new Spot(left, bottom(left)));
    drawing.canvas().shape(Line.NORMAL, waste, Ink.HATCH);
  }

  /** Returns the underside of the uncut log at a place along it. */
  double bottom(double x) {
    double part = (x - MARGIN) / (FaceDrawing.WIDTH - 2 * MARGIN);
    double fromButt = buttLeft() ? part : 1 - part;
    return centre() + BUTT_HALF - fromButt * (BUTT_HALF - TIP_HALF);
  }

  /** Wipes out a zigzag in the middle: the log is longer than it is drawn. */
  private void breakOut() {
    double middle = FaceDrawing.WIDTH / 2;
    List<Spot> left = zigzag(middle - BREAK / 2);
    List<Spot> right = zigzag(middle + BREAK / 2);
    List<Spot> gap = new ArrayList<>(left);
    for (int i = right.size() - 1; i >= 0; i--) {
      gap.add(right.get(i));
    }
    drawing.canvas().fill(gap, Ink.WHITE);
    drawing.canvas().line(Line.THIN, left);
    drawing.canvas().line(Line.THIN, right);
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

  /** Writes which way the crown goes, what is kept, and what is special about the log. */
  private void words() {
    double middle = FaceDrawing.WIDTH / 2;
    Canvas canvas = drawing.canvas();
    Spot crown = new Spot(middle - 100, centre() - 8);
    Arrows.pointer(canvas, crown, crown.plus(0, -22), 9);
    word("faces.crown", 14, middle - 88, -19);
    word("faces.keep", 11, middle + 14, -19);
    word("faces.centre", 8.5, middle + 14, 7);
    String special = "faces." + drawing.faces().special().name().toLowerCase(Locale.ROOT);
    if (drawing.faces().special() != Special.NONE) {
      Label label =
          Label.of(drawing.wording().say(special), 10, new Spot(middle - 108, centre() + 24));
      canvas.write(label.bold().within(212).on(Label.Ground.CLEAR));
    }
  }

  private void word(String key, double size, double x, double below) {
    Label label = Label.of(drawing.wording().say(key), size, new Spot(x, centre() + below));
    drawing.canvas().write((size > 12 ? label.bold() : label).within(size > 12 ? 80 : 104));
  }
}
