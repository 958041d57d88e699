package roundbook.picture.full;

import java.util.List;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;

/**
 * The end grain of a log past its corner, not to scale: what is left of it and which way it falls.
 */
final class NeckEnd {
  private static final double WIDE = 76;
  private static final double UPPER = 40;
  private static final double DROP = 25;
  private static final double LOWER = 46;
  private static final double CROWN = 62;

  private final Canvas canvas;
  private final Wording wording;

  NeckEnd(Canvas canvas, Wording wording) {
    this.canvas = canvas;
    this.wording = wording;
  }

  /** Draws it with the top of its outside edge's side at a place. */
  void draw(Spot at) {
    Spot outside = at.plus(0, CROWN);
    Spot inside = outside.plus(WIDE, 0);
    canvas.shape(Line.THIN, crown(outside, -1), Ink.HATCH);
    canvas.shape(Line.THIN, crown(outside, 1), Ink.HATCH);
    List<Spot> neck =
        List.of(
            outside.plus(0, DROP - UPPER),
            inside.plus(0, -UPPER),
            inside.plus(0, LOWER),
            outside.plus(0, LOWER));
    canvas.shape(Line.HEAVY, neck, Ink.WHITE);
    canvas.line(Line.CENTRE, outside.plus(-12, 0), inside.plus(12, 0));
    double below = CROWN + 22;
    word("template.outside", outside.plus(-14, below), 0);
    word("template.inside", inside.plus(14, below), 1);
    word("template.view", outside.plus(WIDE / 2, below + 16), 0.5);
  }

  /** Writes a word under the drawing; those at its sides are bold. */
  private void word(String key, Spot at, double across) {
    Label label = Label.of(wording.say(key), 10, at).across(across);
    canvas.write((across == 0.5 ? label : label.bold()).within(across == 0.5 ? 120 : 50));
  }

  /** Returns the log's round top, or with 1 its round underside. */
  private static List<Spot> crown(Spot outside, int side) {
    double face = CROWN - 14;
    return List.of(
        outside,
        outside.plus(0, side * face),
        outside.plus(WIDE * 0.25, side * (CROWN - 3)),
        outside.plus(WIDE * 0.5, side * CROWN),
        outside.plus(WIDE * 0.75, side * (CROWN - 3)),
        outside.plus(WIDE, side * face),
        outside.plus(WIDE, 0));
  }
}
