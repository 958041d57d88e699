package roundbook.picture.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import roundbook.job.Opening;
import roundbook.job.Setting;
import roundbook.picture.canvas.Line;
import roundbook.picture.letter.Label;
import roundbook.picture.letter.Lettering;
import roundbook.picture.letter.Paragraph;
import roundbook.picture.raster.Box;
import roundbook.picture.raster.Ink;
import roundbook.picture.raster.Spot;
import roundbook.picture.words.Wording;
import roundbook.stack.Joint;
import roundbook.units.Length;

/** The doors and windows of a wall drawing, and where they leave no room for words. */
final class WallOpenings {
  private static final double LINE = 11;
  private static final double NAME = 9.5;
  private static final double MARGIN = 4;
  private static final double DOT = 2;

  private final WallDrawing drawing;
  private final List<Box> boxes = new ArrayList<>();

  WallOpenings(WallDrawing drawing) {
    this.drawing = drawing;
  }

  /** Draws an opening with its name, size and the space left over its frame. */
  void draw(Opening opening, Optional<Length> settling) {
    Box wall = drawing.elevation().opening(opening);
    Spot low = drawing.on(wall.left(), wall.top());
    Spot high = drawing.on(wall.right(), wall.bottom());
    Box box = new Box(low.x(), high.y(), high.x(), low.y());
    if (box.width() < 2 || box.height() < 2) {
      return;
    }
    drawing.canvas().fill(box, Ink.WHITE);
    double space = settling.map(each -> each.inches() * drawing.scale()).orElse(0.0);
    if (space > 0) {
      double bottom = Math.min(box.bottom(), box.top() + Math.max(3, space));
      Box over = new Box(box.left(), box.top(), box.right(), bottom);
      drawing.canvas().shape(Line.THIN, over.corners(), Ink.HATCH);
    }
    drawing.canvas().outline(Line.HEAVY, box);
    boxes.add(box);
    double room = box.width() - 8;
    List<String> name = Paragraph.lines(opening.name(), new Lettering(NAME, true), room);
    List<String> texts =
        Stream.of(name, texts(opening, settling, room)).flatMap(List::stream).toList();
    write(box, texts, name.size());
  }

  /** Returns whether a box lies on an opening, wholly or in part. */
  boolean cover(Box box) {
    return boxes.stream().anyMatch(box::overlaps);
  }

  /** Returns the widest stretch between two places at a height that no opening takes. */
  Optional<Box> widest(Box row) {
    return free(row).stream().max(Comparator.comparingDouble(Box::width));
  }

  /** Returns the stretches between two places at a height that no opening takes, from the left. */
  List<Box> free(Box row) {
    List<Box> free = List.of(row);
    for (Box box : boxes) {
      free = free.stream().flatMap(each -> without(each, box).stream()).toList();
    }
    return free.stream().sorted(Comparator.comparingDouble(Box::left)).toList();
  }

  /**
   * Draws a dot on each joint beside an opening where a pin may stand nearest to its sides, clear
   * of the cut by what the rules ask for; one a joint at each side is common practice.
   */
  void pins(Opening opening) {
    double clear = drawing.stack().rules().length(Setting.PIN_CLEAR).inches();
    Box hole = drawing.elevation().opening(opening);
    for (Joint joint : drawing.stack().joints(drawing.elevation().wall())) {
      pin(joint, hole, hole.left() - clear);
      pin(joint, hole, hole.right() + clear);
    }
  }

  private void pin(Joint joint, Box hole, double x) {
    Elevation wall = drawing.elevation();
    if (x < wall.leftFace() || x > wall.rightFace()) {
      return;
    }
    double z = (wall.crown(joint.lower(), x) + wall.belly(joint.upper(), x)) / 2;
    Spot at = drawing.on(x, z);
    Box dot = new Box(at.x() - DOT, at.y() - DOT, at.x() + DOT, at.y() + DOT);
    boolean beside = z > hole.top() && z < hole.bottom();
    if (beside && !cover(dot) && drawing.canvas().texts().stream().noneMatch(dot::overlaps)) {
      drawing.canvas().fill(dot, Ink.BLACK);
    }
  }

  /** Returns what is left of a row at both sides of a box. */
  private static List<Box> without(Box row, Box taken) {
    if (!row.overlaps(taken)) {
      return List.of(row);
    }
    List<Box> parts = new ArrayList<>();
    if (taken.left() - MARGIN > row.left()) {
      parts.add(new Box(row.left(), row.top(), taken.left() - MARGIN, row.bottom()));
    }
    if (taken.right() + MARGIN < row.right()) {
      parts.add(new Box(taken.right() + MARGIN, row.top(), row.right(), row.bottom()));
    }
    return parts;
  }

  private List<String> texts(Opening opening, Optional<Length> settling, double room) {
    Wording wording = drawing.wording();
    List<String> texts = new ArrayList<>();
    Length high = opening.head().minus(opening.sill());
    texts.add(wording.mark(opening.width()) + " × " + wording.mark(high));
    settling
        .map(each -> wording.say("wall.settle", wording.mark(each)))
        .map(text -> Paragraph.lines(text, new Lettering(WallDrawing.SMALL, false), room))
        .ifPresent(texts::addAll);
    return texts;
  }

  /** Writes as many lines as the opening has room for, about its middle. */
  private void write(Box box, List<String> texts, int names) {
    double room = box.width() - 8;
    int count = (int) Math.min(texts.size(), (box.height() - 8) / LINE);
    Spot at = box.middle().plus(0, -(count - 1) * LINE / 2);
    for (int i = 0; i < count && room > 16; i++) {
      boolean name = i < names;
      Label label =
          Label.of(texts.get(i), name ? NAME : WallDrawing.SMALL, at.plus(0, i * LINE)).centred();
      Label number = label.within(room).uncut();
      drawing.canvas().writeIfFree(name ? label.bold().within(room) : number);
    }
  }
}
