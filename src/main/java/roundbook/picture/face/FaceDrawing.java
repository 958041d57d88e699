package roundbook.picture.face;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.face.FaceCase.Special;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.units.Length;

/**
 * Both faces of a log side by side, each with its two ends and all marks.
 *
 * <p>Heights and lengths are not to scale, so that every mark can be read: the numbers rule. The
 * middle of the log is broken out.
 */
public final class FaceDrawing {
  static final double BETWEEN = 16;
  static final double WIDTH = 2 * FaceStrip.WIDTH + BETWEEN;
  static final double HEIGHT = FaceStrip.HEIGHT + 20;

  /** How high it is without the line at its foot. */
  private static final double FOOTLESS = FaceStrip.HEIGHT + 3;

  /**
   * The least lettering: a drawing is laid at seven tenths of its size, the page at three fourths.
   */
  static final double SMALL = 15.7;

  private static final double LINE = 9.5;

  private final FaceCase faces;
  private final LowerChanges changes;
  private final Wording wording;
  private final boolean footed;
  private final Canvas canvas;

  /**
   * Creates the drawing of logs that are cut alike.
   *
   * @param faces what decides how they look
   * @param changes what their lower marks differ from the chart's
   * @param wording how lengths and words are printed
   * @param footed whether it says at its foot what holds for every drawing of a page
   */
  public FaceDrawing(FaceCase faces, LowerChanges changes, Wording wording, boolean footed) {
    this.faces = faces;
    this.changes = changes;
    this.wording = wording;
    this.footed = footed;
    this.canvas = new Canvas(WIDTH, footed ? HEIGHT : FOOTLESS, SMALL);
  }

  /** Returns the sheet with both faces, under a heading that says which logs it is for. */
  public Canvas draw(String heading) {
    strip(new FaceStrip(this, true, 0), "inside", heading);
    strip(new FaceStrip(this, false, FaceStrip.WIDTH + BETWEEN), "outside", "");
    if (footed) {
      String foot = wording.say("faces.foot", wording.unit());
      canvas.write(Label.of(foot, SMALL, new Spot(4, HEIGHT - 10)).within(WIDTH - 8));
    }
    return canvas;
  }

  Canvas canvas() {
    return canvas;
  }

  FaceCase faces() {
    return faces;
  }

  LowerChanges changes() {
    return changes;
  }

  Wording wording() {
    return wording;
  }

  /** Draws one face with its title, where to stand, and at the first one the heading. */
  private void strip(FaceStrip strip, String face, String heading) {
    strip.draw();
    Spot begin = new Spot(strip.left() + 4, LINE);
    Label name = Label.of(wording.say("faces." + face), SMALL, begin).bold();
    double left = canvas.write(name.within(150)).right() + 10;
    double end = strip.left() + FaceStrip.WIDTH - 4;
    double room = end - left;
    if (!heading.isEmpty()) {
      Label right = Label.of(heading, SMALL, new Spot(end, LINE)).bold().ending();
      room -= canvas.write(right.within(170)).width() + 10;
    }
    String side = strip.buttLeft() ? ".left" : ".right";
    String stand = wording.say("faces." + face + side);
    canvas.write(Label.of(stand, SMALL, new Spot(left, LINE)).within(room));
  }

  /** Returns the words for those who cannot see the drawing. */
  public String altText(String heading) {
    String outside =
        Stream.of(faces.butt(), faces.tip())
            .map(end -> wording.mark(faces.upperOutside(end)))
            .distinct()
            .collect(Collectors.joining("; "));
    return wording.say(
        "faces.alt",
        heading,
        wording.mark(faces.notch().upper()),
        outside,
        numbers(),
        wording.unit());
  }

  /** Returns the lower marks in words; a log flat all along has only the one. */
  private String numbers() {
    if (faces.special() == Special.BED_WHOLE) {
      return wording.mark(faces.notch().lower());
    }
    return Stream.of(true, false)
        .map(
            butt ->
                marks(butt ? faces.butt() : faces.tip())
                    .map(mark -> String.join(", ", changes.marks(butt, mark, wording)))
                    .collect(Collectors.joining(" / ")))
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private Stream<Length> marks(FaceCase.End end) {
    return Stream.of(faces.lowerShoulder(end), faces.lowerCorner(end));
  }
}
