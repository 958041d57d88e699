package roundbook.report;

import java.util.List;
import roundbook.page.SheetBuilder;
import roundbook.picture.Picture;
import roundbook.stack.Course;

/** The drawings on a round's page: both faces of a log, and the plan with the butts. */
final class RoundPictures {
  private static final double FACES_WIDTH = 7.1;
  private static final double PLAN_WIDTH = 2.8;
  private static final double BESIDE = 7.2;
  private static final double BETWEEN = 0.05;

  private RoundPictures() {}

  /** Puts the drawings in the current row of the sheet. */
  static void put(Live live, Course course, SheetBuilder sheet) {
    Drawn drawn = new Drawn(live, sheet);
    List<Picture> faces = drawn.made(() -> drawn.drawings().faces(course.round()));
    List<Picture> plans = drawn.made(() -> List.of(drawn.drawings().plan(course.round())));
    double high = 0;
    for (Picture face : faces) {
      high += BETWEEN + drawn.lay(face, 0, high + BETWEEN, FACES_WIDTH);
    }
    for (Picture plan : plans) {
      high = Math.max(high, BETWEEN + drawn.lay(plan, BESIDE, BETWEEN, PLAN_WIDTH));
    }
    drawn.room(high + BETWEEN);
  }
}
