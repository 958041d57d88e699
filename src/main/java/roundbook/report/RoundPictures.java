package roundbook.report;

import java.util.List;
import roundbook.page.Area;
import roundbook.page.PageSetup.Paper;
import roundbook.page.SheetBuilder;
import roundbook.picture.Picture;
import roundbook.stack.Course;

/**
 * The drawings on a round's page: both faces of a log, and the plan with the butts.
 *
 * <p>Where all logs of a round are cut alike there is one drawing of the faces with the plan beside
 * it, as wide as leaves the page unscaled. Otherwise two lie side by side and the plan stands in
 * the corner beside the notes.
 */
final class RoundPictures {
  private static final double WIDE = 10.1;
  private static final double MOST_ALONE = 7.3;
  private static final double LEAST_ALONE = 6;
  private static final double PLAN = 2.6;
  private static final double PLAN_BELOW = 2.1;
  private static final double BETWEEN = 0.05;
  private static final double POINTS = 72;
  private static final double ROOM_LETTER = 522;
  private static final double ROOM_A4 = 506;
  private static final int PLAN_COLUMNS = 9;

  private final Live live;
  private final SheetBuilder sheet;
  private final Drawn drawn;
  private final List<Picture> faces;
  private final List<Picture> plans;

  RoundPictures(Live live, Course course, SheetBuilder sheet) {
    this.live = live;
    this.sheet = sheet;
    this.drawn = new Drawn(live, sheet);
    this.faces = drawn.made(() -> drawn.drawings().faces(course.round()));
    this.plans = drawn.made(() -> List.of(drawn.drawings().plan(course.round())));
  }

  /** Returns how many columns the notes may be wide, the plan standing beside them or not. */
  int noteColumns() {
    return faces.size() > 1 ? RoundSheets.COLUMNS - PLAN_COLUMNS : RoundSheets.COLUMNS;
  }

  /**
   * Puts the drawings that lie in the current row of the sheet.
   *
   * @param others the height of everything above and below but the tables, in points
   */
  void putFaces(double others) {
    if (faces.size() > 1) {
      drawn.room(sideBySide() + BETWEEN);
      return;
    }
    double high = 0;
    double width = alone(others);
    for (Picture face : faces) {
      high = BETWEEN + drawn.lay(face, 0, BETWEEN, width);
    }
    for (Picture plan : plans) {
      double beside = Math.min(PLAN, widthOf(plan, high));
      drawn.lay(plan, width + (WIDE - width - beside) / 2, BETWEEN, beside);
    }
    drawn.room(high + BETWEEN);
  }

  /** Returns the width of a drawing that is so high. */
  private static double widthOf(Picture picture, double high) {
    return high <= 0 ? PLAN : high * picture.widthInches() / picture.heightInches();
  }

  /** Returns the width of a single drawing of the faces that keeps the page at its full size. */
  private double alone(double others) {
    double page = live.context().paper() == Paper.A4 ? ROOM_A4 : ROOM_LETTER;
    double room = page - others - RoundTable.points(live) - RoundTyped.points(live);
    double width = faces.isEmpty() ? 0 : widthOf(faces.get(0), room / POINTS - 2 * BETWEEN);
    return Math.max(LEAST_ALONE, Math.min(MOST_ALONE, width));
  }

  /** Lays the drawings two in a row and returns how high they are. */
  private double sideBySide() {
    double width = (WIDE - BETWEEN) / 2;
    double top = BETWEEN;
    double high = 0;
    for (int index = 0; index < faces.size(); index++) {
      double right = index % 2 * (width + BETWEEN);
      high = Math.max(high, drawn.lay(faces.get(index), right, top, width));
      if (index % 2 == 1 || index == faces.size() - 1) {
        top += high + BETWEEN;
        high = 0;
      }
    }
    return top;
  }

  /** Puts the plan beside the notes, from a row on, where it had no place beside the faces. */
  void putPlanBelow(int row) {
    if (faces.size() < 2) {
      return;
    }
    Area corner = Area.cell(row, noteColumns() + 1);
    plans.forEach(plan -> drawn.layAt(plan, corner, PLAN_BELOW));
  }
}
