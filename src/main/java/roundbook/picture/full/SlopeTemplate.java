package roundbook.picture.full;

import java.util.List;
import java.util.TreeSet;
import roundbook.job.BuildRules;
import roundbook.job.Wall;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.letter.Lettering;
import roundbook.picture.letter.Paragraph;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.stack.Stack;
import roundbook.units.Length;
import roundbook.units.LengthUnit;

/**
 * The wedge of the neck's slope at full size, to be cut out, with a bar to check the print by.
 *
 * <p>The straight edge runs down the page and is held parallel to the centre line; the sloping edge
 * leaves it by the slope. One wedge serves the underside, from the shoulder to the trimmed end, and
 * the end grain, from the inside face to the outside face, where all walls share one slope.
 */
public final class SlopeTemplate {
  /** Wide enough for either paper at full size. */
  static final double WIDTH = Canvas.points(7.4);

  static final double HEIGHT = Canvas.points(9.6);

  private static final double LONGEST = Canvas.points(9.1);
  private static final double WIDEST = Canvas.points(4.9);
  private static final double BASE = Canvas.points(1);
  private static final Spot TOP = new Spot(Canvas.points(0.45), Canvas.points(0.25));
  private static final double COLUMN = Canvas.points(5.65);
  private static final double ROOM = WIDTH - COLUMN - 4;

  private final BuildRules rules;
  private final List<Wall> walls;
  private final Wording wording;
  private final Canvas canvas = new Canvas(WIDTH, HEIGHT, 8.2);

  /**
   * Creates the template of a stack.
   *
   * @param stack gives the slope
   * @param wording how lengths and words are printed
   */
  public SlopeTemplate(Stack stack, Wording wording) {
    this.rules = stack.rules();
    this.walls = stack.building().walls();
    this.wording = wording;
  }

  /** Returns the sheet. */
  public Canvas draw() {
    wedge();
    marks();
    ruler();
    bar(Canvas.points(1.1));
    new NeckEnd(canvas, wording).draw(new Spot(COLUMN + 22, Canvas.points(3.1)));
    words();
    return canvas;
  }

  /** Returns the words for those who cannot see the drawing. */
  public String altText() {
    return wording.say("template.alt", rules.slope());
  }

  /** Returns how long the wedge is, in points: to the trimmed end, or as the paper allows. */
  private double length() {
    double wanted = Canvas.points(ends().last().inches());
    return Math.min(wanted, Math.min(LONGEST, (WIDEST - BASE) / slope()));
  }

  /** Draws the outline to cut along. */
  private void wedge() {
    double length = length();
    List<Spot> outline = List.of(TOP, edge(0), edge(length), TOP.plus(0, length));
    canvas.outline(Line.HEAVY, outline);
    canvas.write(
        Label.of(wording.say("template.shoulder"), 11, TOP.plus(14, 10)).bold().within(56));
  }

  /** Marks every corner line and trimmed end that the job's walls have. */
  private void marks() {
    for (Length corner : corners()) {
      mark("template.corner", corner);
    }
    for (Length end : ends()) {
      mark("template.end", end);
    }
  }

  /** Draws a line across the wedge at a distance from the shoulder and says how far it falls. */
  private void mark(String key, Length along) {
    double down = Canvas.points(along.inches());
    if (down > length() + 0.5) {
      return;
    }
    canvas.line(Line.DASHED, TOP.plus(0, down), edge(down));
    String at = wording.say(key, wording.mark(along));
    String falls = wording.say("template.falls", wording.mark(rules.slope().dropOver(along)));
    double room = edge(down).x() - TOP.x() - 20;
    canvas.writeIfFree(Label.of(at, 12, TOP.plus(14, down - 24)).bold().within(room));
    canvas.writeIfFree(Label.of(falls, 12, TOP.plus(14, down - 9)).within(room));
  }

  /** Draws a rule along the straight edge, by which the whole length can be checked. */
  private void ruler() {
    boolean metric = rules.metric();
    double step = Canvas.points(metric ? Length.ofMillimetres(10).inches() : 0.5);
    int whole = metric ? 5 : 2;
    for (int i = 0; i * step <= length() + 0.5; i++) {
      boolean counted = i % whole == 0;
      canvas.line(Line.THIN, TOP.plus(0, i * step), TOP.plus(counted ? -9 : -5, i * step));
      if (counted) {
        String number = Integer.toString(metric ? i * 10 : i / 2);
        canvas.write(Label.of(number, 10, TOP.plus(-11, i * step)).ending().within(20).uncut());
      }
    }
  }

  /** Draws the bar that must measure one inch, or 25 mm, on the printed page. */
  private void bar(double top) {
    Length length = rules.metric() ? Length.ofMillimetres(25) : Length.ofInches(1);
    double wide = Canvas.points(length.inches());
    canvas.fill(new Box(COLUMN, top, COLUMN + wide, top + 12), Ink.BLACK);
    canvas.line(Line.THIN, new Spot(COLUMN, top - 6), new Spot(COLUMN, top + 18));
    canvas.line(Line.THIN, new Spot(COLUMN + wide, top - 6), new Spot(COLUMN + wide, top + 18));
    LengthUnit unit = rules.metric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    String text = length.decimal(unit, 0) + " " + unit.symbol();
    canvas.write(
        Label.of(text, 12, new Spot(COLUMN + wide + 5, top + 6)).bold().within(45).uncut());
    paragraph("template.check", top + 32);
  }

  /** Writes the title, the slope, and how the template is held. */
  private void words() {
    canvas.write(Label.of(wording.say("template.title"), 13, column(0.15)).bold().within(ROOM));
    String slope = rules.slope().toString();
    canvas.write(Label.of(slope, 30, column(0.55)).bold().within(ROOM).uncut());
    paragraph("template.use", Canvas.points(5.6));
  }

  private void paragraph(String key, double top) {
    double y = top;
    for (String line : Paragraph.lines(wording.say(key), new Lettering(10, false), ROOM)) {
      canvas.write(Label.of(line, 10, new Spot(COLUMN, y)).within(ROOM));
      y += 14;
    }
  }

  private static Spot column(double inchesDown) {
    return new Spot(COLUMN, Canvas.points(inchesDown));
  }

  /** Returns the point of the sloping edge so far down from the shoulder. */
  private Spot edge(double down) {
    return TOP.plus(BASE + slope() * down, down);
  }

  private double slope() {
    return rules.slope().ratio();
  }

  /** Returns the distances of the corner lines from the shoulder, each once. */
  private TreeSet<Length> corners() {
    TreeSet<Length> corners = new TreeSet<>();
    walls.forEach(wall -> corners.add(wall.thickness()));
    return corners;
  }

  /** Returns the distances of the trimmed ends from the shoulder, each once. */
  private TreeSet<Length> ends() {
    TreeSet<Length> ends = new TreeSet<>();
    walls.forEach(wall -> ends.add(wall.thickness().plus(rules.overhang())));
    return ends;
  }
}
