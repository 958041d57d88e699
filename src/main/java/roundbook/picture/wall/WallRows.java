package roundbook.picture.wall;

import java.util.List;
import java.util.Optional;
import roundbook.picture.canvas.Canvas;
import roundbook.picture.letter.Label;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Spot;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;

/** The words of a wall drawing, a row a log: round, butt and tip, tag, middle, height. */
final class WallRows {
  private static final double LEAST_ROOM = 22;

  /** How far the words of a gap reach into a wall from an inside face, in points. */
  private static final double GAP_WORDS = 36;

  /** Which part of a stretch is left free at its ends where no words of gaps are in the way. */
  private static final double MARGIN = 0.06;

  private final WallDrawing drawing;
  private final Canvas canvas;
  private final double size;

  WallRows(WallDrawing drawing) {
    this.drawing = drawing;
    this.canvas = drawing.canvas();
    this.size = drawing.size(0.55, 8.4, 10.5);
  }

  /** Writes the row of a log. */
  void draw(FilledPlace log, WallOpenings holes) {
    double z = middle(log);
    Spot left = drawing.on(0, z);
    Spot right = drawing.on(drawing.elevation().length(), z);
    List<PlacedLog> logs = log.logs();
    boolean buttLeft = !logs.get(0).buttAtStart();
    boolean buttRight = logs.get(logs.size() - 1).buttAtStart();
    String round = drawing.wording().say("wall.round", log.round());
    canvas.write(Label.of(round, size, left.plus(-8 - size, 0)).bold().ending().within(39).uncut());
    sign(buttLeft, left.plus(-4 - size / 2, 0));
    sign(buttRight, right.plus(4 + size / 2, 0));
    String height = drawing.wording().tape(drawing.stack().centre(log));
    canvas.write(Label.of(height, size, right.plus(8 + size, 0)).within(64).uncut());
    tag(log, holes);
  }

  /** Writes the sign of a butt or a tip. */
  private void sign(boolean butt, Spot at) {
    canvas.write(Label.of(butt ? "●" : "○", size, at).centred());
  }

  /** Finds the widest stretch of a log that no opening takes, for its tag. */
  private void tag(FilledPlace log, WallOpenings holes) {
    Elevation elevation = drawing.elevation();
    double z = middle(log);
    Spot left = drawing.on(elevation.leftFace(), z).plus(6, -size / 2);
    Spot right = drawing.on(elevation.rightFace(), z).plus(-6, size / 2);
    Box whole = new Box(left.x(), left.y(), right.x(), right.y());
    List<PlacedLog> logs = log.logs();
    List<Box> parts = holes.free(whole);
    if (logs.size() == 2 && parts.size() > 1) {
      shortLog(logs.get(0), parts.get(0));
      shortLog(logs.get(1), parts.get(parts.size() - 1));
      return;
    }
    Optional<Box> free = holes.widest(whole);
    if (free.isPresent() && free.get().width() > LEAST_ROOM) {
      write(log, free.get());
    }
  }

  /** Writes the tag of a short log in the middle of its stretch. */
  private void shortLog(PlacedLog log, Box free) {
    Label label = Label.of(log.piece().log().tag(), size, free.middle()).bold().centred();
    canvas.writeIfFree(label.within(free.width()));
  }

  /** Returns the height half between a log's top and its underside, sawn flat or not. */
  private double middle(FilledPlace log) {
    double x = drawing.elevation().length() / 2;
    return (drawing.elevation().crown(log, x) + drawing.elevation().belly(log, x)) / 2;
  }

  /** Writes the tag at the left and the middle diameter at the right of a stretch. */
  private void write(FilledPlace log, Box free) {
    Label tag = Label.of(WallDrawing.tag(log), size, free.middle()).bold();
    writeFrom(new Spot(free.left(), free.middle().y()), 1, free, tag);
    String mid = "Ø " + drawing.wording().mark(log.mid());
    double small = Math.max(WallDrawing.SMALL, size * 0.9);
    Label middle = Label.of(mid, small, free.middle()).ending().uncut();
    writeFrom(new Spot(free.right(), free.middle().y()), -1, free, middle);
  }

  /**
   * Writes a text as near to an end of a stretch as the words of the gaps leave it room. Where logs
   * are low it goes between those at the end and those in the middle.
   */
  private void writeFrom(Spot end, int inward, Box free, Label label) {
    double half = free.width() * 0.42;
    double between = free.width() / 2 - 1.5 * GAP_WORDS;
    Label near = label.to(end.plus(inward * free.width() * MARGIN, 0)).within(half);
    Label far = label.to(end.plus(inward * GAP_WORDS, 0)).within(half);
    Label middle = far.within(Math.max(between, LEAST_ROOM));
    boolean low = drawing.course() < size + drawing.gapSize() + 1;
    List<Label> ways = low ? List.of(middle, far, near) : List.of(near, far, middle);
    for (Label way : ways) {
      if (canvas.writeIfFree(way)) {
        return;
      }
    }
  }
}
