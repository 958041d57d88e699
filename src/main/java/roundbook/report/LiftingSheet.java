package roundbook.report;

import java.util.Comparator;
import java.util.List;
import roundbook.page.Cell;
import roundbook.page.PageSetup.Kind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.PiecePlan;
import roundbook.plan.PiecePlan.Weight;

/**
 * The lifts, the heaviest first, with balance points and the usual cautions.
 *
 * <p>Weights are of green wood by the plan's density. Logs of one species differ: a wet or dense
 * one can weigh a quarter more, a dry one a fifth less (common practice, no source).
 */
final class LiftingSheet {
  private static final double MOST = 1.25;
  private static final double LEAST = 0.8;
  private static final double CAUTION_HEIGHT = 225;
  private static final double[] WIDTHS = {7, 15, 15, 15, 15, 14, 7, 7, 11};

  private LiftingSheet() {}

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    ListSheet list =
        new ListSheet(context, Tab.LIFTING, context.page(Kind.TABLE), WIDTHS).title(Tab.LIFTING);
    cautions(context, list);
    list.text(Role.NOTE, context.text("lifting.note")).headOf("lifting.head");
    list.sheet().printTitles(list.next() - 1, list.next() - 1);
    List<PiecePlan> heaviest =
        context.plan().pieces().stream()
            .sorted(Comparator.comparingDouble((PiecePlan piece) -> -piece.weight().pounds()))
            .toList();
    for (int index = 0; index < heaviest.size(); index++) {
      list.row(row(new Cells(context), index + 1, heaviest.get(index)));
    }
    return List.of(list.build());
  }

  /** Writes the cautions in full, in a heavy box. */
  static void cautions(CrewContext context, ListSheet list) {
    list.room(CAUTION_HEIGHT).text(Role.CAUTION_HEAD, context.text("caution.head"));
    context.words().lines("caution").forEach(line -> list.text(Role.CAUTION, line));
  }

  private static List<Cell> row(Cells cells, int number, PiecePlan piece) {
    Weight weight = piece.weight();
    return List.of(
        cells.count(number),
        cells.weight(weight).role(Role.NUMBER_BOLD),
        cells.weight(times(weight, LEAST)),
        cells.weight(times(weight, MOST)).role(Role.NUMBER_BOLD),
        cells.about(weight.balance()),
        cells.tape(piece.placed().piece().trimmed()),
        cells.count(piece.placed().round()),
        cells.centre(piece.placed().wall().name()),
        new PieceCells(Live.of(cells.context()), piece).tag(Role.BODY_BOLD));
  }

  private static Weight times(Weight weight, double factor) {
    return new Weight(weight.pounds() * factor, weight.balance());
  }
}
