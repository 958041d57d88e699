package roundbook.report.list;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import roundbook.page.Cell;
import roundbook.page.PageSetup;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.plan.OrderLine;
import roundbook.plan.OrderLine.Purpose;
import roundbook.plan.Plan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.rounds.Shortage;

/** The one page for the yard: what is still wanted, and a tally to fill in. */
final class OrderSheet {
  private static final double[] WIDTHS = {8, 12, 12, 12, 12, 9, 9, 9, 9, 9, 12};
  private static final int[] TALLY = {1, 1, 1, 1, 1, 3, 3};
  private static final int LEAST_ROWS = 6;
  private static final int MOST_ROWS = 18;

  private OrderSheet() {}

  /** Returns whether anything is lacking, be it logs that no order would help. */
  static boolean isWanted(CrewContext context) {
    return !context.plan().order().isEmpty() || context.plan().choice().shortage().isPresent();
  }

  /** Returns the sheet; none while nothing is lacking. */
  static List<Sheet> sheets(CrewContext context) {
    if (!isWanted(context)) {
      return List.of();
    }
    PageSetup page = context.page(PageKind.TABLE).fit(PageSetup.Fit.ONE_PAGE);
    ListSheet list = new ListSheet(context, Tab.ORDER, page, WIDTHS).title(Tab.ORDER);
    List<OrderLine> order = context.plan().order();
    nothing(context.plan()).ifPresent(key -> list.text(Role.PLAIN_BOLD, context.text(key)));
    if (order.isEmpty()) {
      return List.of(list.build());
    }
    Cells cells = new Cells(context);
    list.text(Role.PLAIN, context.text("order.note"));
    list.headOf("order.head", cells.withUnit(order.get(0).second().over()));
    order.forEach(line -> list.row(row(context, cells, line)));
    why(context, list);
    context
        .plan()
        .choice()
        .shortage()
        .flatMap(Shortage::proof)
        .ifPresent(proof -> list.text(Role.PLAIN_BOLD, proof(context, cells, proof)));
    context.words().lines("order.rule").forEach(line -> list.text(Role.PLAIN, line));
    tally(context, list);
    return List.of(list.build());
  }

  /** Returns what to say where nothing is ordered, or nothing that rounds lack. */
  static Optional<String> nothing(Plan plan) {
    Optional<Shortage> shortage = plan.choice().shortage();
    if (shortage.isPresent()) {
      return shortage.filter(each -> each.missing().isEmpty()).map(each -> "order.no_help");
    }
    return plan.order().isEmpty() ? Optional.of("order.none") : Optional.empty();
  }

  private static List<Cell> row(CrewContext context, Cells cells, OrderLine line) {
    return List.of(
        cells.count(line.count()).role(Role.LARGE),
        cells.tape(line.butt().ask()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
        cells.tape(line.butt().midAt()),
        cells.tape(line.second().ask()).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
        cells.tape(line.second().midAt()),
        cells.printed(line.midFrom()),
        cells.printed(line.midTo()),
        cells.printed(line.tips().least()),
        cells.printed(line.tips().better()),
        cells.centre(line.walls()),
        cells.word("order." + line.purpose().word()));
  }

  /** Says what the lines are for: those that rounds lack, and those that only stand in. */
  private static void why(CrewContext context, ListSheet list) {
    Plan plan = context.plan();
    int wanted = plan.choice().shortage().map(Shortage::wanted).orElse(plan.rounds());
    if (plan.order().stream().anyMatch(line -> line.purpose() == Purpose.NEEDED)) {
      list.text(Role.PLAIN_BOLD, context.text("order.needed.why", plan.rounds(), wanted));
    }
    if (plan.order().stream().anyMatch(line -> line.purpose() == Purpose.SPARE)) {
      list.text(Role.PLAIN, context.text("order.spare.why"));
    }
  }

  private static String proof(CrewContext context, Cells cells, Shortage.Proof proof) {
    return context.text(
        "order.proof",
        proof.rounds(),
        cells.withUnit(proof.leastGap()),
        cells.withUnit(proof.mostGap()),
        proof.oneFewer());
  }

  private static void tally(CrewContext context, ListSheet list) {
    list.heading(context.text("order.tally", new Cells(context).unitWord()));
    list.spans(TALLY).headOf("order.tally.head");
    int ordered = context.plan().order().stream().mapToInt(OrderLine::count).sum();
    int rows = Math.max(LEAST_ROWS, Math.min(MOST_ROWS, ordered));
    List<Cell> empty = Collections.nCopies(TALLY.length, Cell.blank(Role.BODY));
    for (int index = 0; index < rows; index++) {
      list.row(empty);
    }
  }
}
