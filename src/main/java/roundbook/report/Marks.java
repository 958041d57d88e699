package roundbook.report;

import java.util.List;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.notch.Notch;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Note;
import roundbook.plan.Plan;
import roundbook.stack.PlacedLog;
import roundbook.units.Length;

/**
 * The four marks of one placed log, as printed.
 *
 * @param upperInside above the centre line on the inside face
 * @param upperOutside above the centre line on the outside face
 * @param lower below the centre line at the shoulder
 * @param lowerCorner below it at the corner line, at the butt and at the tip
 * @param flatBed whether the lower mark is sawn along the whole log, without a corner line
 */
record Marks(
    Length upperInside,
    Length upperOutside,
    Length lower,
    List<Length> lowerCorner,
    boolean flatBed) {
  /** Returns the marks of a piece of a plan. */
  static Marks of(Plan plan, PiecePlan piece) {
    PlacedLog placed = piece.placed();
    Notch notch = plan.stack().courses().get(placed.round() - 1).notch();
    Building building = plan.job().building();
    List<Length> corners =
        Stream.of(placed.crossingAtButt(building), placed.crossingAtTip(building))
            .map(crossing -> notch.lowerCorner(crossing.thickness()))
            .toList();
    return new Marks(
        notch.upper(),
        notch.upperOutside(placed.wall().thickness()),
        notch.lower(),
        corners,
        piece.notes().contains(Note.BED_FLAT));
  }
}
