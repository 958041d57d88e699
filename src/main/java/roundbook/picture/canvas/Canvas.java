package roundbook.picture.canvas;

import java.util.ArrayList;
import java.util.List;
import roundbook.picture.letter.Glyph;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Raster;
import roundbook.picture.raster.Spot;

/**
 * A sheet to draw on, measured in points of 1/72 inch from its top left corner.
 *
 * <p>It keeps the box of every text written, so that a drawing can leave out a text for which there
 * is no place, and so that tests can see that none covers another.
 */
public final class Canvas {
  /** How many pixels an inch has. */
  static final int PIXELS_PER_INCH = 200;

  private static final double POINTS_PER_INCH = 72;
  private static final double SCALE = PIXELS_PER_INCH / POINTS_PER_INCH;
  private static final double MOST_INCHES = 40;

  private final Box page;
  private final Raster raster;
  private final double least;
  private final List<Box> texts = new ArrayList<>();
  private double smallest = Double.MAX_VALUE;

  /** Makes a white sheet on which words may be of any size. */
  public Canvas(double width, double height) {
    this(width, height, 0);
  }

  /**
   * Makes a white sheet.
   *
   * @param width in points
   * @param height in points
   * @param least the size under which no words are written, in points
   * @throws DrawingFault if it would have no size, or be larger than any paper
   */
  public Canvas(double width, double height, double least) {
    this.least = least;
    double most = MOST_INCHES * POINTS_PER_INCH;
    if (!(width > 0 && height > 0 && width <= most && height <= most)) {
      throw new DrawingFault("no sheet of " + width + " by " + height + " points", null);
    }
    page = new Box(0, 0, width, height);
    raster = new Raster(pixels(width), pixels(height));
  }

  /** Returns the length in points of so many inches. */
  public static double points(double inches) {
    return inches * POINTS_PER_INCH;
  }

  /** Returns the whole sheet as a box. */
  public Box page() {
    return page;
  }

  /** Returns the boxes of all texts written so far. */
  public List<Box> texts() {
    return List.copyOf(texts);
  }

  /** Returns the size of the smallest letters written so far, in points. */
  double smallestLetters() {
    return smallest;
  }

  /** Returns the pixels drawn so far. */
  Raster raster() {
    return raster;
  }

  /** Fills an outline. */
  public void fill(List<Spot> outline, Ink ink) {
    List<Spot> pixels = new ArrayList<>(outline.size());
    for (Spot spot : outline) {
      pixels.add(scaled(spot));
    }
    raster.fill(pixels, ink);
  }

  /** Fills a box. */
  public void fill(Box box, Ink ink) {
    fill(box.corners(), ink);
  }

  /** Draws a line through points. */
  public void line(Line line, Spot... spots) {
    line(line, List.of(spots));
  }

  /** Draws a line through points; its dashes run on round the corners. */
  public void line(Line line, List<Spot> spots) {
    Dashes dashes = new Dashes(line.dashes());
    for (int i = 1; i < spots.size(); i++) {
      for (Dashes.Dash dash : dashes.along(spots.get(i - 1), spots.get(i))) {
        stroke(dash.from(), dash.to(), line.width() / 2);
      }
    }
  }

  /** Draws a closed line through points. */
  public void outline(Line line, List<Spot> spots) {
    List<Spot> closed = new ArrayList<>(spots);
    closed.add(spots.get(0));
    line(line, closed);
  }

  /** Draws a box's edges. */
  public void outline(Line line, Box box) {
    outline(line, box.corners());
  }

  /** Fills an outline and draws its edge. */
  public void shape(Line line, List<Spot> outline, Ink ink) {
    fill(outline, ink);
    outline(line, outline);
  }

  /** Writes a text, made to fit its room, and returns its box. */
  public Box write(Label label) {
    Label fitted = label.fitted(least);
    Box box = fitted.box();
    ground(fitted, box);
    Spot base = fitted.base();
    boolean white = fitted.ground() == Label.Ground.REVERSED;
    for (Glyph.Stroke stroke : fitted.lettering().strokes(fitted.text())) {
      letter(stroke.moved(1, base), fitted.lettering().reach(), white ? Ink.WHITE : Ink.BLACK);
    }
    if (!fitted.text().isBlank()) {
      smallest = Math.min(smallest, fitted.lettering().size());
      texts.add(box);
    }
    return box;
  }

  /**
   * Writes a text only where it covers no other, nothing is cut off and it is large enough to be
   * read; returns whether it did.
   */
  public boolean writeIfFree(Label label) {
    Label fitted = label.fitted(least);
    Box box = fitted.box();
    boolean large = fitted.lettering().size() >= Math.min(least, label.lettering().size());
    boolean free = large && box.inside(page) && texts.stream().noneMatch(box::overlaps);
    if (free) {
      write(label);
    }
    return free;
  }

  /** Lays the field that a text stands on. */
  private void ground(Label label, Box box) {
    switch (label.ground()) {
      case CLEAR -> fill(box, Ink.WHITE);
      case REVERSED -> fill(box, Ink.BLACK);
      case OPEN -> {}
    }
  }

  /** Draws one stroke of a letter, or fills one of its surfaces. */
  private void letter(Glyph.Stroke stroke, double reach, Ink ink) {
    if (stroke.filled()) {
      fill(stroke.path(), ink);
      return;
    }
    for (int i = 1; i < stroke.path().size(); i++) {
      Spot from = scaled(stroke.path().get(i - 1));
      raster.stroke(from, scaled(stroke.path().get(i)), reach * SCALE, ink);
    }
  }

  private void stroke(Spot from, Spot to, double reach) {
    raster.stroke(scaled(from), scaled(to), reach * SCALE, Ink.BLACK);
  }

  private static Spot scaled(Spot spot) {
    return new Spot(spot.x() * SCALE, spot.y() * SCALE);
  }

  private static int pixels(double points) {
    return (int) Math.ceil(points * SCALE);
  }
}
