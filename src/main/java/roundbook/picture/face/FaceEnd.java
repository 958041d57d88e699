package roundbook.picture.face;

import java.util.ArrayList;
import java.util.List;
import roundbook.picture.canvas.Arrows;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.face.FaceCase.End;
import roundbook.picture.face.FaceCase.Special;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.units.Length;

/** One end of a log's face: cuts, hatched waste, the marks with their numbers, butt or tip. */
final class FaceEnd {
  /** How far from the trimmed end the shoulder is drawn. */
  static final double SHOULDER = 118;

  /** How far from the trimmed end the corner line is drawn. */
  static final double CORNER = 42;

  private static final double ARROW = SHOULDER + 10;
  private static final double NUMBER = 19;
  private static final double LABEL_ROOM = 62;
  private static final double FIRST_LINE = 8.5;
  private static final double LINE = 14.2;

  private final FaceStrip strip;
  private final End end;
  private final boolean butt;
  private final double edge;
  private final int inward;
  private final Canvas canvas;

  /** Makes the end at an edge of the drawing; inward is 1 to the right, -1 to the left. */
  FaceEnd(FaceStrip strip, End end, boolean butt, double edge, int inward) {
    this.strip = strip;
    this.end = end;
    this.butt = butt;
    this.edge = edge;
    this.inward = inward;
    this.canvas = strip.drawing().canvas();
  }

  /** Draws all of it. */
  void draw() {
    upperCut();
    if (special() == Special.BED_WHOLE) {
      bedMark();
    } else {
      lowerCut();
    }
    canvas.line(Line.HEAVY, at(SHOULDER, -half() - 2), at(SHOULDER, half() + 3));
    canvas.line(Line.DASHED, at(CORNER, -half() - 1), at(CORNER, half() + 3));
    numbers();
    name();
    tape();
  }

  /** Hatches what is cut off the top; nothing where no log crosses. */
  private void upperCut() {
    if (special() == Special.TOP_FREE) {
      return;
    }
    double upper = strip.upper(end);
    List<Spot> waste =
        List.of(at(0, -upper), at(SHOULDER, -upper), at(SHOULDER, -half()), at(0, -half()));
    canvas.shape(Line.NORMAL, waste, Ink.HATCH);
  }

  /**
   * Hatches what is cut off the underside along the slope and gives the mark at the corner line.
   */
  private void lowerCut() {
    List<Spot> waste =
        List.of(at(0, outer()), at(SHOULDER, shoulder()), at(SHOULDER, half()), at(0, half()));
    canvas.shape(Line.NORMAL, waste, Ink.HATCH);
    double arrow = CORNER;
    Arrows.dimension(canvas, at(arrow, 0), at(arrow, cornerHeight()));
    Length corner = strip.drawing().faces().lowerCorner(end);
    lower(corner, CORNER + 5, 12, SHOULDER - CORNER - 8);
  }

  /** Returns where the sloping lower line crosses the corner line on the drawing. */
  private double cornerHeight() {
    return outer() + CORNER / SHOULDER * (shoulder() - outer());
  }

  /** Returns how far below the centre line the underside is drawn at the trimmed end. */
  private double outer() {
    return end.drains() ? FaceStrip.LOWER : FaceStrip.LOWER_END;
  }

  /** Returns how far below the centre line it is drawn at the shoulder. */
  private double shoulder() {
    return end.drains() ? FaceStrip.LOWER_END : FaceStrip.LOWER;
  }

  /** Says that there is no lower notch where the log lies flat. */
  private void bedMark() {
    Label label = Label.of(wording().say("faces.no_notch"), FaceDrawing.SMALL, at(CORNER + 5, 8));
    canvas.write(label.across(across()).within(SHOULDER - CORNER - 10));
  }

  /** Writes the marks at the shoulder beside arrows from the centre line. */
  private void numbers() {
    if (special() != Special.TOP_FREE) {
      upperNumber();
    }
    Arrows.dimension(canvas, at(ARROW, 0), at(ARROW, shoulder()));
    canvas.line(Line.THIN, at(SHOULDER, shoulder()), at(ARROW + 4, shoulder()));
    lower(strip.drawing().faces().lowerShoulder(end), ARROW + 6, 9.5, LABEL_ROOM);
  }

  private void upperNumber() {
    Length upper = upperMark();
    Arrows.dimension(canvas, at(ARROW, 0), at(ARROW, -strip.upper(end)));
    canvas.line(Line.THIN, at(SHOULDER, -strip.upper(end)), at(ARROW + 4, -strip.upper(end)));
    String text = wording().mark(upper.absolute());
    boolean below = upper.isNegative();
    String words = below ? wording().say("faces.below", text) : text;
    number(words, ARROW + 6, -Math.max(9, strip.upper(end) / 2), LABEL_ROOM);
  }

  /** Returns the upper mark of the face that is shown, below nought when under the centre line. */
  private Length upperMark() {
    FaceCase faces = strip.drawing().faces();
    return strip.inside() ? faces.notch().upper() : faces.upperOutside(end);
  }

  /** Writes a lower mark, or one under the other where the walls of a drawing have their own. */
  private void lower(Length chart, double along, double below, double room) {
    List<String> marks = strip.drawing().changes().marks(butt, chart, wording());
    if (marks.size() == 1) {
      number(marks.get(0), along, below, room);
      return;
    }
    List<Label> lines = new ArrayList<>();
    for (int line = 0; line < marks.size(); line++) {
      Spot at = at(along, FIRST_LINE + line * LINE);
      Label label = Label.of(marks.get(line), FaceDrawing.SMALL, at).bold();
      lines.add(label.across(across()).within(room).uncut());
    }
    lines.forEach(label -> canvas.fill(label.fitted().box(), Ink.WHITE));
    lines.forEach(canvas::write);
  }

  /** Writes a mark, never cut short. */
  private void number(String text, double along, double below, double room) {
    canvas.write(
        Label.of(text, NUMBER, at(along, below)).bold().across(across()).within(room).uncut());
  }

  /** Draws the sign and the word of this end outside of the log. */
  private void name() {
    Spot sign = new Spot(edge - inward * 30, strip.centre() - 20);
    canvas.write(Label.of(butt ? "●" : "○", 24, sign).centred());
    Spot word = new Spot(sign.x(), strip.centre() + 1);
    canvas.fill(new Box(word.x() - 26, word.y() - 7, word.x() + 26, word.y() + 7), Ink.WHITE);
    String key = butt ? "faces.butt" : "faces.tip";
    canvas.write(Label.of(wording().say(key), FaceDrawing.SMALL, word).bold().centred().within(56));
  }

  /** Writes under the log what the lines are, at the butt with their distance from it. */
  private void tape() {
    String corner = wording().say("faces.corner");
    String shoulder = wording().say("faces.shoulder");
    if (butt) {
      corner = corner + " " + wording().mark(end.overhang());
      shoulder = shoulder + " " + wording().mark(end.shoulder());
    } else {
      small(wording().say("faces.cut"), -54, 12, 52);
    }
    small(corner, butt ? -18 : 0, 12, butt ? 100 : 82);
    small(shoulder, SHOULDER - 34, 12, 112);
  }

  private void small(String text, double along, double below, double room) {
    Spot at = at(along, FaceStrip.BUTT_HALF + below);
    canvas.write(Label.of(text, FaceDrawing.SMALL, at).across(across()).within(room));
  }

  /** Returns the place so far in from the trimmed end and so far below the centre line. */
  private Spot at(double along, double below) {
    return new Spot(edge + inward * along, strip.centre() + below);
  }

  /** Returns how a text is set so that it runs inwards from its place. */
  private double across() {
    return inward > 0 ? 0 : 1;
  }

  /** Returns half the height at which this end is drawn. */
  private double half() {
    return butt ? FaceStrip.BUTT_HALF : FaceStrip.TIP_HALF;
  }

  private Special special() {
    return strip.drawing().faces().special();
  }

  private Wording wording() {
    return strip.drawing().wording();
  }
}
