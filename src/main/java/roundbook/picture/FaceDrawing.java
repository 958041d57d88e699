package roundbook.picture;

import java.util.List;
import roundbook.picture.FaceCase.Special;
import roundbook.units.Length;

/**
 * Both faces of a log, one under the other, each with its two ends and all marks.
 *
 * <p>Heights and lengths are not to scale, so that every mark can be read: the numbers rule. The
 * middle of the log is broken out.
 */
final class FaceDrawing {
  static final double WIDTH = 720;
  static final double STRIP = 106;
  static final double HEIGHT = 2 * STRIP + 12;

  private final FaceCase faces;
  private final Wording wording;
  private final Canvas canvas = new Canvas(WIDTH, HEIGHT);

  FaceDrawing(FaceCase faces, Wording wording) {
    this.faces = faces;
    this.wording = wording;
  }

  /** Returns the sheet with both faces, under a heading that says which logs it is for. */
  Canvas draw(String heading) {
    strip(new FaceStrip(this, true, 0), "inside", heading);
    strip(new FaceStrip(this, false, STRIP), "outside", "");
    double y = HEIGHT - 6;
    canvas.write(note("faces.foot", y, WIDTH - 8, wording.unit()));
    return canvas;
  }

  Canvas canvas() {
    return canvas;
  }

  FaceCase faces() {
    return faces;
  }

  Wording wording() {
    return wording;
  }

  /** Draws one face with its title, where to stand, and at the first one the heading. */
  private void strip(FaceStrip strip, String face, String heading) {
    strip.draw();
    Box title = canvas.write(title("faces." + face, strip.top()));
    double left = title.right() + 10;
    double room = WIDTH - left - 4;
    if (!heading.isEmpty()) {
      Label right = Label.of(heading, 15, new Spot(WIDTH - 4, strip.top() + 9.5)).bold().ending();
      room -= canvas.write(right.within(230)).width() + 10;
    }
    String side = strip.buttLeft() ? ".left" : ".right";
    String stand = wording.say("faces." + face + side);
    canvas.write(Label.of(stand, 9.5, new Spot(left, strip.top() + 9.5)).within(room));
  }

  private Label title(String key, double top) {
    return Label.of(wording.say(key), 15, new Spot(4, top + 9.5)).bold().within(190);
  }

  private Label note(String key, double y, double room, Object... values) {
    return Label.of(wording.say(key, values), 9, new Spot(4, y)).within(room);
  }

  /** Returns the words for those who cannot see the drawing. */
  String altText(String heading) {
    String ends = numbers(faces.notch().lower(), faces.lowerCorner(faces.butt()));
    Length outside = faces.notch().upperOutside(faces.thickness());
    return wording.say(
        "faces.alt",
        heading,
        wording.mark(faces.notch().upper()),
        wording.mark(outside),
        ends,
        wording.unit());
  }

  /** Returns the lower marks in words; a log flat all along has only the one. */
  private String numbers(Length shoulder, Length corner) {
    String both = String.join(" / ", List.of(wording.mark(shoulder), wording.mark(corner)));
    return faces.special() == Special.BED_WHOLE ? wording.mark(shoulder) : both;
  }
}
