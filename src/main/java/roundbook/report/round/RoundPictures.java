package roundbook.report.round;

import java.util.List;
import roundbook.page.Area;
import roundbook.page.SheetBuilder;
import roundbook.picture.canvas.Picture;
import roundbook.report.frame.Drawn;
import roundbook.report.live.LiveContext;

/**
 * The drawings on a round's page: both faces of a log, and the plan with the butts.
 *
 * <p>Each drawing of the faces is as wide as the page, so that it reads alike on every round; where
 * logs of a round are cut in several ways, one stands under the other. The plan stands in the
 * corner beside the notes, or beside several drawings of the faces of more than four logs.
 */
final class RoundPictures {
  private static final double WIDE = 10.1;
  private static final double NARROW = 7;

  /** More drawings than these stand narrower, so that the plan has room beside them. */
  private static final int FULL = 2;

  private static final double PLAN = 2.85;

  /** The least share of its size at which the plan is still read. */
  private static final double LEAST_SHARE = 0.5;

  private static final double POINTS = 72;
  private static final double BETWEEN = 0.02;
  private static final int PLAN_COLUMNS = 11;

  private final Drawn drawn;
  private final List<Picture> faces;
  private final List<Picture> plans;

  RoundPictures(LiveContext live, RoundDrawings drawings, SheetBuilder sheet) {
    this.drawn = new Drawn(live.context(), sheet);
    this.faces = drawn.made(drawings::faces);
    this.plans = drawn.made(drawings::plans);
  }

  /** Returns how many columns the notes may be wide, the plan standing beside them or not. */
  int noteColumns() {
    return RoundSheets.COLUMNS - (plans.isEmpty() ? 0 : PLAN_COLUMNS);
  }

  /**
   * Puts each drawing of the faces in a row of its own under the current one; narrower where
   * several of more than four logs stand over what is typed, with the plan beside them.
   *
   * @return whether the plan is put
   */
  boolean putFaces(SheetBuilder sheet, boolean more) {
    boolean beside = more && faces.size() > FULL;
    double wide = beside ? NARROW : WIDE;
    if (beside) {
      putPlan(sheet.row() + 1, 1);
    }
    for (Picture face : faces) {
      sheet.nextRow();
      drawn.room(drawn.lay(face, 0, BETWEEN, wide) + 2 * BETWEEN);
    }
    return beside;
  }

  /** Returns how high the plan stands at a share of its size, in points. */
  private double planHeight(double share) {
    return plans.stream()
        .mapToDouble(plan -> share * PLAN * plan.heightInches() / plan.widthInches() + 2 * BETWEEN)
        .map(inches -> inches * POINTS)
        .max()
        .orElse(0);
  }

  /**
   * Puts the plan beside the notes, from a row on, no higher than the page has room for; half as
   * high as usual at least.
   *
   * @param room what is left of the page, in points
   * @return how high it stands, in points
   */
  double putPlanWithin(int row, double room) {
    double share = Math.min(1, Math.max(LEAST_SHARE, room / planHeight(1)));
    putPlan(row, share);
    return planHeight(share);
  }

  /** Returns whether the plan can stand in so much room, in points. */
  boolean fits(double room) {
    return room >= planHeight(LEAST_SHARE);
  }

  /** Puts the plan beside the notes, from a row on, at a share of its size. */
  private void putPlan(int row, double share) {
    Area corner = Area.cell(row, noteColumns() + 1);
    plans.forEach(plan -> drawn.layAt(plan, corner, share * PLAN));
  }
}
