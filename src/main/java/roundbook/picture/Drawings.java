package roundbook.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import roundbook.job.Opening;
import roundbook.job.Wall;
import roundbook.picture.canvas.DrawingFault;
import roundbook.picture.canvas.Picture;
import roundbook.picture.face.FaceCase;
import roundbook.picture.face.FaceDrawing;
import roundbook.picture.face.LowerChanges;
import roundbook.picture.full.SlopeTemplate;
import roundbook.picture.ground.CentreLineDrawing;
import roundbook.picture.ground.FoundationDrawing;
import roundbook.picture.ground.PlanDrawing;
import roundbook.picture.stem.StemDrawing;
import roundbook.picture.wall.WallDrawing;
import roundbook.picture.words.Wording;
import roundbook.stack.Course;
import roundbook.stack.FilledPlace;
import roundbook.stack.Stack;
import roundbook.units.Length;

/**
 * Every drawing of the crew workbook, each made from the same stack.
 *
 * <p>The same stack and words give the same bytes. Each method throws {@link DrawingFault}, and
 * nothing else, when a drawing cannot be made.
 *
 * @param stack the courses and their heights
 * @param wording how lengths and words are printed
 */
public record Drawings(Stack stack, Wording wording) {
  /**
   * Returns both faces of the logs of a round, 14.4 by 2 inches, one drawing for all logs that are
   * cut alike: one a round, two in the first and last round, more where walls differ in thickness.
   *
   * @param round counted from 1
   */
  public List<Picture> faces(int round) {
    return guarded("faces of round " + round, () -> facesOf(stack.courses().get(round - 1)));
  }

  /**
   * Returns the building seen from above with the butts of a round, 2.4 by 1.7 inches.
   *
   * @param round counted from 1
   */
  public Picture plan(int round) {
    return guarded(
        "plan of round " + round,
        () -> {
          Course course = stack.courses().get(round - 1);
          PlanDrawing drawing = new PlanDrawing(stack.building(), wording);
          return Picture.of(drawing.draw(course), drawing.altText(course));
        });
  }

  /** Returns how the centre line of a log is found and snapped, 10 by 0.8 inches. */
  public Picture centreLine() {
    return guarded(
        "centre line",
        () -> {
          CentreLineDrawing drawing = new CentreLineDrawing(wording);
          return Picture.of(drawing.draw(), drawing.altText());
        });
  }

  /**
   * Returns the foundation seen from above with its heights at all corners, 3.5 by 1.5 inches.
   *
   * @param step by how much it is higher under the walls laid second
   */
  public Picture foundation(Length step) {
    return guarded(
        "foundation",
        () -> {
          FoundationDrawing drawing = new FoundationDrawing(stack.building(), step, wording);
          return Picture.of(drawing.draw(), drawing.altText());
        });
  }

  /**
   * Returns a wall to scale, seen from outside, 6.9 inches wide and 6 high at the most.
   *
   * @param wall the wall
   * @param openings doors and windows; those of other walls are left out
   * @param settling the space that an opening wants over its frame, if it is known
   * @param high how high it should be at most, in points; it is higher where a round would be too
   *     low to write in
   */
  public Picture elevation(
      Wall wall,
      List<Opening> openings,
      Function<Opening, Optional<Length>> settling,
      double high) {
    return guarded(
        "wall " + wall.name(),
        () -> {
          WallDrawing drawing = new WallDrawing(stack, wall, openings, wording, high);
          return Picture.of(drawing.draw(settling), drawing.altText());
        });
  }

  /**
   * Returns the wedge of the neck's slope at full size, 7.4 by 9.6 inches, with a check bar; to be
   * printed at 100 percent.
   */
  public Picture template() {
    return guarded(
        "template",
        () -> {
          SlopeTemplate drawing = new SlopeTemplate(stack, wording);
          return Picture.of(drawing.draw(), drawing.altText());
        });
  }

  /**
   * Returns stems to one scale, 9.6 inches wide, butts at the left.
   *
   * @param stems the stems of a page
   * @param longest the length of the longest stem that is drawn
   */
  public Picture stems(List<StemDrawing.Drawn> stems, Length longest) {
    return guarded(
        "stems",
        () -> {
          StemDrawing drawing = new StemDrawing(longest, wording);
          return Picture.of(drawing.draw(stems), drawing.altText(stems));
        });
  }

  /** Groups the logs of a round by how they are cut and draws each group once. */
  private List<Picture> facesOf(Course course) {
    Map<FaceCase, List<FilledPlace>> groups = new LinkedHashMap<>();
    for (FilledPlace log : course.places()) {
      groups.computeIfAbsent(FaceCase.of(stack, log), key -> new ArrayList<>()).add(log);
    }
    List<Picture> faces = new ArrayList<>();
    groups.forEach((cut, logs) -> faces.add(face(cut, logs, faces.isEmpty())));
    return faces;
  }

  private Picture face(FaceCase cut, List<FilledPlace> logs, boolean first) {
    String walls = logs.stream().map(log -> log.wall().name()).collect(Collectors.joining(" "));
    String heading = wording.say("faces.heading", logs.get(0).round(), walls);
    FaceDrawing drawing = new FaceDrawing(cut, LowerChanges.of(stack, logs), wording, first);
    return Picture.of(drawing.draw(heading), drawing.altText(heading));
  }

  /** Turns whatever goes wrong into the one fault that callers catch. */
  private static <T> T guarded(String what, Supplier<T> drawing) {
    try {
      return drawing.get();
    } catch (RuntimeException fault) {
      throw new DrawingFault(what + ": " + fault.getMessage(), fault);
    }
  }
}
